import type { Cell, Matrix } from "../../src/foundation/cell";

/** The one cell that answers for a recipe of a call; null when the answer is a block of another shape. */
export function answerFor(
  { answer, recipes }: { readonly answer: Matrix; readonly recipes: number },
  recipe: number,
): Cell | null {
  const cells = answer.flat();
  if (cells.length === 1) return cells[0] ?? null;
  return cells.length === recipes ? (cells[recipe] ?? null) : null;
}
