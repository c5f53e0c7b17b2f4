import type { LabelledPair } from "./labelledPairs";

/** One dissolved substance of a worked example: where it is named, its mass, what is said of it. */
export interface FormSolute {
  /** Named by the values of a pair, or by the label of its mass. */
  named: LabelledPair | null;
  item: string | null;
  mass: LabelledPair | null;
  readonly details: Map<"molar mass" | "moles" | "particles", LabelledPair>;
}

/** A worked example as its labels tell it. */
export interface Form {
  readonly solutes: FormSolute[];
  water: LabelledPair | null;
  /** Other labelled numbers, the answers among them. */
  readonly others: LabelledPair[];
  readonly pairs: LabelledPair[];
  /** Set when something is dissolved in another liquid than water. */
  isOtherSolvent: boolean;
  /** Whether the water was given after a substance. */
  isWaterLast: boolean;
  /** Whether a bare mass would be that of the liquid just named. */
  isAboutWater: boolean;
}
