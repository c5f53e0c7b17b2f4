import { put, putRow, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { formulas, type Place as At } from "../layouts/marking";
import type { Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, type MadeRecipe } from "../recipes";
import { columnOf } from "../kitchens/hand";

/** Cautions as somebody writes them who has not looked them up. */
const IN_OWN_WORDS: readonly (readonly [RegExp, string])[] = [
  [/^Honey/, "Made with honey: never for babies under 12 months."],
  [/^Contains alcohol/, "Has alcohol in it: grown-ups only, not if pregnant or driving."],
  [/^Whole nuts/, "Whole nuts: choking risk, not for under-fives."],
  [/^Raw egg/, "Raw egg yolk: heat to 71 °C or use pasteurised."],
];

const inOwnWords = (caution: string): string =>
  IN_OWN_WORDS.find(([of]) => of.test(caution))?.[1] ?? caution;

/** What the eater has to know of a recipe, after a word of one's own; empty where there is nothing. */
export function contains(made: MadeRecipe, lead: string): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen").join(", ");
  const cautions = labelWords(made, "caution").map(inOwnWords);
  return [...(allergens === "" ? [] : [`${lead} ${allergens}.`]), ...cautions].join(" ");
}

/** Tells it in one cell; gives the next free row. */
export function warn(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): number {
  const words = contains(recipe.made, lead);
  if (words === "") return row;
  recipe.flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** Formulas beside some cells, one for each, under a heading. */
export function beside(
  kit: Kit,
  heading: Spot,
  cells: readonly Spot[],
  plan: {
    readonly sheet: CorpusSheet;
    readonly content: (cell: Spot, index: number) => string;
    readonly format: string;
    readonly fixed?: readonly Spot[];
  },
): Spot[] {
  const { sheet, content, format } = plan;
  const at: At = [cells[0]!.row, heading.column];
  const contents = cells.map((cell, index) => ({ content: content(cell, index), format }));
  return formulas(kit, heading, contents, { sheet, at, fixed: plan.fixed ?? [] });
}

export interface Listed {
  readonly sheet: CorpusSheet;
  readonly heads: readonly Spot[];
  readonly rows: readonly (readonly Spot[])[];
  readonly names: readonly Spot[];
  readonly amounts: readonly Spot[];
  /** The first row under the lines. */
  readonly end: number;
}

/** A recipe's lines under headings; the name and the amount stand where they are said to. */
export function listed(
  sheet: CorpusSheet,
  made: MadeRecipe,
  { row, column }: Place,
  plan: {
    readonly heads: readonly Content[];
    readonly cells: (name: string, grams: number, index: number) => readonly Content[];
    readonly name?: number;
    readonly amount?: number;
  },
): Listed {
  const heads = putRow(sheet, row, column, plan.heads);
  const rows = made.names.map((name, index) =>
    putRow(sheet, row + 1 + index, column, plan.cells(name, made.grams[index]!, index)),
  );
  const [names, amounts] = [plan.name ?? 0, plan.amount ?? 1].map((at) => columnOf(rows, at));
  return { sheet, heads, rows, names: names!, amounts: amounts!, end: row + 1 + rows.length };
}
