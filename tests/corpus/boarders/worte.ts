import { put, type CorpusSheet, type Spot } from "../book";
import { columnOf, stillMet } from "../kitchens/hand";
import type { Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, massOf, withLines, type MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";

/** A caution's usual words, and how somebody writes it who has not looked them up. */
export type Phrases = readonly (readonly [RegExp, string])[];

export const shopPhrases: Phrases = [
  [/^Honig/, "mit Honig, nicht für Säuglinge im ersten Lebensjahr"],
  [/^Enthält Alkohol/, "mit Alkohol, nicht an Kinder und Schwangere abgeben"],
  [/^Ganze Nüsse/, "mit ganzen Nüssen, nicht für Kinder unter 5 (Verschlucken!)"],
  [/^Rohes Eigelb/, "mit rohem Eigelb, Masse vorher auf 71 °C erhitzen"],
];

/** What a recipe brings to its label, in one line; empty where there is nothing. */
export function labelLine(made: MadeRecipe, lead: string, phrases: Phrases = []): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen").join(", ");
  const cautions = labelWords(made, "caution").map(
    (caution) => phrases.find(([of]) => of.test(caution))?.[1] ?? caution,
  );
  const parts = [...(allergens === "" ? [] : [`${lead} ${allergens}`]), ...cautions];
  return parts.map((part) => part.replace(/\.$/, "")).join("; ");
}

/** Writes that line; gives the next free row. */
export function labelAt(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  words: { readonly lead: string; readonly phrases?: Phrases },
): number {
  const text = labelLine(recipe.made, words.lead, words.phrases);
  if (text === "") return row;
  recipe.flags.push(put(sheet, row, column, text));
  return row + 1;
}

/** Something said of a recipe: its words, its unit where that has a cell of its own, and what it is. */
export type Fact = readonly [label: string, unit: string | undefined, plan: ResultPlan];

interface FactsPlan extends Place {
  readonly facts: readonly Fact[];
  /** Steps from the words to the unit and to the number. */
  readonly unit: number;
  readonly value: number;
}

/** Says it one below the other; gives the next free row. */
export function tabulate(sheet: CorpusSheet, recipe: MarkedRecipe, plan: FactsPlan): number {
  const { column, facts } = plan;
  let { row } = plan;
  for (const [label, unit, what] of facts) {
    const labelSpot = { sheet: sheet.name, row, column };
    if (!resultAt(sheet, recipe, labelSpot, { row, column: column + plan.value }, what)) continue;
    put(sheet, row, column, label);
    if (unit !== undefined) put(sheet, row, column + plan.unit, unit);
    row += 1;
  }
  return row;
}

/** Some columns of rows of cells. */
export const columnsOf = (rows: readonly (readonly Spot[])[], ...at: readonly number[]): Spot[][] =>
  at.map((each) => columnOf(rows, each));

/** All that recipes need, each thing once, with a line that it stands in. */
export function goods(mades: readonly MadeRecipe[]) {
  const found = new Map<string, readonly [MadeRecipe, number]>();
  for (const made of mades) made.names.forEach((name, at) => found.set(name, [made, at]));
  return [...found].map(([name, [made, index]]) => ({ name, made, index }));
}

/** The same recipe for about so many grams, in whole grams. */
export function sized(made: MadeRecipe, mass: number): MadeRecipe {
  const factor = mass / massOf(made);
  const lines = made.lines.map((each) => ({
    ...each,
    grams: Math.max(1, Math.round(each.grams * factor)),
  }));
  return stillMet(withLines(made, lines));
}
