import { a1, put, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { again } from "../layouts/marking";
import type { Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside } from "../newcomers/words";
import { labelWords, withLines, type MadeRecipe } from "../recipes";

/** The same recipe so many times as large. */
export const times = (made: MadeRecipe, factor: number): MadeRecipe =>
  withLines(
    made,
    made.lines.map((each) => ({ ...each, grams: each.grams * factor })),
  );

/** The same recipe without the mistake that was put into it. */
export const sound = (kit: Kit, made: MadeRecipe): MadeRecipe =>
  made.seeded === undefined ? made : again(kit, made);

/** What the eater has to know, the allergens after a word of one's own; empty where there is nothing. */
export function told(made: MadeRecipe, lead: string): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen").join(", ");
  return [...(allergens === "" ? [] : [`${lead} ${allergens}.`]), ...labelWords(made, "caution")]
    .join(" ")
    .trim();
}

/** Writes that into a cell. */
export function tellAt(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): void {
  const words = told(recipe.made, lead);
  if (words !== "") recipe.flags.push(put(sheet, row, column, words));
}

/** What amounts cost under a heading, by the prices in a column of their rows. */
export const costsOf = (
  kit: Kit,
  heading: Spot,
  amounts: readonly Spot[],
  plan: { readonly sheet: CorpusSheet; readonly column: number; readonly per?: string },
): Spot[] =>
  beside(kit, heading, amounts, {
    ...{ sheet: plan.sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: plan.column })}${plan.per ?? ""}`,
  });

/** Lines on another sheet, as a formula names them. */
export const onSheet =
  (sheet: string, span: (spots: readonly Spot[]) => string) =>
  ({ names, amounts }: MarkedRecipe): string =>
    `'${sheet}'!${span(names)},'${sheet}'!${span(amounts)}`;

/** A recipe of a kind; the one with the mistake, where there is one. */
export function oneOf(kit: Kit, test: (made: MadeRecipe) => boolean): MadeRecipe {
  const mades = kit.make(4);
  return mades.find(({ seeded }) => seeded !== undefined) ?? mades.find(test) ?? mades[0]!;
}

export const hasSpirit = ({ lines }: MadeRecipe): boolean =>
  lines.some(({ caution }) => /alcohol/.test(caution?.en ?? ""));
