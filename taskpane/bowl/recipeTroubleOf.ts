import type { Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import { callFunction } from "../../src/worksheet/callFunction";
import type { RecipeInGrams } from "./toGrams";

/** The sentence that explains why nothing can be said of a recipe, when that is so. */
export function recipeTroubleOf({
  items,
  grams,
  own,
}: RecipeInGrams & { readonly own: Matrix | null }): string | null {
  const water = callFunction("COMPONENT", items, grams, "water", own)[0]?.[0];
  if (isProblem(water)) return water.message;
  const point = callFunction("FREEZINGPOINT", items, grams, own)[0]?.[0];
  // What the user can fix in a cell spoils everything; "no ice can form" is an answer like others.
  return isProblem(point) && point.kind === "badInput" ? point.message : null;
}
