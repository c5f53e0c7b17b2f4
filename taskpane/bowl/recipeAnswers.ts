import type { Cell, Matrix } from "../../src/foundation/cell";
import type { Aim } from "../aims/aim";
import { aimArgument } from "../aims/aimArgument";
import { curvePoints, type CurvePoint } from "../curves/curvePoints";
import { askMix } from "./askMix";
import type { RecipeInGrams } from "./toGrams";

/** The mix at one temperature; bands are one standard uncertainty. */
export interface ColdAnswers {
  readonly temperatureC: number;
  readonly iceOfWater: Cell;
  readonly iceOfMix: Cell;
  readonly iceBand: Cell;
  readonly unfrozenSolids: Cell;
  readonly unfrozenSolidsBand: Cell;
}

export interface RecipeAnswers {
  readonly freezingPointC: Cell;
  readonly freezingPointBandK: Cell;
  readonly sweetness: Cell;
  readonly sweetnessBand: Cell;
  readonly solidsGrams: Cell;
  /** Of the mix, as a fraction. */
  readonly solidsBand: Cell;
  /** At 25 °C. */
  readonly waterActivity: Cell;
  readonly waterActivityBand: Cell;
  readonly waterGrams: Cell;
  readonly totalGrams: Cell;
  readonly serving: ColdAnswers;
  readonly storage: ColdAnswers;
  /** Empty when the curve could not be computed. */
  readonly curve: readonly CurvePoint[];
  readonly check: Cell;
}

export interface Question {
  readonly recipe: RecipeInGrams;
  readonly own: Matrix | null;
  readonly servingC: number;
  readonly storageC: number;
  readonly target: Aim | null;
}

type Ask = (name: string, ...args: readonly (Cell | Matrix)[]) => Cell;

function coldAnswers(ask: Ask, temperatureC: number): ColdAnswers {
  return {
    temperatureC,
    iceOfWater: ask("ICEFRACTION", temperatureC, "water"),
    iceOfMix: ask("ICEFRACTION", temperatureC, "mix"),
    iceBand: ask("UNCERTAINTY", "ice fraction", temperatureC),
    unfrozenSolids: ask("UNFROZENSOLIDS", temperatureC),
    unfrozenSolidsBand: ask("UNCERTAINTY", "unfrozen solids", temperatureC),
  };
}

/** Every number of the bowl, each by calling the worksheet function that a cell would call. */
export function recipeAnswers({
  recipe,
  own,
  servingC,
  storageC,
  target,
}: Question): RecipeAnswers {
  const mix = { ...recipe, own };
  const ask: Ask = (name, ...args) => askMix(mix, name, ...args)[0]?.[0] ?? null;
  return {
    freezingPointC: ask("FREEZINGPOINT"),
    freezingPointBandK: ask("UNCERTAINTY", "freezing point", null),
    sweetness: ask("SWEETNESS"),
    sweetnessBand: ask("UNCERTAINTY", "sweetness", null),
    solidsGrams: ask("COMPONENT", "solids"),
    solidsBand: ask("UNCERTAINTY", "solids", null),
    waterActivity: ask("WATERACTIVITY", null),
    waterActivityBand: ask("UNCERTAINTY", "water activity", null),
    waterGrams: ask("COMPONENT", "water"),
    totalGrams: ask("COMPONENT", "total"),
    serving: coldAnswers(ask, servingC),
    storage: coldAnswers(ask, storageC),
    curve: curvePoints(mix),
    check: target === null ? null : ask("CHECK", aimArgument(target)),
  };
}
