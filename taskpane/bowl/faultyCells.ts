import type { Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import { askMix } from "./askMix";
import type { RecognisedRecipe } from "./recognised";
import { ownTrouble } from "./knownNames";
import { toGrams } from "./toGrams";

/** A cell that keeps a recipe from being computed, and what stands in it. */
export interface FaultyCell {
  readonly cell: string;
  readonly text: string;
}

/** The cells that spoil a recipe: each row is asked by itself; the name's cell where that is not known. */
export function faultyCells(recipe: RecognisedRecipe, own: Matrix | null): readonly FaultyCell[] {
  if (ownTrouble(own) !== null) return []; // no cell of the recipe is to blame
  return recipe.lines.flatMap((line) => {
    const { name, amount, cell, amountCell, known } = line;
    if (amount === "") return [];
    const row = toGrams({ ...recipe, lines: [line] }, own);
    if (!isProblem(askMix({ ...row, own }, "COMPONENT", "water")[0]?.[0])) return [];
    return [known ? { cell: amountCell, text: String(amount) } : { cell, text: String(name) }];
  });
}
