import type { RecognisedRecipe } from "../bowl/recognised";
import { isTotalName } from "../bowl/recipeRows";
import type { SteerLine } from "./steerLines";

/** What is to be written beside a recipe. */
export interface NewAmounts {
  readonly header: string;
  /** Along the recipe's lines; null leaves the cell empty, "sum" adds up those above it. */
  readonly amounts: readonly (number | "sum" | null)[];
  /** What was not in the recipe before. */
  readonly added: readonly { readonly name: string; readonly grams: number }[];
}

/** Digits that no scale shows any more, without the tail of a binary number. */
const written = (grams: number): number => Number(grams.toFixed(6));

/** The changed amounts along the recipe's own lines. Only a single total at the end is carried on. */
export function newAmounts(
  recipe: RecognisedRecipe,
  lines: readonly SteerLine[],
  grams: readonly number[],
  adjustedWord: string,
): NewAmounts {
  const changed = lines.map((line, at) => ({ ...line, grams: written(grams[at] ?? 0) }));
  const added = changed.filter(({ place, grams: amount }) => place === null && amount > 0);
  const totals = recipe.lines.filter(({ name }) => isTotalName(name));
  const isPlain = recipe.unit === "g" || recipe.unit === "%";
  const head = isPlain && recipe.amountHeader !== "" ? recipe.amountHeader : "g";
  return {
    header: `${recipe.direction === "across" ? recipe.title : head} ${adjustedWord}`,
    amounts: recipe.lines.map(({ name }, place) => {
      if (isTotalName(name)) {
        const isLast = place === recipe.lines.length - 1;
        return totals.length === 1 && isLast && added.length === 0 ? "sum" : null;
      }
      return changed.find((line) => line.place === place)?.grams ?? null;
    }),
    added: added.map(({ name, grams: amount }) => ({ name, grams: amount })),
  };
}
