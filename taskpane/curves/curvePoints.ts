import { askMix, type RecipeMix } from "../bowl/askMix";

export interface CurvePoint {
  readonly temperatureC: number;
  readonly iceOfWater: number;
  readonly iceOfMix: number;
  readonly unfrozenSolids: number | null;
  /** One standard uncertainty of iceOfWater; null where it is not known. */
  readonly band: number | null;
}

export const CURVE_TO_C = -30;
const CURVE_STEPS = 60;

const numberOrNull = (cell: unknown): number | null => (typeof cell === "number" ? cell : null);

/** The freezing curve of a mix with its band; empty where a function declines. */
export function curvePoints(mix: Omit<RecipeMix, "title">): readonly CurvePoint[] {
  const [, ...rows] = askMix(mix, "FREEZINGCURVE", 0, CURVE_TO_C, CURVE_STEPS);
  const temperatures = rows.map(([temperature = null]) => [temperature]);
  const bands = askMix(mix, "UNCERTAINTY", "ice fraction", temperatures);
  return rows.flatMap(([temperatureC, iceOfWater, iceOfMix, solids], at) => {
    if (typeof temperatureC !== "number") return [];
    if (typeof iceOfWater !== "number" || typeof iceOfMix !== "number") return [];
    return {
      temperatureC,
      iceOfWater,
      iceOfMix,
      unfrozenSolids: numberOrNull(solids),
      band: numberOrNull(bands[at]?.[0]),
    };
  });
}
