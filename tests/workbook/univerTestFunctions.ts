import type { Cell, Matrix } from "../../src/foundation/cell";
import { badInput, isProblem, outsideValidity } from "../../src/foundation/problem";
import type { GridFunction } from "../../src/workbook/univer/gridFunction";

const parameter = (name: string, optional = false) => ({ name, description: name, optional });

const rowsOf = (value: unknown): Cell[][] =>
  Array.isArray(value) ? (value as Cell[][]) : [[value as Cell]];

/** What arrived, in words, so that tests see exactly what a function sees. */
export function describeCell(cell: unknown): string {
  if (cell === undefined) return "undefined";
  if (isProblem(cell)) return `${cell.kind}(${cell.message})`;
  return JSON.stringify(cell);
}

const describeArgument = (argument: unknown): string =>
  Array.isArray(argument)
    ? `[${(argument as Cell[][]).map((row) => row.map(describeCell).join(",")).join(";")}]`
    : describeCell(argument);

const halfOf = (cell: Cell): Cell => {
  if (cell === null) return null;
  if (isProblem(cell)) return badInput(`value: there is the error ${cell.message} in it.`);
  if (typeof cell !== "number") return badInput(`value: ${JSON.stringify(cell)} is not a number.`);
  return cell < 0 ? outsideValidity(`value: ${cell} is below 0.`) : cell / 2;
};

/** Small functions of the tests' own: the adapter is tested apart from what it carries. */
export const testFunctions: readonly GridFunction[] = [
  {
    name: "RIME.SEEN",
    summary: "Says what arrived.",
    parameters: [parameter("first"), parameter("second", true), parameter("third", true)],
    invoke: (args): Matrix => [[args.map(describeArgument).join(" | ")]],
  },
  {
    name: "RIME.HALF",
    summary: "Half of every value, a sentence for each that has none.",
    parameters: [parameter("value")],
    invoke: ([value]): Matrix => rowsOf(value).map((row) => row.map(halfOf)),
  },
  {
    name: "RIME.THIRD",
    summary: "A number that does not end.",
    parameters: [],
    invoke: (): Matrix => [[-1.8599999999999999 / 3]],
  },
  {
    name: "RIME.BROKEN",
    summary: "A defect.",
    parameters: [],
    invoke: (): Matrix => {
      throw new Error("a defect");
    },
  },
];
