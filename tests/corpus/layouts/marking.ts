import { put, shown, span, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { PER_GRAM } from "../list";
import type { MarkedRecipe } from "../marks";
import { labelWords, makeRecipe, meets, perHundred, withLines, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { stock } from "../stock";

export type Place = readonly [row: number, column: number];

type Cells = Pick<MarkedRecipe, "names" | "amounts"> &
  Partial<Pick<MarkedRecipe, "unit" | "unitCells" | "alsoAmounts" | "shared" | "total">> & {
    readonly amountLabel?: Spot;
  };

/** Marks a recipe whose cells were written by hand. */
export function markRecipe({ marked }: Kit, made: MadeRecipe, cells: Cells): MarkedRecipe {
  const unit = cells.unit ?? "g";
  const recipe: MarkedRecipe = {
    ...{ made, unit, perGram: PER_GRAM[unit], amountLabel: null, unitCells: [], alsoAmounts: [] },
    ...{ shared: false, total: null, results: [], targets: [], flags: [] },
    ...cells,
  };
  marked.recipes.push(recipe);
  return recipe;
}

/** A formula for the sum of some cells, marked as such. */
export function sumAt(
  { marked }: Kit,
  sheet: CorpusSheet,
  [row, column]: Place,
  parts: readonly Spot[],
  format?: string,
): Spot {
  const formula = `=SUM(${span(parts)})`;
  const spot = put(sheet, row, column, format === undefined ? formula : shown(formula, format));
  marked.sums.push({ spot, parts });
  return spot;
}

/** Formulas one below the other, marked as a column. */
export function formulas(
  { marked }: Kit,
  heading: Spot,
  contents: readonly Content[],
  place: { readonly sheet: CorpusSheet; readonly at: Place; readonly fixed?: readonly Spot[] },
): Spot[] {
  const [row, column] = place.at;
  const spots = contents.map((content, index) => put(place.sheet, row + index, column, content));
  marked.formulaColumns.push({ spots, heading, fixed: place.fixed ?? [] });
  return spots;
}

/** A result with its label wherever the sheet has them; nothing where there is no such number. */
export function answer(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  [words, row, column]: readonly [words: string, row: number, column: number],
  [toRow, toColumn]: Place,
  plan: ResultPlan,
  lines?: string,
): boolean {
  const label = { sheet: sheet.name, row, column };
  const place = { row: toRow, column: toColumn };
  const linesOf = lines === undefined ? [] : [() => lines];
  const isThere = resultAt(sheet, recipe, label, place, plan, ...linesOf);
  if (isThere) put(sheet, row, column, words);
  return isThere;
}

/** Marks the last result as one that is not read cell by cell, such as a formula over names. */
export function asAnswerOnly({ results }: MarkedRecipe): void {
  const last = results.pop();
  if (last !== undefined) results.push({ ...last, typed: true });
}

/** What the eater has to be told of some recipes, in a cell's words; empty where there is nothing. */
export const toldOf = (mades: readonly MadeRecipe[]): string => {
  const flagged = mades.filter((made) => made.flagged);
  const words = (["allergen", "caution"] as const).map((which) =>
    [...new Set(flagged.flatMap((made) => labelWords(made, which)))].join(", "),
  );
  return words.filter((each) => each !== "").join("; ");
};

/** Tells it in one cell for all of them. */
export function tellAll(sheet: CorpusSheet, recipes: readonly MarkedRecipe[], at: Place): void {
  const words = toldOf(recipes.map(({ made }) => made));
  if (words === "") return;
  const spot = put(sheet, ...at, words);
  for (const { made, flags } of recipes) if (made.flagged) flags.push(spot);
}

/** A recipe whose amounts were changed keeps its target only if it still meets it. */
const settled = (made: MadeRecipe): MadeRecipe =>
  made.target !== null && made.seeded === undefined && !meets(made, made.target)
    ? { ...made, target: null }
    : made;

export const hundred = (made: MadeRecipe): MadeRecipe => settled(perHundred(made));

/** The same recipe for some kilograms, in whole grams. */
export const kilos = (made: MadeRecipe, kilograms = 1): MadeRecipe => {
  const { lines, ...rest } = perHundred(made);
  const grams = lines.map((each) => ({ ...each, grams: Math.round(each.grams * 10 * kilograms) }));
  return settled(withLines({ ...rest, lines }, grams));
};

/** The recipe of the same title made anew, its amounts a little different. */
export function again({ random, language }: Kit, { title }: MadeRecipe): MadeRecipe {
  return makeRecipe(
    random,
    language,
    stock.find((each) => each[language] === title)!,
  );
}

/** The names of several recipes, each once. */
export const namesOf = (mades: readonly MadeRecipe[]): string[] => [
  ...new Set(mades.flatMap(({ names }) => names)),
];

export const anchored = (range: string): string => range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
