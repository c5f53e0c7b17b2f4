import { GRAMS_BOUGHT, type PriceBasis } from "../prices/priceHeader";

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

interface Line {
  readonly name: string;
  readonly grams: number;
  /** In the price's own currency; null where there is none. */
  readonly price: number | null;
}

/** Adds up what the batch costs. */
export function costOf(lines: readonly Line[], basis: PriceBasis): BatchCost {
  const rows = lines.map(({ name, grams, price }) => ({
    name,
    cost: price === null || basis === "row" ? price : (price * grams) / GRAMS_BOUGHT[basis],
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
