import { a1, put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { sumOf, type Place } from "../layouts/parts";
import { labelWords, type MadeRecipe } from "../recipes";
import { columnOf } from "../kitchens/hand";
import type { MarkedRecipe } from "../marks";

interface Plan extends Place {
  readonly heads: readonly Content[];
  /** What stands in the row of a line. */
  readonly cells: (index: number) => readonly Content[];
  /** Where names and amounts stand in that row. */
  readonly name: number;
  readonly amount: number;
  /** The word beside the sum. */
  readonly sum: string;
  readonly format?: string;
}

export interface Desk {
  readonly sheet: CorpusSheet;
  readonly heads: readonly Spot[];
  readonly rows: readonly (readonly Spot[])[];
  readonly names: readonly Spot[];
  readonly amounts: readonly Spot[];
  readonly total: Spot;
  readonly amountLabel: Spot;
  /** The row of the sum. */
  readonly end: number;
}

/** A recipe's lines under headings, with their sum. */
export function desk(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, plan: Plan): Desk {
  const { row, column } = plan;
  const heads = putRow(sheet, row, column, plan.heads);
  const rows = made.names.map((_, index) =>
    putRow(sheet, row + 1 + index, column, plan.cells(index)),
  );
  const [names, amounts] = [columnOf(rows, plan.name), columnOf(rows, plan.amount)];
  const end = row + 1 + rows.length;
  put(sheet, end, column + plan.name, plan.sum);
  const total = sumOf(kit, sheet, { row: end, column: column + plan.amount }, amounts, plan.format);
  return { sheet, heads, rows, names, amounts, total, amountLabel: heads[plan.amount]!, end };
}

/** The marks of a recipe on its desk. */
export const linesOn = ({ names, amounts, total, amountLabel }: Desk) => ({
  ...{ names, amounts, total, amountLabel },
});

interface Down {
  readonly heading: Spot;
  readonly format: string;
  readonly fixed?: readonly Spot[];
  readonly formula: (cell: string, index: number) => string;
  /** The row of their sum, where there is one. */
  readonly end?: number;
}

/** A formula in the row of each cell, under a heading. */
export function down(
  kit: Kit,
  sheet: CorpusSheet,
  cells: readonly Spot[],
  { heading, format, fixed = [], formula, end }: Down,
): Spot[] {
  const spots = cells.map((cell, index) =>
    put(sheet, cell.row, heading.column, shown(formula(a1(cell), index), format)),
  );
  kit.marked.formulaColumns.push({ spots, heading, fixed });
  if (end !== undefined) sumOf(kit, sheet, { row: end, column: heading.column }, spots, format);
  return spots;
}

/** What the eater has to know, behind a word of the writer's own; empty where there is nothing. */
export function eaterWords(made: MadeRecipe, lead: string): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen").join(", ");
  const first = allergens === "" ? [] : [`${lead} ${allergens}.`];
  return [...first, ...labelWords(made, "caution")].join(" ");
}

/** Tells it in one cell; gives the next free row. */
export function tellBehind(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): number {
  const words = eaterWords(recipe.made, lead);
  if (words === "") return row;
  recipe.flags.push(put(sheet, row, column, words));
  return row + 1;
}
