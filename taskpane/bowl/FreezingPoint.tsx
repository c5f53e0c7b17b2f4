import { isProblem } from "../../src/foundation/problem";
import type { PaneContext } from "../view";
import type { RecipeAnswers } from "./recipeAnswers";

interface FreezingPointProps {
  readonly context: PaneContext;
  readonly answers: RecipeAnswers;
}

/** The first number one asks for, with its band; or the sentence why there is none. */
export function FreezingPoint({ context, answers }: FreezingPointProps) {
  const { words, numbers } = context;
  const { freezingPointC: point, freezingPointBandK: band } = answers;
  if (typeof point !== "number") {
    return (
      <p class="headline-sentence">
        {isProblem(point) ? words.said(point.message) : words.noAnswer}
      </p>
    );
  }
  return (
    <p class="headline">
      <span class="headline-label">{words.freezingPoint}</span>
      <data class="headline-value" value={String(point)}>
        {typeof band === "number"
          ? numbers.withBand(point, band, "°C")
          : `${numbers.fixed(point, 2)} °C`}
      </data>
      <span class="headline-note">
        {typeof band === "number" ? words.bandNote : words.bandUnknown}
      </span>
    </p>
  );
}
