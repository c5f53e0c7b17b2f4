import { put, putRow, type Content, type CorpusSheet, type Spot } from "../book";
import { columnOf } from "../kitchens/hand";
import type { Place } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";

export interface PlacedList {
  readonly heads: readonly Spot[];
  readonly names: readonly Spot[];
  readonly amounts: readonly Spot[];
  /** All cells of a column, by its place in the list. */
  readonly column: (at: number) => Spot[];
  /** The first row under the lines. */
  readonly end: number;
}

/** A recipe's lines from a place on, their headings over them where there are any. */
export function putList(
  sheet: CorpusSheet,
  made: MadeRecipe,
  plan: Place & {
    readonly heads?: readonly Content[];
    readonly cells: (item: string, grams: number, index: number) => readonly Content[];
    readonly name: number;
    readonly amount: number;
    /** Rows from one line to the next. */
    readonly step?: number;
  },
): PlacedList {
  const { row, column, step = 1 } = plan;
  const heads = plan.heads === undefined ? [] : putRow(sheet, row, column, plan.heads);
  const first = plan.heads === undefined ? row : row + 1;
  const rows = made.names.map((item, index) =>
    plan
      .cells(item, made.grams[index]!, index)
      .map((content, at) => put(sheet, first + step * index, column + at, content)),
  );
  const cells = (at: number) => columnOf(rows, at);
  const [names, amounts] = [cells(plan.name), cells(plan.amount)];
  return { heads, names, amounts, column: cells, end: first + step * rows.length };
}
