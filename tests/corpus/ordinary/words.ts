import { a1, fixed, put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { sumOf, type Place } from "../layouts/parts";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";

/** A day in a cell, as its number with a format for dates. */
export const day = (serial: number, format = "dd/mm/yyyy"): Content => shown(serial, format);

/** Temperatures under one or more headings, what each row is at the left. */
export function readings(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  plan: {
    readonly heads: readonly string[];
    readonly labels: readonly Content[];
    /** From and to, in whole degrees, for each heading after the first. */
    readonly ranges: readonly (readonly [from: number, to: number])[];
  },
): number {
  const heads = putRow(sheet, row, column, plan.heads);
  plan.labels.forEach((label, index) => put(sheet, row + 1 + index, column, label));
  plan.ranges.forEach(([from, to], at) => {
    const heading = heads[1 + at]!;
    const spots = plan.labels.map((_, index) => {
      const celsius = kit.random.whole(2 * from, 2 * to) / 2;
      return put(sheet, row + 1 + index, heading.column, shown(celsius, "0.0"));
    });
    kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  });
  return row + 1 + plan.labels.length;
}

const PRICES: readonly (readonly [RegExp, from: number, to: number])[] = [
  [/^water$/, 0, 0],
  [/sugar|sucrose|salt/, 95, 190],
  [/dextrose|syrup|fructose|inulin|acid|powder/, 240, 890],
  [/milk|yogurt|juice|puree|banana/, 110, 340],
  [/nuts|pistachios|vodka|honey|yolk/, 900, 2400],
];

/** What a kilogram of a line costs, the same wherever it is used in the book. */
export function pricesOf({ random }: Kit): (made: MadeRecipe, index: number) => number {
  const known = new Map<string, number>();
  return ({ lines }, index) => {
    const name = lines[index]!.en;
    const [, from, to] = PRICES.find(([pattern]) => pattern.test(name)) ?? [name, 280, 1100];
    const price = known.get(name) ?? random.whole(from, to) / 100;
    known.set(name, price);
    return price;
  };
}

/** Shares of the total beside the amounts, and their sum in the total's row. */
export function shares(
  kit: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  amounts: readonly Spot[],
  { total, percent }: { readonly total: Spot; readonly percent: "number" | "format" },
): Spot[] {
  const [times, format] = percent === "number" ? ["*100", "0.0"] : ["", "0.0%"];
  const spots = beside(kit, heading, amounts, {
    ...{ sheet, format, fixed: [total] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}${times}`,
  });
  sumOf(kit, sheet, { row: total.row, column: heading.column }, spots, format);
  return spots;
}

/** A small table that nothing reads: hours, rosters, lists of what to buy. */
export const table = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): void => {
  rows.forEach((cells, index) => putRow(sheet, row + index, column, cells));
};
