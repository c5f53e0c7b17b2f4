import { distance } from "fastest-levenshtein";
import { calledFunctions } from "../workbook/calledFunctions";
import type { Workbook } from "../workbook/model";
import { isGridError, type GridAnswer } from "../workbook/univer/gridAnswer";
import { gridFunctionOf, type GridFunction } from "../workbook/univer/gridFunction";
import { openHeadlessGrid } from "../workbook/univer/headlessGrid";
import { worksheetFunctions } from "../worksheet/functions";

export interface CalculatedLine {
  /** One JSON object: {"formula", "value"} or {"formula", "error", "message"}. */
  readonly line: string;
  /** False when the formula could not even be read. */
  readonly isReadable: boolean;
}

export interface Calculator {
  /** What the user has to know about the workbook's own formulas, or null. */
  readonly note: string | null;
  readonly answer: (formula: string) => Promise<CalculatedLine>;
  readonly close: () => void;
}

// More formulas without a stored result than this are left blank rather than waited for.
const MOST_FORMULAS = 10_000;

const NO_FORMULA = { error: "#ERROR!", message: "" };

function unreadable(formula: string): CalculatedLine {
  const message = formula.startsWith("=")
    ? "This is not a formula that can be read: look for a missing bracket, quote or argument."
    : `A formula starts with "=", as in =1+1.`;
  return { line: JSON.stringify({ formula, ...NO_FORMULA, message }), isReadable: false };
}

/** The sentence for a function nobody knows, with the nearest of ours. */
function unknownFunction(
  formula: string,
  functions: readonly GridFunction[],
  isKnown: (name: string) => boolean,
): string | null {
  const unknown = calledFunctions(formula).find((name) => !isKnown(name));
  if (unknown === undefined) return null;
  const [nearest] = functions
    .map(({ name }) => ({ name, steps: distance(name, unknown.toUpperCase()) }))
    .sort((a, b) => a.steps - b.steps);
  const hint =
    nearest !== undefined && nearest.steps <= 4 ? ` The nearest is ${nearest.name}.` : "";
  return `There is no function ${unknown}.${hint}`;
}

const jsonLine = (formula: string, answer: GridAnswer): string =>
  JSON.stringify(isGridError(answer) ? { formula, ...answer } : { formula, value: answer });

/** Answers formulas as the grid does; cells they refer to are those of the workbook. */
export async function openCalculator(
  workbook: Workbook,
  functions: readonly GridFunction[] = worksheetFunctions.map(gridFunctionOf),
): Promise<Calculator> {
  let kept = 0;
  const grid = openHeadlessGrid(
    workbook,
    functions,
    (_sheet, _row, _column, { value }) => value === null && (kept += 1) <= MOST_FORMULAS,
  );
  if (kept > 0) await grid.recalculate();
  const answer = async (given: string): Promise<CalculatedLine> => {
    const formula = given.trim();
    const found = await grid.evaluate(formula);
    if (found === null) return unreadable(formula);
    const { value } = found;
    const isUnknown = isGridError(value) && value.error === "#NAME?";
    const message = isUnknown ? unknownFunction(formula, functions, grid.knowsFunction) : null;
    const shown = message === null ? value : { error: "#NAME?", message };
    return { line: jsonLine(formula, shown), isReadable: true };
  };
  const left = kept - MOST_FORMULAS;
  const note =
    left > 0
      ? `The workbook has ${kept} formulas without a stored result; ${left} of them are taken as blank.`
      : null;
  return { note, answer, close: grid.close };
}
