import { put, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import type { MarkedRecipe } from "../marks";
import { resultAt, type ResultPlan } from "../results";
import { labelText } from "../visitors/lines";

/** A result and the words for it. */
export type Answer = readonly [label: string, plan: ResultPlan];

/** Marks columns of formulas, given row by row, each under its heading. */
export function markFormulas(
  { marked }: Kit,
  rows: readonly (readonly Spot[])[],
  headings: readonly Spot[],
): void {
  headings.forEach((heading, at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading, fixed: [] }),
  );
}

/** Which of the shared names in a column are those of a recipe. */
export function placesOf(sheet: CorpusSheet, names: readonly Spot[], wanted: readonly string[]) {
  const items = names.map(({ row, column }) => sheet.cells[row]![column]!.content);
  return wanted.map((name) => items.indexOf(name));
}

/** Answers down a recipe's column, their labels already in another. */
export function answersDown(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  list: readonly Answer[],
  place: { readonly row: number; readonly column: number; readonly labels: number },
  lines?: string,
): void {
  list.forEach(([, plan], index) => {
    const row = place.row + index;
    const label = { sheet: sheet.name, row, column: place.labels };
    const linesOf = lines === undefined ? [] : [() => lines];
    resultAt(sheet, recipe, label, { row, column: place.column }, plan, ...linesOf);
  });
}

/** Tells the eater in one cell, where there is something to be told. */
export function tellIn(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: { readonly row: number; readonly column: number },
  contains: string,
): void {
  const text = labelText(made, contains);
  if (made.flagged && text !== "") flags.push(put(sheet, row, column, text));
}
