import { freezingTimeS, type HeatStage } from "../engine/freezingTime";
import { badInput, isProblem, outsideValidity, type Problem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { freezingPointOfMix } from "./freezing";
import type { Mix } from "./mix";
import { conductionOf, enthalpyKJPerKg } from "./thermal";

/** Heat transfer at the surface, W/(m²·K): from memory of food-engineering texts and common practice. */
export const AIRFLOWS = { still: 8, fan: 15, blast: 25, brine: 200 } as const;
export type Airflow = keyof typeof AIRFLOWS;

/** By how much faster than a slab of the same thickness a shape loses its heat (Pham's E). */
export const SHAPES = { slab: 1, cylinder: 2, sphere: 3 } as const;
export type FreezingShape = keyof typeof SHAPES;

export interface FreezingTask {
  readonly thicknessMm: number; // full thickness, or diameter
  readonly airC: number;
  readonly startC: number;
  readonly coreC: number;
  readonly airflow: Airflow;
  readonly shape: FreezingShape;
}

/** The foods on which the method was checked hold more water than this. @source pham1986 */
const LEAST_WATER_FRACTION = 0.55;
const STEPS = 60;

function refusal(mix: Mix, { startC, coreC, airC }: FreezingTask): Problem | null {
  const cooling = startC > coreC;
  if (startC === coreC) {
    return badInput(
      `coreTemperature: ${coreC} °C is the start temperature already; another one is expected.`,
    );
  }
  if (cooling ? airC >= coreC : airC <= coreC) {
    return badInput(
      `coreTemperature: ${coreC} °C is not reached from ${startC} °C in surroundings at ${airC} °C (airTemperature); it must lie between the two.`,
    );
  }
  const water = mix.waterGrams / mix.totalGrams;
  if (water < LEAST_WATER_FRACTION) {
    return outsideValidity(
      `grams: the mix holds ${(100 * water).toFixed(0)} % of water; the method is answered from ${(100 * LEAST_WATER_FRACTION).toFixed(0)} % up.`,
    );
  }
  const pointC = freezingPointOfMix(mix);
  return isProblem(pointC) ? pointC : null;
}

/** Heat between two temperatures and the mean temperature at which it comes. */
function heatBetween(mix: Mix, warmC: number, coldC: number): Result<HeatStage> {
  if (warmC <= coldC) return { heatJPerKg: 0, meanC: warmC };
  let before = enthalpyKJPerKg(mix, warmC);
  let weighted = 0;
  let heat = 0;
  for (let step = 1; step <= STEPS; step += 1) {
    const temperatureC = warmC - ((warmC - coldC) * step) / STEPS;
    const now = enthalpyKJPerKg(mix, temperatureC);
    if (isProblem(before)) return before;
    if (isProblem(now)) return now;
    heat += before - now;
    weighted += (before - now) * (temperatureC + (warmC - coldC) / (2 * STEPS));
    before = now;
  }
  return { heatJPerKg: 1000 * heat, meanC: weighted / heat };
}

/**
 * Hours until the core of a piece that is cooled (or warmed) on all its faces reaches a temperature.
 * ΔH₁ is the heat above the freezing point at the mean of start and freezing temperature, ΔH₂ the heat below
 * it at its own mean temperature, both from this project's share of ice; for pure water that is Plank's
 * equation. ± 30 %.
 * @source pham1986; plank1941
 */
export function freezingTimeH(mix: Mix, task: FreezingTask): Result<number> {
  const wrong = refusal(mix, task);
  if (wrong !== null) return wrong;
  const pointC = freezingPointOfMix(mix);
  if (isProblem(pointC)) return pointC;
  const [warmC, coldC] = [Math.max(task.startC, task.coreC), Math.min(task.startC, task.coreC)];
  const above = heatBetween(mix, warmC, Math.max(pointC, coldC));
  const below = heatBetween(mix, Math.min(pointC, warmC), coldC);
  const conduction = conductionOf(mix, coldC);
  if (isProblem(above)) return above;
  if (isProblem(below)) return below;
  if (isProblem(conduction)) return conduction;
  const piece = {
    halfThicknessM: task.thicknessMm / 2000,
    shapeDivisor: SHAPES[task.shape],
    surfaceWPerM2K: AIRFLOWS[task.airflow],
    surroundingsC: task.airC,
    ...conduction,
  };
  return freezingTimeS(piece, [above, below]) / 3600;
}
