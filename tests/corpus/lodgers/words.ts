import { put, type Content, type CorpusSheet, type Spot } from "../book";
import { hasSpirit } from "../guests/words";
import type { Kit } from "../kit";
import type { Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { labelWords, type MadeRecipe } from "../recipes";

/** Cautions in somebody's own words. */
export type Cautions = Readonly<Record<"honey" | "alcohol" | "nuts" | "egg", string>>;

const KINDS: readonly (readonly [RegExp, keyof Cautions])[] = [
  [/^Honey/, "honey"],
  [/alcohol/, "alcohol"],
  [/nuts/, "nuts"],
  [/yolk/, "egg"],
];

/** The cautions of a recipe as this person puts them. */
export function cautionsOf(made: MadeRecipe, own: Cautions): string[] {
  if (!made.flagged) return [];
  return labelWords(made, "caution").map((caution) => {
    const kind = KINDS.find(([of]) => of.test(caution))?.[1];
    return kind === undefined ? caution : own[kind];
  });
}

/** The allergens after a lead, then the cautions; empty where there is nothing to tell. */
export function warning(made: MadeRecipe, lead: string, own: Cautions): string {
  const allergens = made.flagged ? labelWords(made, "allergen").join(", ") : "";
  return [...(allergens === "" ? [] : [`${lead} ${allergens}.`]), ...cautionsOf(made, own)].join(
    " ",
  );
}

/** Writes that into a cell; gives the next free row. */
export function warnIn(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  { row, column }: Place,
  [lead, own]: readonly [lead: string, own: Cautions],
): number {
  const words = warning(recipe.made, lead, own);
  if (words === "") return row;
  recipe.flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** A labelled number with its unit in brackets behind the label. */
export const given = (
  kit: Kit,
  sheet: CorpusSheet,
  [row, column]: readonly [row: number, column: number],
  [bare, unit, value, format]: readonly [string, string, number, string?],
): Spot =>
  input(
    kit,
    sheet,
    { row, column },
    { label: `${bare} (${unit})`, bare, value, ...(format !== undefined && { format }) },
  );

/** Contents down a column. */
export const down = (
  sheet: CorpusSheet,
  [row, column]: readonly [row: number, column: number],
  contents: readonly Content[],
): Spot[] => contents.map((content, index) => put(sheet, row + index, column, content));

/** Sorbets first, those with a spirit before the others; one with a mistake in it before all others. */
export function boozyFirst(kit: Kit, count: number): MadeRecipe[] {
  const isMilky = ({ lines }: MadeRecipe): boolean =>
    lines.some(({ allergen }) => allergen?.en === "milk");
  const rank = (made: MadeRecipe): number => {
    if (made.seeded !== undefined) return 0;
    if (hasSpirit(made)) return 1;
    return isMilky(made) ? 3 : 2;
  };
  return kit
    .make(4 * count)
    .sort((one, other) => rank(one) - rank(other))
    .slice(0, count);
}
