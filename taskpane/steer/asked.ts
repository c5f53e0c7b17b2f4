import type { AdjustQuestion } from "../../src/adjust/adjustment";
import type { Steered } from "./steered";
import type { SteerLine } from "./steerLines";
import type { NamedWish } from "./wishDrafts";

/** A question that was asked, with everything its answer is shown by. */
export interface Asked {
  readonly question: AdjustQuestion;
  readonly lines: readonly SteerLine[];
  readonly wishes: readonly NamedWish[];
  readonly steered: Steered;
  readonly servingC: number;
}
