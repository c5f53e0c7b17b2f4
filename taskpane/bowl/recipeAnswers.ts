import type { Cell, Matrix } from "../../src/foundation/cell";
import { isProblem } from "../../src/foundation/problem";
import { callFunction } from "../../src/worksheet/callFunction";
import { worksheetFunctions } from "../../src/worksheet/functions";
import { curvePoints, type CurvePoint } from "../curves/curvePoints";
import type { RecipeInGrams } from "./toGrams";

/** The mix at one temperature; bands are one standard uncertainty. */
export interface ColdAnswers {
  readonly temperatureC: number;
  readonly iceOfWater: Cell;
  readonly iceOfMix: Cell;
  readonly iceBand: Cell;
  readonly unfrozenSolids: Cell;
}

export interface RecipeAnswers {
  readonly freezingPointC: Cell;
  readonly freezingPointBandK: Cell;
  readonly sweetness: Cell;
  readonly solidsGrams: Cell;
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
  readonly target: string | null;
}

const known = new Set(worksheetFunctions.map(({ name }) => name));

type Ask = (name: string, ...more: readonly unknown[]) => Matrix;

/** Asks a function about the recipe; a function that is not there yet leaves its answer blank. */
const asker =
  ({ recipe }: Question): Ask =>
  (name, ...more) =>
    known.has(name) ? callFunction(name, recipe.items, recipe.grams, ...more) : [[null]];

const first = (answer: Matrix): Cell => answer[0]?.[0] ?? null;

function coldAnswers(ask: Ask, temperatureC: number, own: Matrix | null): ColdAnswers {
  return {
    temperatureC,
    iceOfWater: first(ask("ICEFRACTION", temperatureC, "water", own)),
    iceOfMix: first(ask("ICEFRACTION", temperatureC, "mix", own)),
    iceBand: first(ask("UNCERTAINTY", "ice fraction", temperatureC, own)),
    unfrozenSolids: first(ask("UNFROZENSOLIDS", temperatureC, own)),
  };
}

/** Every number of the bowl, each by calling the worksheet function that a cell would call. */
export function recipeAnswers(question: Question): RecipeAnswers {
  const { own, servingC, storageC, target } = question;
  const ask = asker(question);
  return {
    freezingPointC: first(ask("FREEZINGPOINT", own)),
    freezingPointBandK: first(ask("UNCERTAINTY", "freezing point", null, own)),
    sweetness: first(ask("SWEETNESS", own)),
    solidsGrams: first(ask("COMPONENT", "solids", own)),
    waterGrams: first(ask("COMPONENT", "water", own)),
    totalGrams: first(ask("COMPONENT", "total", own)),
    serving: coldAnswers(ask, servingC, own),
    storage: coldAnswers(ask, storageC, own),
    curve: curvePoints({ ...question.recipe, own }),
    check: target === null ? null : first(ask("CHECK", target, own)),
  };
}

/** The sentence that explains why nothing can be said of the recipe, when that is so. */
export function recipeTrouble({ waterGrams, freezingPointC }: RecipeAnswers): string | null {
  if (isProblem(waterGrams)) return waterGrams.message;
  // What the user can fix in a cell spoils everything; "no ice can form" is an answer like others.
  const broken = isProblem(freezingPointC) && freezingPointC.kind === "badInput";
  return broken ? freezingPointC.message : null;
}
