import type { AdjustedRecipe } from "../../src/adjust/adjustment";
import type { PaneContext } from "../view";
import type { Asked } from "./asked";
import { wishText } from "./wishDrafts";

/** What came of it, in one sentence: seen on the page and read out. */
export function outcomeSentence(
  asked: Asked,
  context: PaneContext,
  chosen?: AdjustedRecipe,
): string {
  const texts = context.words.steer;
  const { steered, wishes } = asked;
  if (steered.kind === "refused") return context.words.said(steered.sentence);
  if (steered.kind === "disagreeing") return texts.disagreeing;
  if (steered.kind === "obstacle") {
    const { wish, side, wanted, reachable } = steered.obstacle;
    const named = wishes[wish];
    if (named === undefined) return texts.disagreeing;
    return texts.obstacle[side](
      named.name,
      wishText(named, wanted, context, reachable),
      wishText(named, reachable, context, wanted),
    );
  }
  const recipe = chosen ?? steered.recipes[0];
  if (recipe === undefined) return texts.disagreeing;
  const old = asked.question.grams;
  if (recipe.grams.every((grams, at) => Math.abs(grams - (old[at] ?? 0)) < 1e-9)) {
    return texts.unchanged;
  }
  const missed = recipe.outcomes.flatMap(({ miss, value }, at) => {
    const named = wishes[at];
    if (miss === 0 || named === undefined) return [];
    const end = value > (named.wish.to ?? Infinity) ? named.wish.to : named.wish.from;
    return [texts.nearlyOne(named.name, wishText(named, value, context, end ?? NaN))];
  });
  return missed.length === 0 ? texts.checked : texts.nearly(missed.join(", "));
}
