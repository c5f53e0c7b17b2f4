import { isProblem, outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { AdjustedRecipe, Adjustment, AdjustQuestion, Way } from "./adjustment";
import { fewestIngredients } from "./fewestIngredients";
import { findObstacle } from "./obstacle";
import { outcomesOf } from "./outcomes";
import { readQuestion, type AdjustLine } from "./readQuestion";
import { solveWishes, type Solved } from "./solveWishes";
import { inSteps } from "./wholeGrams";

const MOST_WAYS = 3;

const held = (line: AdjustLine): AdjustLine => ({
  ...line,
  fromGrams: line.grams,
  toGrams: line.grams,
});

/** What lies outside its range now has to move and cannot be held. */
const canStay = ({ grams, fromGrams, toGrams }: AdjustLine): boolean =>
  grams >= fromGrams && grams <= toGrams;

/** The smallest change with plain water left as it is; null when water is not among what may change. */
function waterUntouched(lines: readonly AdjustLine[], { wishes }: AdjustQuestion): Solved {
  const isWater = ({ item }: AdjustLine) => item.content.water === 1;
  const waters = lines.filter(isWater);
  if (waters.length === 0 || !waters.every(canStay)) return null;
  return solveWishes(
    lines.map((line) => (isWater(line) ? held(line) : line)),
    wishes,
  );
}

/** The smallest change without the ingredient that changes most in the solution at hand, or the next one. */
function otherIngredients(
  lines: readonly AdjustLine[],
  { wishes }: AdjustQuestion,
  smallest: readonly number[],
): Solved {
  const changes = lines
    .map((line, at) => ({ at, by: Math.abs((smallest[at] ?? 0) - line.grams) / line.scaleGrams }))
    .filter(({ at, by }) => by > 1e-6 && lines[at] !== undefined && canStay(lines[at]))
    .sort((one, other) => other.by - one.by);
  for (const { at } of changes) {
    const without = lines.map((line, place) => (place === at ? held(line) : line));
    const found = solveWishes(without, wishes);
    if (found !== null && !isProblem(found)) return found;
  }
  return null;
}

/** A solution in the asked steps, with every wish recomputed. */
function finished(
  lines: readonly AdjustLine[],
  { wishes, stepGrams = null }: AdjustQuestion,
  way: Way,
  solution: readonly number[],
): Result<AdjustedRecipe> {
  const grams = stepGrams === null ? solution : inSteps(lines, wishes, solution, stepGrams);
  if (grams === null) {
    return outsideValidity(
      `stepGrams: no amounts in steps of ${stepGrams ?? 0} g lie within the given ranges; wider ranges or a smaller step are expected.`,
    );
  }
  const outcomes = outcomesOf(lines, wishes, grams);
  return isProblem(outcomes) ? outcomes : { way, grams, outcomes };
}

const sameGrams = (one: readonly number[], other: readonly number[]): boolean =>
  one.every((grams, at) => Math.abs(grams - (other[at] ?? 0)) <= 1e-6 * Math.max(grams, 1));

/**
 * The smallest change of a recipe that meets all wishes, and up to two other ways where they differ: the one
 * that touches the fewest ingredients, the one that leaves water alone, the one that leaves alone what the
 * first changes most. A change is the sum over the
 * ingredients of grams changed by grams there. Or the one wish that stands in the way and by how much.
 * Every answer is recomputed from its mix; a problem is one sentence naming what was wrong in the question.
 */
export function adjustRecipe(question: AdjustQuestion): Result<Adjustment> {
  const lines = readQuestion(question);
  if (isProblem(lines)) return lines;
  const smallest = solveWishes(lines, question.wishes);
  if (isProblem(smallest)) return smallest;
  if (smallest === null) {
    const obstacle = findObstacle(lines, question.wishes);
    return isProblem(obstacle) ? obstacle : { kind: "obstacle", obstacle };
  }
  const first = finished(lines, question, "smallest change", smallest);
  if (isProblem(first)) return first;
  const recipes = [first];
  const others: readonly (readonly [Way, Solved])[] = [
    ["fewest ingredients", fewestIngredients(lines, question.wishes, smallest)],
    ["water untouched", waterUntouched(lines, question)],
    ["other ingredients", otherIngredients(lines, question, smallest)],
  ];
  for (const [way, solution] of others) {
    if (solution === null || isProblem(solution) || recipes.length === MOST_WAYS) continue;
    const found = finished(lines, question, way, solution);
    if (isProblem(found)) continue;
    if (!recipes.some(({ grams }) => sameGrams(grams, found.grams))) recipes.push(found);
  }
  return { kind: "adjusted", recipes };
}
