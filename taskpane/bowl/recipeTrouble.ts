import type { Cell } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";

/** The sentence that explains why nothing can be said of a recipe with this water and freezing point; null when all is well. */
export function recipeTrouble(waterGrams: Cell, freezingPointC: Cell): string | null {
  if (isProblem(waterGrams)) return waterGrams.message;
  // What the user can fix in a cell spoils everything; "no ice can form" is an answer like others.
  const isBroken = isProblem(freezingPointC) && freezingPointC.kind === "badInput";
  return isBroken ? freezingPointC.message : null;
}
