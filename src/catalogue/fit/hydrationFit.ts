import type { HeldWaterCurve } from "../../engine/heldWaterCurve";
import type { HydrationPlan } from "./plan";
import type { FreezingPointOfOne } from "./points";
import { residualsK } from "./residuals";
import { rounded } from "./seriesFit";

export type HydrationCurve = Extract<HeldWaterCurve, { form: "hydration" }>;

/** The constant with the least sum of squares of printed freezing points, by golden section. */
export function fitHydration(
  { sites, warm }: Pick<HydrationPlan, "sites" | "warm">,
  points: readonly FreezingPointOfOne[],
): HydrationCurve {
  const curveOf = (constant: number): HydrationCurve => ({
    form: "hydration",
    sites,
    constantFreezing: constant,
    constant25C: "constant" in warm ? warm.constant : rounded(constant * warm.ratio),
  });
  const misfit = (constant: number) =>
    residualsK(curveOf(constant), points).reduce((sum, miss) => sum + miss * miss, 0);
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [0.2, 1.6];
  while (high - low > 1e-7) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (misfit(left) < misfit(right)) high = right;
    else low = left;
  }
  return curveOf(Number(((low + high) / 2).toFixed(4)));
}
