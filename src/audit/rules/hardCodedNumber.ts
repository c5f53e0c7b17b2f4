import { solutes } from "../../catalogue/solutes";
import { rangeName } from "../../workbook/address";
import { eachFormula } from "../../workbook/eachFormula";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { NAMESPACE } from "../../worksheet/namespace";
import { amountsOf } from "../answers/plainPart";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { basisOfHeadings, type IsSaid } from "../formulas/basisOfHeadings";
import { formulaNumbers, type FormulaNumber } from "../formulas/formulaNumbers";
import { labelledNumbers } from "../labels";
import { isBlank } from "../recipes/cells";
import type { Rule } from "../rule";

const identity = { id: "hard-coded-number", severity: "warning" } as const;

/** Numbers that are no input: nothing, one, halves, and powers of ten. */
const PLAIN = new Set([0, 1, 2, 10, 100, 1000, 1e4, 1e6, 0.1, 0.01, 0.001, 0.5]);
/** Factors between units (NIST Handbook 44, appendix C; ITS-90 for 273.15) and hours, minutes and seconds. */
const FACTORS = [
  28.349523, 453.59237, 0.45359237, 2.2046226, 29.57353, 236.58824, 14.786765, 4.9289216, 3.7854118,
  0.035273962, 273.15, 459.67, 1.8, 32, 60, 24, 3600, 4.184, 4.1868, 8.314,
];
/** Constants of nature have their own rule: Kf and Kb of water, right or wrong, and the density of ethanol. */
const CONSTANTS = [1.86, 18.6, 0.186, 3.35, 0.512, 0.789];
const CLOSE = 0.004;

/** Functions whose numbers are places, digits or choices. */
const CHOOSING =
  /^(ROUND\w*|MROUND|CEILING\S*|FLOOR\S*|TRUNC|FIXED|[VHX]?LOOKUP|INDEX|X?MATCH|CHOOSE|OFFSET|LEFT|RIGHT|MID|LARGE|SMALL|TEXT\w*|DATE|TIME|SUBTOTAL|AGGREGATE|ROW|COLUMN|MOD|POWER|LOG|SEQUENCE|TAKE|DROP|RANK\S*|CONVERT|ADDRESS|INDIRECT|REPT|SUBSTITUTE|FIND|SEARCH|QUARTILE\S*|PERCENTILE\S*|CHAR|CODE|IFERROR|IFNA|BASE|DECIMAL)$/;

const COMPARISON = /^(<|>|=|<>|<=|>=)$/;

const isNear = (value: number, list: readonly number[]): boolean =>
  list.some((one) => Math.abs(value / one - 1) < CLOSE);

const isMolarMass = (value: number): boolean =>
  value > 15 && solutes.some(({ molarMass }) => Math.abs(value / molarMass.value - 1) < 0.001);

/** In our own functions a number is an argument like a word; it is an input where the sheet has a cell for it. */
const hasOwnCell = ({ value, before }: FormulaNumber, temperatures: ReadonlySet<number>): boolean =>
  value !== 0 && temperatures.has(before === "-" ? -value : value);

function isInput(number: FormulaNumber, temperatures: ReadonlySet<number>): boolean {
  const { value, inFunction, before, after } = number;
  if (inFunction.startsWith(`${NAMESPACE}.`)) return hasOwnCell(number, temperatures);
  if (PLAIN.has(value) || isNear(value, FACTORS) || isNear(value, CONSTANTS)) return false;
  if (before === "^" || COMPARISON.test(before) || COMPARISON.test(after)) return false;
  if (CHOOSING.test(inFunction)) return false;
  return !isMolarMass(value);
}

const HAS_DIGITS = /(?<![\p{L}\p{N}_.$:])[\d.]+(?![\p{L}\p{N}_(:!])/u;
const HAS_REFERENCE = /[A-Z]{1,3}\$?\d|\[|\p{L}{2,}(?![\p{L}\p{N}_.]*\()/iu;
/** °F to °C and back. */
const FIVE_NINTHS = /\b(5\s*\/\s*9|9\s*\/\s*5)\b/g;

/** The inputs that a formula holds itself; a sum of typed numbers alone is an input written out. */
function inputsIn(formula: string, temperatures: ReadonlySet<number>): readonly string[] {
  if (!HAS_DIGITS.test(formula) || !HAS_REFERENCE.test(formula)) return [];
  return formulaNumbers(formula.replace(FIVE_NINTHS, "1"))
    .filter((number) => isInput(number, temperatures))
    .map(({ text }) => text);
}

/** What tells whether a formula's number may stay in it, beside its value. */
interface Known {
  readonly temperatures: ReadonlySet<number>;
  readonly isSaid: IsSaid;
}

interface Run {
  range: CellRange;
  readonly numbers: string;
}

/** Whether a row follows on a run, right below it or over one free cell. */
const goesOn = (sheet: WorkbookSheet, { range: { bottom, left } }: Run, row: number): boolean =>
  bottom === row - 1 || (bottom === row - 2 && isBlank(sheet, row - 1, left));

/** Runs of the same numbers and rows that stand side by side, as one. */
function sideBySide(runs: readonly Run[]): Run[] {
  const open = new Map<string, Run>();
  return runs.filter((run) => {
    const { top, bottom, left } = run.range;
    const rows = `${run.numbers}|${top}|${bottom}`;
    const before = open.get(rows);
    if (before?.range.right === left - 1) {
      before.range = { ...before.range, right: left };
      return false;
    }
    open.set(rows, run);
    return true;
  });
}

const touches = (one: CellRange, other: CellRange): boolean =>
  one.top <= other.bottom + 1 &&
  other.top <= one.bottom + 1 &&
  one.left <= other.right + 1 &&
  other.left <= one.right + 1;

const around = (one: CellRange, other: CellRange): CellRange => ({
  top: Math.min(one.top, other.top),
  left: Math.min(one.left, other.left),
  bottom: Math.max(one.bottom, other.bottom),
  right: Math.max(one.right, other.right),
});

/** So many runs that touch each other are one table whose formulas hold its figures. */
const LEAST_IN_TABLE = 4;
/** A run is compared with so many tables before it: a long sheet may have thousands. */
const NEAR_TABLES = 20;

/** Runs of different numbers that fill a table, as one: it is told once. */
function tablesOf(runs: readonly Run[]): Run[] {
  const tables: { range: CellRange; readonly runs: Run[] }[] = [];
  for (const run of runs) {
    const table = tables.slice(-NEAR_TABLES).find(({ range }) => touches(range, run.range));
    if (table === undefined) tables.push({ range: run.range, runs: [run] });
    else {
      table.range = around(table.range, run.range);
      table.runs.push(run);
    }
  }
  return tables.flatMap(({ range, runs: parts }) =>
    parts.length < LEAST_IN_TABLE
      ? parts
      : [{ range, numbers: parts.map(({ numbers }) => numbers).join(", ") }],
  );
}

/** Cells one below the other, or side by side, with the same numbers are told together. */
function runsOn(sheet: WorkbookSheet, { temperatures, isSaid }: Known): Run[] {
  const runs: Run[] = [];
  const lastIn = new Map<number, Run>();
  eachFormula(sheet, (row, column, cell) => {
    const text = cell.sharedFormula ?? cell.formula;
    if (text === undefined) return;
    const inputs = inputsIn(text, temperatures);
    const numbers = inputs.filter((one) => !isSaid(text, Number(one), { row, column })).join(", ");
    if (numbers === "") return;
    const last = lastIn.get(column);
    if (last?.numbers === numbers && goesOn(sheet, last, row)) {
      last.range = { ...last.range, bottom: row };
      return;
    }
    const run = { range: { top: row, left: column, bottom: row, right: column }, numbers };
    lastIn.set(column, run);
    runs.push(run);
  });
  return tablesOf(sideBySide(runs));
}

const LONGEST = 60;

function finding(sheet: WorkbookSheet, { range, numbers }: Run): Finding {
  const many = numbers.includes(",");
  const shown = numbers.length > LONGEST ? `${numbers.slice(0, LONGEST)}…` : numbers;
  const isOne = range.top === range.bottom && range.left === range.right;
  return findingAt(identity, sheet, range, {
    message: `The formula${isOne ? "" : "s"} in ${rangeName(range)} hold${isOne ? "s" : ""} the typed number${many ? "s" : ""} ${shown}: whoever changes ${many ? "them" : "it"} has to find ${many ? "them" : "it"} first.`,
    effect: null,
    fix: "Give the number a cell of its own with a label and a unit, and refer to it.",
  });
}

export const hardCodedNumber: Rule = {
  ...identity,
  title: "A formula holds a number that belongs in a cell",
  find: ({ workbook, blocks }) => {
    const labelled = labelledNumbers(workbook, ["temperature"]);
    return workbook.sheets.flatMap((sheet) => {
      const here = labelled.filter((one) => one.sheet === sheet);
      const temperatures = new Set(here.map(({ value }) => value));
      const isSaid = basisOfHeadings(sheet, () => amountsOf(blocks).get(sheet));
      return runsOn(sheet, { temperatures, isSaid }).map((run) => finding(sheet, run));
    });
  },
};
