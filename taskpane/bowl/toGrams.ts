import type { Cell, Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";
import { toCell } from "./cells";
import type { RecipeLine, RecognisedRecipe } from "./recognised";
import { isTotalName } from "./recipeRows";

/** A recipe as the functions take it: a column of names and a column of grams. */
export interface RecipeInGrams {
  readonly items: Matrix;
  readonly grams: Matrix;
}

const isPlain = (unit: string): boolean => unit === "g" || unit === "%";

function gramsOf({ name, amount, unit }: RecipeLine, own: Matrix | null): Cell {
  const cell = toCell(amount);
  if (cell === null || isPlain(unit)) return cell;
  return callFunction("GRAMS", toCell(name), cell, unit, own)[0]?.[0] ?? null;
}

/** Household measures through RIME.GRAMS. A total is kept only where it was a sum of grams or per cent. */
export function toGrams({ lines }: RecognisedRecipe, own: Matrix | null): RecipeInGrams {
  const kept = lines.filter(({ name, unit }) => isPlain(unit) || !isTotalName(name));
  return {
    items: kept.map(({ name }) => [toCell(name)]),
    grams: kept.map((line) => [gramsOf(line, own)]),
  };
}
