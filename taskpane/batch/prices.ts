import type { BlockValue, CellBlock } from "../host";
import type { RecognisedRecipe } from "../bowl/recognised";
import { parseRangeName } from "../../src/workbook/address";

/** What a number in the price column buys. */
export type PriceBasis = "kg" | "100 g" | "g" | "row";

export interface PriceColumn {
  readonly header: string;
  /** Zero-based on the sheet. */
  readonly column: number;
  /** As its header says; null when it does not, and has to be asked. */
  readonly basis: PriceBasis | null;
}

const PRICE = /price|cost|preis|kosten|€|\$|£|eur|usd|gbp/i;
const BASES: readonly (readonly [RegExp, PriceBasis])[] = [
  [/100\s*g/i, "100 g"],
  [/(\/|per|je|pro|for|für)\s*(1\s*)?kg|kg/i, "kg"],
  [/(\/|per|je|pro)\s*g\b/i, "g"],
  [/row|line|total|zeile|gesamt|summe/i, "row"],
];

const basisOf = (header: string): PriceBasis | null =>
  BASES.find(([pattern]) => pattern.test(header))?.[1] ?? null;

/** The columns of a block that look like prices: named so in a header above the recipe's names. */
export function priceColumns(block: CellBlock, recipe: RecognisedRecipe): readonly PriceColumn[] {
  const names = parseRangeName(recipe.nameRange);
  if (names === null || recipe.direction !== "down") return [];
  const above = block.values.slice(0, Math.max(0, names.top - block.top)).reverse();
  const width = block.values[0]?.length ?? 0;
  return Array.from({ length: width }, (_, at) => at).flatMap((at) => {
    const header = above
      .map((row) => row[at])
      .find((value) => typeof value === "string" && value !== "");
    return typeof header === "string" && PRICE.test(header)
      ? [{ header, column: block.left + at, basis: basisOf(header) }]
      : [];
  });
}

export interface CostedRow {
  readonly name: string;
  /** In the price's own currency; null where there is no price. */
  readonly cost: number | null;
}

export interface BatchCost {
  readonly rows: readonly CostedRow[];
  readonly total: number;
  readonly per100g: number;
  /** Ingredients without a price: the total is short of them. */
  readonly unpriced: readonly string[];
}

const GRAMS: Readonly<Record<Exclude<PriceBasis, "row">, number>> = {
  kg: 1000,
  "100 g": 100,
  g: 1,
};

interface Line {
  readonly name: string;
  readonly grams: number;
  readonly price: BlockValue;
}

/** Adds up what the batch costs. */
export function costOf(lines: readonly Line[], basis: PriceBasis): BatchCost {
  const rows = lines.map(({ name, grams, price }) => ({
    name,
    cost:
      typeof price !== "number" ? null : basis === "row" ? price : (price * grams) / GRAMS[basis],
  }));
  const total = rows.reduce((sum, { cost }) => sum + (cost ?? 0), 0);
  const mass = lines.reduce((sum, { grams }) => sum + grams, 0);
  return {
    rows,
    total,
    per100g: mass > 0 ? (total / mass) * 100 : 0,
    unpriced: rows.filter(({ cost }) => cost === null).map(({ name }) => name),
  };
}
