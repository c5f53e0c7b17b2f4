import type { Cell } from "../../src/foundation/cell";
import { isProblem, type Problem } from "../../src/foundation/problem";
import { callFunction } from "../../src/worksheet/callFunction";

export const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);

/** The one cell that a call answers. */
export function cellOf(name: string, ...args: readonly unknown[]): Cell {
  const answer = callFunction(name, ...args);
  if (answer.length !== 1 || answer[0]!.length !== 1) throw new Error(`${name} spilled`);
  return answer[0]![0]!;
}

/** The number that a call answers. */
export function numberOf(name: string, ...args: readonly unknown[]): number {
  const cell = cellOf(name, ...args);
  if (typeof cell === "number") return cell;
  throw new Error(`${name} answered ${isProblem(cell) ? cell.message : String(cell)}`);
}

/** The problem that a call answers. */
export function problemOf(name: string, ...args: readonly unknown[]): Problem {
  const cell = cellOf(name, ...args);
  if (isProblem(cell)) return cell;
  throw new Error(`${name} answered ${String(cell)}`);
}

/** A function of a recipe given as grams by name. */
export const ofRecipe = (
  name: string,
  grams: Readonly<Record<string, number>>,
  ...more: readonly unknown[]
) => numberOf(name, column(Object.keys(grams)), column(Object.values(grams)), ...more);
