import type { Cell, Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";
import type { WorksheetFunction } from "../../src/worksheet/worksheetFunction";
import { answerFor } from "./answerFor";

/** One line of WORKING: a step with the sum as it would be typed. */
export interface BoardLine {
  readonly step: string;
  readonly formula: string;
  readonly numbers: string;
  readonly result: Cell;
  readonly unit: string;
  readonly source: string;
}

/** The same question answered by the classroom's ideal law, beside the real answer. */
export interface IdealAnswer {
  readonly ideal: number;
  readonly real: number;
  readonly unit: string;
}

export interface Explanation {
  readonly answer: Matrix;
  /** How many recipes the call holds; 0 when it is not about a recipe. */
  readonly recipes: number;
  /** The board for the chosen recipe; empty when the function has none. */
  readonly board: readonly BoardLine[];
  /** Why there is no board though the call is about a recipe. */
  readonly boardTrouble: string | null;
  readonly ideal: IdealAnswer | null;
}

const asMatrix = (value: Cell | Matrix | undefined): Matrix =>
  Array.isArray(value) ? (value as Matrix) : [[(value ?? null) as Cell]];

const text = (cell: Cell | undefined): string =>
  typeof cell === "string" || typeof cell === "number" ? String(cell) : "";

/** Names that run across have a recipe in every row, names that run down in every column. */
function recipesOf(items: Matrix, grams: Matrix): readonly Matrix[] {
  const isAcross = items.length === 1 && (items[0]?.length ?? 0) > 1;
  return isAcross
    ? grams.map((row) => [row])
    : (grams[0] ?? []).map((_cell, column) => grams.map((row) => [row[column] ?? null]));
}

function boardOf(rows: Matrix): Pick<Explanation, "board" | "boardTrouble"> {
  const [first] = rows;
  const cell = first?.[0];
  if (rows.length === 1 && typeof cell === "object" && cell !== null) {
    return { board: [], boardTrouble: cell.message };
  }
  const board = rows.slice(1).map(([step, formula, numbers, result = null, unit, source]) => ({
    step: text(step),
    formula: text(formula),
    numbers: text(numbers),
    result,
    unit: text(unit),
    source: text(source),
  }));
  return { board, boardTrouble: null };
}

/** What the ideal law's depression makes of the question, for the functions that ask for just that. */
function idealAnswer(
  name: string,
  board: readonly BoardLine[],
  real: Cell | null,
  temperature: Cell | undefined,
): IdealAnswer | null {
  const idealK = board.find(({ step }) => step === "depression by the ideal law")?.result;
  if (typeof idealK !== "number" || typeof real !== "number") return null;
  if (name === "FREEZINGPOINT") return { ideal: -idealK, real, unit: "°C" };
  if (name === "DEPRESSION") return { ideal: idealK, real, unit: "K" };
  if (name !== "ICEFRACTION" || typeof temperature !== "number" || temperature >= 0) return null;
  // What is still liquid has to be as strong as the temperature asks: held share = Kf·m / −T.
  return { ideal: Math.max(0, 1 + idealK / temperature), real, unit: "fraction" };
}

/** Answers a call anew and writes its working for one of its recipes, counted from zero. */
export function explainCall(
  { name, parameters }: WorksheetFunction,
  args: readonly (Cell | Matrix)[],
  chosen: number,
): Explanation {
  const answer = callFunction(name, ...args);
  const given = (parameter: string) => {
    const at = parameters.findIndex((each) => each.name === parameter);
    return at < 0 ? undefined : args[at];
  };
  const items = asMatrix(given("items"));
  const isRecipe = parameters.some((each) => each.name === "grams") && given("items") !== undefined;
  const none = { board: [], boardTrouble: null, ideal: null };
  if (!isRecipe) return { answer, recipes: 0, ...none };
  const all = recipesOf(items, asMatrix(given("grams")));
  const grams = all[Math.min(chosen, all.length - 1)];
  if (grams === undefined) return { answer, recipes: 0, ...none };
  const temperatures = asMatrix(given("temperature")).flat();
  const temperature = temperatures[temperatures.length === all.length ? chosen : 0];
  const own = given("ownIngredients") ?? null;
  const working = boardOf(callFunction("WORKING", items, grams, temperature ?? null, own));
  const isWater = (given("basis") ?? "water") === "water";
  const real = answerFor({ answer, recipes: all.length }, chosen);
  const ideal = isWater ? idealAnswer(name, working.board, real, temperature) : null;
  return { answer, recipes: all.length, ...working, ideal };
}
