import { biotNumber, freezingTimeS, surfaceC, type Piece } from "../engine/thermal/freezingTime";
import { badInput, isProblem, outsideValidity, type Problem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { freezingPointOfMix } from "./freezing";
import type { Mix } from "./mix";
import { shownTemperature } from "./shownTemperature";
import { thermalOf } from "./thermal";

/**
 * Heat transfer at the surface, W/(m²·K). Still air of a household freezer 5 to 10, its fan 10 to 20, an air blast
 * 15 to 35, stirred brine around a mould 200 to 500: from memory of food-engineering texts and common practice.
 * @source commonPractice
 */
export const AIRFLOWS = { still: 8, fan: 15, blast: 25, brine: 200 } as const;
export type Airflow = keyof typeof AIRFLOWS;

/** In how many dimensions the cold comes in. */
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

/** Limits of the method: water of the foods it was checked on, Biot number. @source pham1984; pham1986 */
const LEAST_WATER_FRACTION = 0.55;
const MOST_BIOT = 11;
/** Coldest surroundings answered, °C: what mixes hold as ice is checked to about here. */
const COLDEST_AIR_C = -45;

/** What does not fit together in the task itself. */
function wrongTask({ startC, coreC, airC }: FreezingTask): Problem | null {
  if (startC === coreC) {
    return badInput(
      `coreTemperature: ${coreC} °C is the start temperature already; another one is expected.`,
    );
  }
  if (startC > coreC ? airC >= coreC : airC <= coreC) {
    return badInput(
      `coreTemperature: ${coreC} °C is not reached from ${startC} °C in surroundings at ${airC} °C (airTemperature); it must lie between the two.`,
    );
  }
  return Math.min(airC, startC) < COLDEST_AIR_C
    ? outsideValidity(
        `${airC < startC ? "airTemperature" : "startTemperature"}: ${Math.min(airC, startC)} °C is not answered; the method is checked down to ${COLDEST_AIR_C} °C.`,
      )
    : null;
}

/** Why the method does not hold for this mix and task. */
function outside(mix: Mix, task: FreezingTask, freezingPointC: number): Problem | null {
  const water = (mix.waterGrams + mix.pieceWaterGrams) / mix.totalGrams;
  if (water < LEAST_WATER_FRACTION) {
    return outsideValidity(
      `grams: the mix holds ${(100 * water).toFixed(0)} % of water; the method is checked from ${(100 * LEAST_WATER_FRACTION).toFixed(0)} % up.`,
    );
  }
  if (task.coreC >= freezingPointC) {
    return outsideValidity(
      `coreTemperature: ${task.coreC} °C is not below the freezing point of the mix, ${shownTemperature(freezingPointC)} °C; the method answers freezing, and warming up to below it.`,
    );
  }
  return null;
}

/** Nearer to the freezing point than this the method is checked for calmly cooled pieces only. */
const NEAR_POINT_K = 2;
const CALM_BIOT = 0.5;

/** Why the method does not hold for the piece as it would be cooled or warmed. */
function outsidePiece(piece: Piece, task: FreezingTask, freezingPointC: number): Problem | null {
  const biot = biotNumber(piece);
  if (biot > MOST_BIOT) {
    return outsideValidity(
      `thicknessMm: ${task.thicknessMm} mm with "${task.airflow}" gives a Biot number of ${biot.toFixed(1)}; the method is checked to ${MOST_BIOT}.`,
    );
  }
  if (task.coreC > freezingPointC - NEAR_POINT_K && biot > CALM_BIOT) {
    return outsideValidity(
      `coreTemperature: ${task.coreC} °C is less than ${NEAR_POINT_K} K below the freezing point of the mix, ${shownTemperature(freezingPointC)} °C; so near the method is checked to a Biot number of ${CALM_BIOT}, and here it is ${biot.toFixed(1)}.`,
    );
  }
  const surface = surfaceC(piece, task.coreC);
  return task.startC < task.coreC && surface >= freezingPointC
    ? outsideValidity(
        `airTemperature: at ${task.airC} °C the surface melts (${shownTemperature(surface)} °C) before the core is at ${task.coreC} °C; colder or calmer surroundings, or a thinner piece, are expected.`,
      )
    : null;
}

/**
 * Hours until the core of a piece that is cooled (or warmed) on all its faces reaches a temperature, its heat
 * by this project's own share of ice. ± 30 %.
 * @source pham1984; pham1986; plank1941
 */
export function freezingTimeH(mix: Mix, task: FreezingTask): Result<number> {
  const wrong = wrongTask(task);
  if (wrong !== null) return wrong;
  const freezingPointC = freezingPointOfMix(mix);
  if (isProblem(freezingPointC)) return freezingPointC;
  const thermal = thermalOf(mix);
  if (isProblem(thermal)) return thermal;
  const { startC, coreC } = task;
  const piece: Piece = {
    halfThicknessM: task.thicknessMm / 2000,
    dimensions: SHAPES[task.shape],
    surfaceWPerM2K: AIRFLOWS[task.airflow],
    surroundingsC: task.airC,
    ...thermal.conductionAt(coreC),
  };
  const { heatContentJPerKg } = thermal;
  return (
    outside(mix, task, freezingPointC) ??
    outsidePiece(piece, task, freezingPointC) ??
    freezingTimeS(piece, { startC, coreC, freezingPointC, heatContentJPerKg }) / 3600
  );
}
