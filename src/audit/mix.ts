import type { Matrix } from "../foundation/cell";
import { amountOf } from "./recipes/amounts/amountOf";
import type { ItemCheck } from "./recipes/names/knownItems";
import type { Recipe, RecipeBlock, RecipeName } from "./recipes/recipeBlock";

/** A recipe as the worksheet functions take it. */
export interface Mix {
  readonly items: readonly string[];
  readonly grams: readonly number[];
  readonly ownIngredients: Matrix | null;
}

/** What a recipe means, and whether all of it could be read without doubt. */
export interface MeantMix extends Mix {
  /** False when an ingredient with an amount is unknown or ambiguous, or its amount unreadable. */
  readonly complete: boolean;
  /** False when something with an amount is left out: an unknown ingredient, an unreadable amount. */
  readonly whole: boolean;
  /** Where each item is written. */
  readonly names: readonly RecipeName[];
}

/** The mix a recipe means: numbers typed as text are read, unknown names are left out. */
export function meantMix(block: RecipeBlock, recipe: Recipe, check: ItemCheck): MeantMix {
  const items: string[] = [];
  const grams: number[] = [];
  const names: RecipeName[] = [];
  let [complete, whole] = [true, true];
  for (const name of block.names) {
    const amount = amountOf(block, recipe, name);
    if (amount.grams === null ? amount.unreadable !== null : amount.grams < 0)
      complete = whole = false;
    if (amount.grams === null || amount.grams <= 0) continue;
    const knowledge = check(name.item);
    if (knowledge.kind !== "known") complete = false;
    if (knowledge.kind === "unknown") whole = false;
    if (knowledge.kind === "unknown") continue;
    // An ambiguous name stands for its first choice where a mistake elsewhere is sized.
    items.push(knowledge.kind === "known" ? name.item : (knowledge.choices[0] ?? name.item));
    grams.push(amount.grams);
    names.push(name);
  }
  return { items, grams, names, complete, whole, ownIngredients: block.ownIngredients };
}

const indexOf = (mix: MeantMix, { row, column }: RecipeName): number =>
  mix.names.findIndex((name) => name.row === row && name.column === column);

/** The grams of one ingredient, 0 when it is not in the mix. */
export const gramsIn = (mix: MeantMix, name: RecipeName): number =>
  mix.grams[indexOf(mix, name)] ?? 0;

/** The same mix with one ingredient's item or grams changed. */
export function changedMix(
  mix: MeantMix,
  name: RecipeName,
  change: { readonly item?: string; readonly grams?: number },
): MeantMix {
  const at = indexOf(mix, name);
  if (at < 0) return mix;
  return {
    ...mix,
    items: mix.items.map((item, index) => (index === at ? (change.item ?? item) : item)),
    grams: mix.grams.map((grams, index) => (index === at ? (change.grams ?? grams) : grams)),
  };
}
