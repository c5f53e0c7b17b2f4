import type { SourceKey } from "./bibliography";

export type HowObtained =
  | "from the source" // read from print or from a stored copy of it
  | "computed here" // calculated by this project from what the source prints
  | "from memory" // a debt: to be confirmed against print
  | "common practice"; // a fact of the trade without a source

/** A number as the catalogue keeps it: with where it comes from and how sure it is. */
export interface Figure {
  readonly value: number;
  /** Unit as shown to the user, "1" when dimensionless. */
  readonly unit: string;
  readonly source: SourceKey;
  readonly obtained: HowObtained;
  /** One standard uncertainty in the figure's own unit. */
  readonly uncertainty: number;
  /** What the uncertainty rests on, in a few words. */
  readonly basis: string;
}
