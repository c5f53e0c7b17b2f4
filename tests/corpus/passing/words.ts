import { put, type CorpusSheet } from "../book";
import { hasSpirit } from "../guests/words";
import type { Kit } from "../kit";
import type { Place, Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, massOf, withLines, type MadeRecipe } from "../recipes";

/** What has to be told of a recipe, the allergens after a word of the cook's; empty where there is nothing. */
export function toDeclare(made: MadeRecipe, lead: string): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen");
  const first = allergens.length === 0 ? [] : [`${lead} ${allergens.join(", ")}`];
  return [...first, ...labelWords(made, "caution")].join("; ");
}

/** Declares it in one cell; gives the next free row. */
export function declare(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): number {
  const words = toDeclare(recipe.made, lead);
  if (words === "") return row;
  recipe.flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** The same recipe made larger to about so many grams, in steps of whole grams. */
export function about(made: MadeRecipe, grams: number): MadeRecipe {
  const factor = Math.max(1, Math.round(grams / massOf(made)));
  return withLines(
    made,
    made.lines.map((each) => ({ ...each, grams: each.grams * factor })),
  );
}

const hasMilk = ({ lines }: MadeRecipe): boolean =>
  lines.some(({ allergen }) => allergen?.en === "milk");

/** Some recipes of those that pass; one with a mistake in it is always among them. */
function someOf(kit: Kit, count: number, test: (made: MadeRecipe) => boolean): MadeRecipe[] {
  const mades = kit.make(3 * count);
  const wrong = mades.filter(({ seeded }) => seeded !== undefined);
  const right = mades.filter((made) => made.seeded === undefined && test(made));
  return [...wrong, ...right, ...mades.filter((made) => made.seeded === undefined)].slice(0, count);
}

/** Recipes as children get them: nothing with a spirit in it. */
export const forChildren = (kit: Kit, count: number): MadeRecipe[] =>
  someOf(kit, count, (made) => !hasSpirit(made));

/** A recipe without milk. */
export const sorbet = (kit: Kit): MadeRecipe => someOf(kit, 1, (made) => !hasMilk(made))[0]!;

/** What to say of the alcohol, where there is any. */
export const ofSpirits = (made: MadeRecipe, list: readonly Said[]): readonly Said[] =>
  hasSpirit(made) ? list : [];
