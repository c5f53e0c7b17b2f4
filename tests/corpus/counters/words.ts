import { a1, put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { beside } from "../newcomers/words";
import type { Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";

const PRICES: readonly (readonly [RegExp, from: number, to: number])[] = [
  [/^water$/, 0, 0],
  [/^(sugar|sucrose|salt)$/, 0.95, 1.6],
  [/dextrose|syrup|fructose/, 2.2, 4.8],
  [/^whole milk/, 1.05, 2.4],
  [/powder|inulin|acid/, 6, 12],
  [/^cream|coconut/, 3.8, 6.2],
  [/juice|coffee|puree|banana/, 1.8, 5],
  [/nuts|pistachios|vodka/, 14, 29],
];

/** What somebody pays for a kilogram of what a line holds. */
export function paid({ random }: Kit, en: string): number {
  const [, from, to] = PRICES.find(([words]) => words.test(en)) ?? [/./, 4, 9];
  return Number(random.between(from, to).toFixed(2));
}

/** The prices of a recipe's lines, as cells with two decimals. */
export const pricesOf = (kit: Kit, { lines }: MadeRecipe) =>
  lines.map(({ en }) => shown(paid(kit, en), "0.00"));

export interface Bought {
  readonly name: string;
  /** What it is in the stock's English. */
  readonly en: string;
  readonly price: number;
}

/** Everything that some recipes need, each once, with what a kilogram of it costs. */
export function shopping(kit: Kit, mades: readonly MadeRecipe[]): Bought[] {
  const all = mades.flatMap(({ names, lines }) =>
    names.map((name, index) => ({ name, en: lines[index]!.en })),
  );
  const once = all.filter(({ name }, at) => all.findIndex((other) => other.name === name) === at);
  return once.map((each) => ({ ...each, price: paid(kit, each.en) }));
}

/** Grams times price for a kilogram, beside the lines. */
export const costsBeside = (
  kit: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  amounts: readonly Spot[],
  price: { readonly column: number; readonly isPerKg?: true },
): Spot[] =>
  beside(kit, heading, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) =>
      `=${a1(spot)}*${a1({ ...spot, column: price.column })}${price.isPerKg === true ? "" : "/1000"}`,
  });

/** A small table of readings, half a degree at a time, marked as temperatures. */
export function readings(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  table: {
    readonly heads: readonly [string, ...string[]];
    readonly when: readonly Content[];
    /** For each heading but the first. */
    readonly ranges: readonly (readonly [from: number, to: number])[];
  },
): number {
  const heads = putRow(sheet, row, column, table.heads);
  table.when.forEach((each, index) => put(sheet, row + 1 + index, column, each));
  table.ranges.forEach(([from, to], at) => {
    const spots = table.when.map((_, index) => {
      const celsius = kit.random.whole(2 * from, 2 * to) / 2;
      return put(sheet, row + 1 + index, column + 1 + at, shown(celsius, "0.0"));
    });
    const heading = heads[1 + at]!;
    kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  });
  return row + 1 + table.when.length;
}

/** A day of 2025 counted from 1 January as the first, as spreadsheets keep it. */
export const day = (ofYear: number, format: string): Content => shown(45657 + ofYear, format);

/** A time of day in hours, as spreadsheets keep it. */
export const clock = (hours: number): Content => shown(hours / 24, "hh:mm");

/** A label with a number and its unit behind it; gives the number's cell. */
export function fact(
  sheet: CorpusSheet,
  { row, column }: Place,
  label: string,
  content: string | number,
  format?: string,
): Spot {
  put(sheet, row, column, label);
  return put(sheet, row, column + 1, format === undefined ? content : shown(content, format));
}

/** The allergen of every line in a column of its own; the recipe tells it there. */
export function allergensBeside(
  { language }: Kit,
  sheet: CorpusSheet,
  { made, names, flags }: MarkedRecipe,
  column: number,
): void {
  if (!made.flagged) return;
  made.lines.forEach(({ allergen }, index) => {
    if (allergen === undefined) return;
    flags.push(put(sheet, names[index]!.row, column, allergen[language]));
  });
}
