import type { Cell, Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import type { Result } from "../../src/foundation/result";
import { callFunction } from "../../src/worksheet/callFunction";
import type { RecognisedRecipe } from "../bowl/recognised";
import { isTotalName } from "../bowl/recipeRows";
import { toGrams } from "../bowl/toGrams";

/** An ingredient that can be steered with. */
export interface SteerLine {
  readonly name: string;
  readonly grams: number;
  /** Which line of the recipe it is; null for one that was added here. */
  readonly place: number | null;
  /** What may change unless the user says otherwise: not salt, alcohol, glycerol, pieces or a trace. */
  readonly usual: boolean;
}

const ask = (name: string, component: string, own: Matrix | null): number => {
  const answer: Cell = callFunction("COMPONENT", name, 100, component, own)[0]?.[0] ?? null;
  return typeof answer === "number" ? answer : 0;
};

/** Grams of these in 100 g make an ingredient one that is not changed unasked. */
const STRONG: readonly (readonly [component: string, fromGrams: number])[] = [
  ["ethanol", 1],
  ["glycerol", 0.1],
  ["propylene glycol", 0.001],
  ["sodium chloride", 5],
  ["acids", 20],
  ["inert", 40],
];

const TRACE = 0.01; // of the recipe

export const isStrong = (name: string, own: Matrix | null): boolean =>
  STRONG.some(([component, fromGrams]) => ask(name, component, own) >= fromGrams);

/** The ingredients of a recipe in grams; the function's sentence when one cannot be read. */
export function steerLines(
  recipe: RecognisedRecipe,
  own: Matrix | null,
): Result<readonly SteerLine[]> {
  const { items, grams } = toGrams(recipe, own);
  const total = callFunction("COMPONENT", items, grams, "total", own)[0]?.[0] ?? null;
  if (isProblem(total)) return total;
  const lines: SteerLine[] = [];
  for (const [place, line] of recipe.lines.entries()) {
    if (typeof line.name !== "string" || line.name === "" || isTotalName(line.name)) continue;
    const amount = toGrams({ ...recipe, lines: [line] }, own).grams[0]?.[0] ?? null;
    if (isProblem(amount)) return amount;
    if (typeof amount !== "number") continue;
    const isTrace = typeof total === "number" && amount < TRACE * total;
    const usual = !isTrace && !isLost(line.name) && !isStrong(line.name, own);
    lines.push({ name: line.name, grams: amount, place, usual });
  }
  return lines;
}

/** Evaporated water cannot be chosen. */
const isLost = (name: string): boolean =>
  /^(water lost|wasserverlust|verdampftes wasser)$/i.test(name.trim());
