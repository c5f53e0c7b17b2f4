import { put, putRow, shown, span, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { absolute, type Place } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";

const PRICES: readonly (readonly [RegExp, from: number, to: number])[] = [
  [/^water$/, 0.01, 0.01],
  [/^(sugar|sucrose|salt)$/, 0.8, 1.9],
  [/dextrose|fructose|syrup|citric|inulin/, 2.2, 7.5],
  [/^whole milk$/, 1.1, 1.7],
  [/cream|yogurt|juice|coffee|puree/, 2.6, 6.2],
  [/nuts|pistachios|vodka|cocoa|yolk|honey/, 9.5, 24],
];

/** What a kilogram of it may cost a small kitchen. */
export function kiloPrice({ random }: Kit, en: string): number {
  const [, from, to] = PRICES.find(([of]) => of.test(en)) ?? [/./, 3, 8];
  return Number(random.between(from, to).toFixed(2));
}

export interface PriceList {
  /** The cell of each price. */
  readonly of: ReadonlyMap<string, Spot>;
  /** Names and prices, fixed, as another sheet calls them. */
  readonly table: string;
  /** The first row under the list. */
  readonly end: number;
}

/** A price for each thing that some recipes need, in the order of the alphabet. */
export function priceList(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  plan: {
    readonly mades: readonly MadeRecipe[];
    readonly heads: readonly string[];
    readonly more?: (index: number) => readonly Content[];
  },
): PriceList {
  const { mades, heads, more } = plan;
  const bought = new Map(
    mades.flatMap(({ names, lines }) => names.map((name, at) => [name, lines[at]!.en] as const)),
  );
  const items = [...bought.keys()].sort((one, other) => one.localeCompare(other));
  putRow(sheet, row, column, heads);
  const rows = items.map((item, index) => {
    const price = shown(kiloPrice(kit, bought.get(item)!), "0.00");
    return putRow(sheet, row + 1 + index, column, [item, price, ...(more?.(index) ?? [])]);
  });
  const prices = columnOf(rows, 1);
  const range = absolute(span([...columnOf(rows, 0), ...prices]));
  return {
    of: new Map(items.map((item, index) => [item, prices[index]!])),
    table: `'${sheet.name}'!${range}`,
    end: row + 1 + rows.length,
  };
}

/** Readings of a thermometer down a column, in half degrees. */
export function readings(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  plan: {
    readonly heading: string;
    readonly count: number;
    readonly from: number;
    readonly to: number;
  },
): void {
  const heading = put(sheet, row, column, plan.heading);
  const spots = Array.from({ length: plan.count }, (_, index) => {
    const halves = kit.random.whole(2 * plan.from, 2 * plan.to);
    return put(sheet, row + 1 + index, column, shown(halves / 2, "0.0"));
  });
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}

/** Contents down a column. */
export const downward = (
  sheet: CorpusSheet,
  { row, column }: Place,
  contents: readonly Content[],
): Spot[] => contents.map((content, index) => put(sheet, row + index, column, content));
