import type { HowObtained } from "../foundation/figure";

/** How a frozen sweet should be when it is served: the share of it that is ice at a temperature. */
export interface ServingTarget {
  readonly name: string;
  readonly aliases: { readonly en: readonly string[]; readonly de: readonly string[] };
  readonly temperatureC: number;
  readonly iceFrom: number; // fraction 0–1
  readonly iceTo: number; // fraction 0–1
  readonly basis: "water" | "mix";
  readonly note: string;
  readonly obtained: HowObtained;
}
