import type { Cell, Matrix } from "../foundation/cell";
import { isProblem, type Problem } from "../foundation/problem";
import type { WorksheetFunction } from "../worksheet/worksheetFunction";
import { argumentsOf } from "./callFormula";

/** A bad value for one argument of a function's example, and what the function says to it. */
export interface Refusal {
  readonly parameter: string;
  /** The value as one would type it: -1, "watr", or "left out". */
  readonly given: string;
  readonly problem: Problem;
}

type Kind = "number" | "text" | "unknown";

/** What people get wrong, by what the example has in its place. The first of a row that is refused is shown. */
const MISTAKES: Readonly<Record<Kind, readonly (readonly unknown[])[]>> = {
  number: [["a lot"], [-1, -100, 1.5, 150, 2000, 1e10]],
  text: [[5], ["no such word"]],
  unknown: [["no such word"], [-1, -100, 150, 2000, 1e10]],
};

const isRange = (value: unknown): value is readonly (readonly unknown[])[] => Array.isArray(value);

const firstCell = (value: unknown): unknown => (isRange(value) ? value[0]?.[0] : value);

function kindOf(value: unknown): Kind {
  const cell = firstCell(value);
  return typeof cell === "number" ? "number" : typeof cell === "string" ? "text" : "unknown";
}

/** The example's value with its first cell replaced; the other cells of a range stay. */
const withCell = (value: unknown, cell: unknown): unknown =>
  isRange(value)
    ? value.map((row, r) => row.map((old, c) => (r === 0 && c === 0 ? cell : old)))
    : cell;

const typed = (value: unknown): string => (value === null ? "left out" : JSON.stringify(value));

/** A name with its last letter missing is what a typing error looks like. */
const misspelt = (value: unknown): readonly unknown[] => {
  const cell = firstCell(value);
  return typeof cell === "string" && cell.length > 3 ? [cell.slice(0, -1)] : [];
};

function problemIn(answer: Matrix): Problem | null {
  const found = answer.flat().find((cell: Cell): cell is Problem => isProblem(cell));
  return found ?? null;
}

/** Two mistakes that get the same sentence are shown as one. */
const isFirstOfItsKind = ({ problem }: Refusal, at: number, all: readonly Refusal[]): boolean =>
  all.findIndex((other) => other.problem.message === problem.message) === at;

/** The sentences with which a function answers mistakes in its own example, at most two an argument. */
export function refusalsOf({ parameters, example, evaluate }: WorksheetFunction): Refusal[] {
  const good = parameters.map((_, at) => argumentsOf(example.formula)[at] ?? null);
  return parameters.flatMap(({ name, optional }, at) => {
    const value = good[at];
    const rows: readonly (readonly unknown[])[] = [
      misspelt(value),
      ...MISTAKES[kindOf(value)],
      optional ? [] : [null],
    ];
    const refused = rows.flatMap((tries): Refusal[] => {
      for (const bad of tries) {
        const given = bad === null ? null : withCell(value, bad);
        const problem = problemIn(evaluate(good.map((one, i) => (i === at ? given : one))));
        if (problem !== null) return [{ parameter: name, given: typed(bad), problem }];
      }
      return [];
    });
    return refused.filter(isFirstOfItsKind).slice(0, 2);
  });
}
