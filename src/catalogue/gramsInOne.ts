import { badInput, outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { KitchenFacts } from "./kitchenFacts";
import type { Measure } from "./measures";

/**
 * Grams in one of a measure of an item, by the item's own bulk density or weight of a piece.
 * @param item name of the item, for the sentence of a refusal
 */
export function gramsInOne(measure: Measure, item: string, facts: KitchenFacts): Result<number> {
  if (measure.kind === "mass") return measure.grams;
  if (measure.kind === "volume") {
    return facts.gramsPerMl === undefined
      ? outsideValidity(`unit "${measure.name}": no bulk density of "${item}" is known; weigh it.`)
      : measure.millilitres * facts.gramsPerMl.value;
  }
  return facts.gramsPerPiece === undefined
    ? badInput(`unit "piece": "${item}" does not come in pieces of a known weight; use g.`)
    : facts.gramsPerPiece.value;
}
