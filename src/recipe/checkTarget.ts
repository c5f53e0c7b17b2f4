import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { iceFractionOfMix, type IceBasis } from "./freezing";
import type { Mix } from "./mix";
import { notFood } from "./notFood";

/** A serving target as the check needs it. */
export interface Target {
  readonly name: string;
  readonly temperatureC: number;
  readonly iceFrom: number;
  readonly iceTo: number;
  readonly basis: IceBasis;
}

const percent = (fraction: number, digits = 0): string => (100 * fraction).toFixed(digits);

/** Whole per cent, with a decimal where rounding would hide on which side of the limit it lies. */
function percentBeyond(fraction: number, limit: number): string {
  const whole = percent(fraction);
  return whole === percent(limit)
    ? percent(fraction, Math.abs(fraction - limit) < 5e-4 ? 2 : 1)
    : whole;
}

const minus = (value: number): string => String(value).replace("-", "−");

/** "meets <target>", or by how much and in which direction the mix misses it. Not for what is no food. */
export function checkTarget(mix: Mix, target: Target): Result<string> {
  const refusal = notFood(mix);
  if (refusal !== null) return refusal;
  const { name, temperatureC, iceFrom, iceTo, basis } = target;
  const ice = iceFractionOfMix(mix, temperatureC, basis);
  if (isProblem(ice)) return ice;
  if (ice >= iceFrom && ice <= iceTo) return `meets ${name}`;
  const hard = ice > iceTo;
  const found = percentBeyond(ice, hard ? iceTo : iceFrom);
  return `too ${hard ? "hard" : "soft"}: ${found} % of the ${basis} is ice at ${minus(temperatureC)} °C, target ${percent(iceFrom)}–${percent(iceTo)} %`;
}
