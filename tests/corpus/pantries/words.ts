import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import type { Place } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";

/** A little table: headings, then its rows; gives the cells of the rows. */
export function table(
  sheet: CorpusSheet,
  { row, column }: Place,
  heads: readonly Content[],
  rows: readonly (readonly Content[])[],
): { readonly heads: readonly Spot[]; readonly rows: readonly (readonly Spot[])[] } {
  return {
    heads: putRow(sheet, row, column, heads),
    rows: rows.map((cells, index) => putRow(sheet, row + 1 + index, column, cells)),
  };
}

/** The same table, some of its columns temperatures. */
export function readings(
  kit: Kit,
  sheet: CorpusSheet,
  place: Place,
  plan: {
    readonly heads: readonly Content[];
    readonly rows: readonly (readonly Content[])[];
    readonly temperatures: readonly number[];
  },
): void {
  const { heads, rows } = table(sheet, place, plan.heads, plan.rows);
  for (const at of plan.temperatures) {
    kit.marked.numberColumns.push({
      ...{ spots: columnOf(rows, at), heading: heads[at]!, total: null, kind: "temperature" },
    });
  }
}

/** A temperature in halves of a degree. */
export const degrees = ({ random }: Kit, from: number, to: number): Content =>
  shown(random.whole(2 * from, 2 * to) / 2, "0.0");

const DEAR = /nuss|nüsse|nuts|pista|wal|vodka|spirit|wodka|honig|honey|kakao|cocoa/i;

/** What a kilogram costs; water is free. */
export function pricePerKg({ random }: Kit, { lines }: MadeRecipe, index: number): number {
  const { en } = lines[index]!;
  if (en === "water") return 0;
  return (DEAR.test(en) ? random.whole(850, 2400) : random.whole(95, 640)) / 100;
}

/** Cells beside a label that is there, with formulas in them. */
export const worked = (
  sheet: CorpusSheet,
  { row, column }: Place,
  [label, formula, format]: readonly [label: string, formula: string, format: string],
): Spot => {
  put(sheet, row, column, label);
  return put(sheet, row, column + 1, shown(formula, format));
};
