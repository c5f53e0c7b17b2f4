import { isProblem } from "../../src/foundation/problem";
import type { PaneContext } from "../view";
import type { RecipeAnswers } from "./recipeAnswers";
import { recipeTrouble } from "./recipeTrouble";

/** What a screen reader is told when another recipe, target or temperature is shown. */
export function spokenAnswer(
  title: string,
  answers: RecipeAnswers,
  { words, numbers }: PaneContext,
): string {
  const trouble = recipeTrouble(answers.waterGrams, answers.freezingPointC);
  if (trouble !== null) return `${title}: ${words.said(trouble)}`;
  const { freezingPointC: point, freezingPointBandK: band, check } = answers;
  const written = (pointC: number) =>
    typeof band === "number"
      ? numbers.withBand(pointC, band, "°C")
      : `${numbers.fixed(pointC, 2)} °C`;
  const ice =
    typeof point === "number"
      ? `${words.freezingPoint} ${written(point)}.`
      : isProblem(point)
        ? words.said(point.message)
        : words.noAnswer;
  const verdict = isProblem(check)
    ? words.said(check.message)
    : check === null
      ? ""
      : `${words.said(String(check))}.`;
  return `${title}: ${ice} ${verdict}`.trim();
}
