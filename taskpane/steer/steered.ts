import { adjustRecipe } from "../../src/adjust/adjustRecipe";
import type { AdjustedRecipe, AdjustQuestion, Obstacle } from "../../src/adjust/adjustment";
import { isProblem } from "../../src/foundation/problem";
import { askedValue } from "./askMixOf";

/** What came of a question, every answer asked again of the worksheet functions. */
export type Steered =
  | { readonly kind: "recipes"; readonly recipes: readonly AdjustedRecipe[] }
  | { readonly kind: "obstacle"; readonly obstacle: Obstacle }
  | { readonly kind: "refused"; readonly sentence: string }
  | { readonly kind: "disagreeing" };

/** As close as the functions and the programme must agree, as a share of the value. */
const AGREE_WITHIN = 1e-6;
const LEAST_VALUE = 0.01;

function agrees(question: AdjustQuestion, { grams, outcomes }: AdjustedRecipe): boolean {
  const mix = { names: question.items, grams, own: question.own };
  return question.wishes.every((wish, at) => {
    const value = askedValue(wish, mix, question.pricesPerKg ?? []);
    const said = outcomes[at]?.value ?? NaN;
    return (
      value !== null &&
      Math.abs(value - said) <= AGREE_WITHIN * Math.max(Math.abs(said), LEAST_VALUE)
    );
  });
}

/** Adjusts, and lets through only what the worksheet functions answer alike. */
export function steer(question: AdjustQuestion): Steered {
  const answer = adjustRecipe(question);
  if (isProblem(answer)) return { kind: "refused", sentence: answer.message };
  if (answer.kind === "obstacle") return answer;
  const recipes = answer.recipes.filter((recipe) => agrees(question, recipe));
  return recipes.length === 0 ? { kind: "disagreeing" } : { kind: "recipes", recipes };
}
