import { isProblem } from "../../src/foundation/problem";
import { callFunction } from "../../src/worksheet/callFunction";
import { callText, type FormulaArgument } from "./formulaText";

/** A formula for a cell, and what the cell would show. */
export interface CellFormula {
  readonly formula: string;
  readonly shows: number | string;
}

/** The call of one function as a formula; null where the function gives no value. */
export function cellFormula(name: string, ...args: readonly FormulaArgument[]): CellFormula | null {
  const shows = callFunction(name, ...args)[0]?.[0] ?? null;
  return shows === null || isProblem(shows) || typeof shows === "boolean"
    ? null
    : { formula: `=${callText(name, args)}`, shows };
}
