import { boilingPointC } from "../engine/boilingPoint";
import { osmoticPressureMPa } from "../engine/osmoticPressure";
import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { tooMuchAlcohol } from "./activity";
import type { Mix } from "./mix";
import { ofArgument } from "./ofArgument";
import { solutionOf } from "./solution";

/** Alcohol boils off: its curve says nothing of the boiling point. Traces of flavour do no harm. */
const MOST_ETHANOL_FRACTION = 0.005;

const named = (result: Result<number>, argument: string): Result<number> =>
  isProblem(result) ? ofArgument(argument, result) : result;

/** Temperature at which the mix boils, °C. */
export function boilingPointOfMix(mix: Mix, pressureKPa: number): Result<number> {
  const solution = solutionOf(mix);
  if (isProblem(solution)) return solution;
  const refusal = tooMuchAlcohol(mix, MOST_ETHANOL_FRACTION, "the boiling point");
  return refusal ?? named(boilingPointC(solution, pressureKPa), "pressure");
}

const MOST_ETHANOL_OSMOTIC = 0.2;

/** Osmotic pressure of the liquid mix against pure water, MPa. */
export function osmoticPressureOfMix(mix: Mix, temperatureC: number): Result<number> {
  const solution = solutionOf(mix);
  if (isProblem(solution)) return solution;
  const refusal = tooMuchAlcohol(mix, MOST_ETHANOL_OSMOTIC, "the osmotic pressure");
  return refusal ?? named(osmoticPressureMPa(solution, temperatureC), "grams");
}
