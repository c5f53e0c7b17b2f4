import type { SourceKey } from "../../foundation/bibliography";

/** Terms of the series that a fit may use; see DEVELOPERS.md, "The physics". */
export type SeriesTerm = "a0" | "a1" | "a2" | "a3" | "e" | "e2";

interface Common {
  readonly solute: string;
  /** Least stated share of uncertainty: where one table is smoother than the truth, or others disagree. */
  readonly leastUncertainty?: number;
}

export interface HydrationPlan extends Common {
  readonly form: "hydration";
  readonly sites: number;
  /** Constant at 25 °C: a figure, or the ratio to the freezing constant of a better known homologue. */
  readonly warm: { readonly constant: number } | { readonly ratio: number };
  readonly warmSource: SourceKey;
}

export interface SeriesPlan extends Common {
  readonly form: "series";
  /** Charges of the ions, e.g. [1, -1] for NaCl, [2, -1, -1] for CaCl2; empty for a non-electrolyte. */
  readonly charges: readonly number[];
  readonly terms: readonly SeriesTerm[];
  /** Whether there are 25 °C figures to fit the temperature term to. */
  readonly warm?: boolean;
}

const salt = (
  solute: string,
  charges: readonly number[],
  terms: readonly SeriesTerm[],
  more: Partial<SeriesPlan> = {},
): SeriesPlan => ({ form: "series", solute, charges, terms, ...more });

const neutral = (
  solute: string,
  terms: readonly SeriesTerm[],
  more: Partial<SeriesPlan> = {},
): SeriesPlan => ({ form: "series", solute, charges: [], terms, ...more });

const sugar = (
  solute: string,
  sites: number,
  warm: HydrationPlan["warm"],
  warmSource: SourceKey,
  more: Partial<HydrationPlan> = {},
): HydrationPlan => ({ form: "hydration", solute, sites, warm, warmSource, ...more });

const UNI = [1, -1];
const DI_UNI = [2, -1, -1];
const UNI_DI = [1, 1, -2];

/** What is fitted, and with which terms. Terms were chosen by cross-validation and extrapolation. */
export const plans: readonly (HydrationPlan | SeriesPlan)[] = [
  sugar("sucrose", 11, { constant: 0.994 }, "stokesRobinson1966"),
  sugar("glucose", 6, { constant: 0.786 }, "stokesRobinson1966"),
  // no change with temperature: between the a_w of the saturated solution (0.63) and Norrish's 2.15
  sugar("fructose", 6, { constant: 0.745 }, "norrish1966", { leastUncertainty: 0.015 }),
  sugar("maltose", 11, { ratio: 0.994 / 1.07 }, "stokesRobinson1966"),
  sugar("mannitol", 6, { constant: 0.49 }, "chirife2010"),
  neutral("glycerol", ["a0", "a1"], { warm: true, leastUncertainty: 0.02 }),
  neutral("ethanol", ["a1", "a2", "a3", "e"], { leastUncertainty: 0.04 }),
  neutral("propylene glycol", ["a1", "a2", "e"], { leastUncertainty: 0.02 }),
  neutral("ethylene glycol", ["a0", "a2", "e"], { leastUncertainty: 0.02 }),
  neutral("methanol", ["a0", "a1", "a2"], { leastUncertainty: 0.02 }),
  neutral("2-propanol", ["a0", "a1", "e"]),
  neutral("acetone", ["a0"]),
  neutral("acetic acid", ["a0", "e"]),
  neutral("citric acid", ["e", "e2"]),
  neutral("urea", ["a0", "e", "e2"], { warm: true, leastUncertainty: 0.05 }),
  neutral("ammonia", ["a0", "a1"], { leastUncertainty: 0.02 }),
  salt("sodium chloride", UNI, ["a0", "a1", "a2", "e"], { warm: true, leastUncertainty: 0.01 }),
  salt("potassium chloride", UNI, ["a0", "e", "e2"], { warm: true }),
  salt("calcium chloride", DI_UNI, ["a0", "e", "e2"], { warm: true, leastUncertainty: 0.03 }),
  salt("magnesium chloride", DI_UNI, ["a0", "e", "e2"], { warm: true, leastUncertainty: 0.03 }),
  salt("trisodium citrate", [1, 1, 1, -3], ["e", "e2"]),
  salt("sodium acetate", UNI, ["a0", "e"]),
  salt("potassium acetate", UNI, ["a0", "e"], { leastUncertainty: 0.02 }),
  salt("sodium bicarbonate", UNI, ["a0", "e"], { leastUncertainty: 0.03 }),
  salt("sodium carbonate", UNI_DI, ["a0", "e", "e2"], { leastUncertainty: 0.03 }),
  salt("sodium sulfate", UNI_DI, ["e", "e2"], { leastUncertainty: 0.05 }),
  salt("sodium nitrate", UNI, ["e", "e2"]),
  salt("sodium dihydrogen phosphate", UNI, ["e", "e2"]),
  salt("potassium dihydrogen phosphate", UNI, ["a0", "e2"]),
  salt("potassium hydrogen phosphate", UNI_DI, ["e"]),
  salt("potassium bicarbonate", UNI, ["e", "e2"]),
  salt("potassium carbonate", UNI_DI, ["a0", "e", "e2"], { leastUncertainty: 0.03 }),
  salt("potassium sulfate", UNI_DI, ["e"]),
  salt("potassium nitrate", UNI, ["a0", "e", "e2"], { leastUncertainty: 0.03 }),
  salt("magnesium sulfate", [2, -2], ["a0", "a1", "e", "e2"], { leastUncertainty: 0.05 }),
  salt("ammonium chloride", UNI, ["a0", "a1"], { leastUncertainty: 0.02 }),
  salt("lithium chloride", UNI, ["a0", "a1", "e"]),
  salt("hydrogen chloride", UNI, ["a0", "e", "e2"]),
  salt("sodium hydroxide", UNI, ["a0", "a1", "e"]),
];
