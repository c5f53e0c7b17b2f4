import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import type { Place } from "../layouts/parts";
import { idealGap, tolerated, type Dissolved } from "../solution";

/** Temperatures one below the other under a heading, in tenths or halves of a degree. */
export function readings(
  kit: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  plan: { readonly count: number; readonly from: number; readonly to: number; readonly by?: 2 },
): Spot[] {
  const { count, from, to, by = 10 } = plan;
  const spots = Array.from({ length: count }, (_, index) => {
    const value = kit.random.whole(by * from, by * to) / by;
    return put(sheet, heading.row + 1 + index, heading.column, shown(value, "0.0"));
  });
  asTemperatures(kit, heading, spots);
  return spots;
}

/** Marks cells under a heading as temperatures. */
export const asTemperatures = (kit: Kit, heading: Spot, spots: readonly Spot[]): void => {
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
};

/** A small table that nothing reads: headings, then rows; gives the headings. */
export function aside(
  sheet: CorpusSheet,
  { row, column }: Place,
  heads: readonly Content[],
  rows: readonly (readonly Content[])[],
): Spot[] {
  rows.forEach((cells, index) => putRow(sheet, row + 1 + index, column, cells));
  return putRow(sheet, row, column, heads);
}

export interface Glass {
  readonly solute: Dissolved;
  readonly grams: number;
  readonly waterGrams: number;
}

/** How near the ideal law comes to every one of some glasses, in kelvin. */
export function tolerance(kit: Kit, glasses: readonly Glass[]): string {
  const gaps = glasses.map((each) => idealGap([each.solute], [each.grams], each.waterGrams));
  const text = tolerated(Math.max(...gaps));
  return kit.language === "de" ? text.replace(".", ",") : text;
}

/** Prices by the kilogram that nobody would wonder about, by the English name of the line. */
const PRICES: readonly (readonly [RegExp, number, number])[] = [
  [/^water$/, 0.01, 0.01],
  [/sugar|sucrose|salt/, 0.8, 1.6],
  [/dextrose|syrup|fructose/, 1.8, 3.6],
  [/^whole milk$/, 1, 1.7],
  [/juice|coffee|puree/, 2, 4.5],
  [/cream|yogurt/, 2.4, 5.2],
  [/nuts|pistachios|vodka/, 14, 27],
];

export function priceFor(kit: Kit, en: string): number {
  const [, from, to] = PRICES.find(([words]) => words.test(en)) ?? [/./, 3.5, 9.5];
  return Number(kit.random.between(from, to).toFixed(2));
}
