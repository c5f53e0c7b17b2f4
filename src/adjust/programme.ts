import { solve, type Constraint } from "yalps";
import type { AdjustLine } from "./readQuestion";
import { formValue, type LinearForm } from "./wishForm";

/** What is made as small as it can be: the change itself, or a form over the grams. */
export type Aim = "change" | LinearForm;

/** The recipe is counted in hundredths of its mass, so that the solver's precision is a share of it. */
const PARTS = 100;
const PRECISION = 1e-10;
/** What rounding may take from a row, so that ends that meet exactly are not called impossible. */
const SLACK = 1e-9;

type Entries = Map<string, number>;

/** The same row with 1 as its largest coefficient, so that all rows weigh alike. */
function evened({ perGram, constant }: LinearForm): LinearForm {
  const largest = Math.max(...perGram.map((each) => Math.abs(each)), 1e-12);
  return { perGram: perGram.map((each) => each / largest), constant: constant / largest };
}

/** The two variables of a line: how much more of it, and how much less. */
function variablesOf(
  line: AdjustLine,
  at: number,
  rows: readonly LinearForm[],
  aim: Aim,
  unitGrams: number,
): readonly (readonly [string, Entries])[] {
  if (line.fromGrams === line.grams && line.toGrams === line.grams) return [];
  const entries = (sign: 1 | -1): Entries =>
    new Map([
      ["aim", aim === "change" ? unitGrams / line.scaleGrams : sign * (aim.perGram[at] ?? 0)],
      [`range ${at}`, sign],
      ...rows.map((row, index): [string, number] => [
        `row ${index}`,
        sign * (row.perGram[at] ?? 0),
      ]),
    ]);
  return [
    [`more ${at}`, entries(1)],
    [`less ${at}`, entries(-1)],
  ];
}

function constraintsOf(
  lines: readonly AdjustLine[],
  rows: readonly LinearForm[],
  unitGrams: number,
): Map<string, Constraint> {
  const grams = lines.map((line) => line.grams);
  const constraints = new Map<string, Constraint>();
  for (const [index, row] of rows.entries()) {
    const now = formValue(row, grams) / unitGrams;
    constraints.set(`row ${index}`, { min: -now - SLACK });
  }
  for (const [at, line] of lines.entries()) {
    const [min, max] = [line.fromGrams - line.grams, line.toGrams - line.grams];
    constraints.set(`range ${at}`, { min: min / unitGrams, max: max / unitGrams });
  }
  return constraints;
}

/**
 * Grams of every line within its range with which every row is at least 0 and the aim is smallest; null when
 * there are none. Linear programming by yalps.
 */
export function solveProgramme(
  lines: readonly AdjustLine[],
  rows: readonly LinearForm[],
  aim: Aim,
): readonly number[] | null {
  const unitGrams = lines.reduce((sum, { grams }) => sum + grams, 0) / PARTS;
  const even = rows.map(evened);
  const { status, variables } = solve(
    {
      direction: "minimize",
      objective: "aim",
      constraints: constraintsOf(lines, even, unitGrams),
      variables: lines.flatMap((line, at) => variablesOf(line, at, even, aim, unitGrams)),
    },
    { precision: PRECISION },
  );
  if (status !== "optimal") return null;
  const found = new Map(variables);
  return lines.map(({ grams, fromGrams, toGrams }, at) => {
    const change = (found.get(`more ${at}`) ?? 0) - (found.get(`less ${at}`) ?? 0);
    const next = grams + change * unitGrams;
    return Math.min(Math.max(next, fromGrams), toGrams);
  });
}

/** How large the aim is with other grams: what of two answers is the better one. */
export function aimValue(lines: readonly AdjustLine[], aim: Aim, grams: readonly number[]): number {
  if (aim !== "change") return formValue(aim, grams);
  return lines.reduce(
    (sum, line, at) => sum + Math.abs((grams[at] ?? 0) - line.grams) / line.scaleGrams,
    0,
  );
}
