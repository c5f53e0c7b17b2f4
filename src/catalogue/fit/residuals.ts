import type { HeldWaterCurve } from "../../engine/heldWaterCurve";
import { freezingPointC } from "../../engine/freezingPoint";
import { isProblem } from "../../foundation/problem";
import type { FreezingPointOfOne } from "./points";

/** Computed minus printed freezing point, K; 99 where the curve gives none. */
export function residualsK(curve: HeldWaterCurve, points: readonly FreezingPointOfOne[]): number[] {
  return points.map(({ molalityMolPerKg, freezingPointC: printed }) => {
    const computed = freezingPointC({ waterKg: 1, solutes: [{ moles: molalityMolPerKg, curve }] });
    return isProblem(computed) ? 99 : computed - printed;
  });
}

export const rootMeanSquare = (values: readonly number[]) =>
  values.length === 0
    ? 0
    : Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

export const largest = (values: readonly number[]) =>
  values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
