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
  /** A textbook mix that meets the target, item by item in grams: the band was computed around such mixes. */
  readonly textbookMix: {
    readonly title: string;
    readonly grams: Readonly<Record<string, number>>;
  };
  readonly obtained: HowObtained;
}
