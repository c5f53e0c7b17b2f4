import type { Matrix } from "../../src/foundation/cell";
import { askMix, firstNumber, type RecipeMix } from "../bowl/askMix";

/** A place in the diagram: the share of dissolved matter in what is liquid, and a temperature. */
export interface StatePoint {
  readonly solidsFraction: number;
  readonly temperatureC: number;
}

export interface StateLines {
  /** Where ice and solution are in equilibrium, from pure water to the end of freezing. */
  readonly freezing: readonly StatePoint[];
  /** Where the solution turns to glass; empty where a function declines. */
  readonly glass: readonly StatePoint[];
  /** Tm′ and the solids left there; null where a function declines. */
  readonly end: StatePoint | null;
  /** The mix as weighed: its share of dissolved matter. */
  readonly mixSolidsFraction: number;
}

const COLDEST_C = -50;
const STEPS = 50;
const WARM_C = 20; // nothing is frozen: the dissolved share of all the water
const GLASS_SOLIDS = [0.3, 0.4, 0.5, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.93, 0.96];

const points = (rows: Matrix): StatePoint[] =>
  rows.flatMap(([temperatureC, ice, , solidsFraction]) =>
    typeof temperatureC === "number" &&
    typeof solidsFraction === "number" &&
    typeof ice === "number" &&
    ice > 0
      ? [{ solidsFraction, temperatureC }]
      : [],
  );

/** The same dissolved matter in so much more or less water that a share of dissolved matter is reached. */
function withSolids(
  mix: RecipeMix,
  waterGrams: number,
  mixSolids: number,
  wished: number,
): RecipeMix {
  const dissolved = (waterGrams * mixSolids) / (1 - mixSolids);
  const more = (dissolved * (1 - wished)) / wished - waterGrams;
  return {
    ...mix,
    items: [...mix.items, [more < 0 ? "water lost" : "water"]],
    grams: [...mix.grams, [Math.abs(more)]],
  };
}

/** The state diagram of a mix: its freezing line, its glass line, where they end. Null where it is declined. */
export function stateLines(mix: RecipeMix): StateLines | null {
  const mixSolidsFraction = firstNumber(askMix(mix, "UNFROZENSOLIDS", WARM_C));
  const water = firstNumber(askMix(mix, "COMPONENT", "water"));
  if (mixSolidsFraction === null || water === null || mixSolidsFraction <= 0) return null;
  if (mixSolidsFraction >= 1) return null;
  const [, ended] = askMix(mix, "MAXFREEZECONCENTRATED");
  const [endC, endSolids] = ended ?? [];
  const end =
    typeof endC === "number" && typeof endSolids === "number"
      ? { temperatureC: endC, solidsFraction: endSolids }
      : null;
  const thin = withSolids(mix, water, mixSolidsFraction, 0.01);
  const lowest = Math.max(COLDEST_C, end?.temperatureC ?? COLDEST_C);
  const [, ...curve] = askMix(thin, "FREEZINGCURVE", 0, lowest, STEPS);
  const glass = GLASS_SOLIDS.flatMap((solidsFraction) => {
    const strong = withSolids(mix, water, mixSolidsFraction, solidsFraction);
    const temperatureC = firstNumber(askMix(strong, "GLASSTRANSITION"));
    return temperatureC === null ? [] : [{ solidsFraction, temperatureC }];
  });
  return {
    freezing: [{ solidsFraction: 0, temperatureC: 0 }, ...points(curve)],
    glass,
    end,
    mixSolidsFraction,
  };
}
