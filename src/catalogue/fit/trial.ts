import type { HeldWaterCurve } from "../../engine/heldWaterCurve";
import type { FreezingPointOfOne } from "./points";
import { largest, residualsK, rootMeanSquare } from "./residuals";

type Fit = (points: readonly FreezingPointOfOne[]) => HeldWaterCurve;

/** Predicts every fifth printed figure from the other four fifths, in turn; RMS of the misses, K. */
export function crossValidationK(fit: Fit, points: readonly FreezingPointOfOne[]): number {
  const misses = [0, 1, 2, 3, 4].flatMap((fold) => {
    const kept = points.filter((_, index) => index % 5 !== fold);
    const left = points.filter((_, index) => index % 5 === fold);
    return residualsK(fit(kept), left);
  });
  return rootMeanSquare(misses);
}

/** Predicts the colder half from the warmer half; the largest miss, K. */
export function extrapolationK(fit: Fit, points: readonly FreezingPointOfOne[]): number {
  const coldest = Math.min(...points.map((point) => point.freezingPointC));
  const warm = points.filter((point) => point.freezingPointC >= coldest / 2);
  const cold = points.filter((point) => point.freezingPointC < coldest / 2);
  return largest(residualsK(fit(warm), cold));
}
