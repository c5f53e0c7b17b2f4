import { moveFormula } from "../../workbook/moveFormula";
import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { replaceReferences } from "../../workbook/replaceReferences";
import type { Place } from "../recipes/recipeBlock";
import { runsOf, type Run } from "./runsOf";

/** A formula of a summary that is not what it would be if it were like those around it. */
export interface SummaryStranger {
  readonly sheet: WorkbookSheet;
  readonly place: Place;
  readonly formula: string;
  readonly expected: string;
}

/** A number typed among such formulas. */
export interface SummaryNumber extends Place {
  readonly sheet: WorkbookSheet;
  readonly value: number;
}

const LEAST_ALIKE = 3;
/** A summary of more sheets than this is none that somebody reads. */
const MOST_ROWS = 200;
const ELSEWHERE = "§";

interface Taken {
  /** The formula without what it reads on another sheet. */
  readonly frame: string;
  readonly elsewhere: readonly string[];
  /** The one sheet that it reads; null for none or several. */
  readonly other: string | null;
}

function takenApart(formula: string): Taken {
  const elsewhere: string[] = [];
  const sheets = new Set<string>();
  const frame = replaceReferences(formula, ({ written, sheet }) => {
    if (sheet === null) return null;
    elsewhere.push(written);
    sheets.add(sheet);
    return ELSEWHERE;
  });
  const [other = null] = sheets.size === 1 ? sheets : [];
  return { frame, elsewhere, other };
}

const filled = (frame: string, elsewhere: readonly string[]): string => {
  let at = 0;
  return frame.replaceAll(ELSEWHERE, () => elsewhere[at++] ?? "#REF!");
};

interface FormulaInRow extends Taken {
  readonly row: number;
  readonly formula: string;
  /** Its frame as it reads in the first row. */
  readonly atTop: string;
}

interface SummaryColumn {
  readonly rows: readonly number[];
  /** Those that read another sheet, each one of its own. */
  readonly cells: readonly FormulaInRow[];
  readonly common: string;
}

/** A column that reads a sheet in each row, most of them in the same way. */
function summaryColumn(
  sheet: WorkbookSheet,
  { column, top, bottom, step }: Run,
): SummaryColumn | null {
  const rows = Array.from(
    { length: (bottom - top) / (step ?? 1) + 1 },
    (_, at) => top + at * (step ?? 1),
  );
  if (rows.length > MOST_ROWS) return null;
  const cells = rows.flatMap((row) => {
    const formula = sheet.cellAt(row, column)?.formula;
    const taken = formula === undefined ? null : takenApart(formula);
    if (formula === undefined || taken === null || taken.other === null) return [];
    return [{ ...taken, row, formula, atTop: moveFormula(taken.frame, top - row, 0) }];
  });
  // In one that is filled down along one sheet it is told as such.
  if (new Set(cells.map(({ other }) => other)).size < cells.length) return null;
  const alike = (frame: string) => cells.filter(({ atTop }) => atTop === frame);
  const common = cells.find(({ atTop }) => alike(atTop).length >= LEAST_ALIKE)?.atTop;
  const isMost = common !== undefined && 3 * alike(common).length >= 2 * cells.length;
  return isMost ? { rows, cells, common } : null;
}

/** The rows of such a column of which what is read on the summary itself is unlike the others'. */
function strangersIn(sheet: WorkbookSheet, run: Run): SummaryStranger[] {
  const { column, top } = run;
  const summary = summaryColumn(sheet, run);
  if (summary === null) return [];
  const { cells, common } = summary;
  const like = cells.find(({ atTop }) => atTop === common);
  return cells
    .filter(
      ({ atTop, elsewhere }) => atTop !== common && elsewhere.length === like?.elsewhere.length,
    )
    .map(({ row, formula, elsewhere }) => ({
      ...{ sheet, place: { row, column }, formula },
      expected: filled(moveFormula(common, row - top, 0), elsewhere),
    }));
}

/** The numbers typed in such a column, where they are few. */
function numbersIn(sheet: WorkbookSheet, run: Run): SummaryNumber[] {
  const summary = summaryColumn(sheet, run);
  if (summary === null) return [];
  const { column } = run;
  const numbers = summary.rows.flatMap((row) => {
    const { value, formula } = sheet.cellAt(row, column) ?? {};
    const isTyped = typeof value === "number" && formula === undefined;
    return isTyped ? [{ sheet, row, column, value }] : [];
  });
  return 2 * numbers.length <= summary.cells.length ? numbers : [];
}

/** The numbers typed where a summary's formulas each read a sheet of its own. */
export function summaryNumbers({ sheets }: Workbook): readonly SummaryNumber[] {
  if (sheets.length <= LEAST_ALIKE) return [];
  return sheets.flatMap((sheet) => runsOf(sheet).flatMap((run) => numbersIn(sheet, run)));
}

const known = new WeakMap<Workbook, readonly SummaryStranger[]>();

/** The strangers in the columns of summaries: a row for each sheet, worked out in the same way from each. Found once for all rules. */
export function summaryStrangers(workbook: Workbook): readonly SummaryStranger[] {
  const { sheets } = workbook;
  if (sheets.length <= LEAST_ALIKE) return [];
  const before = known.get(workbook);
  if (before !== undefined) return before;
  const found = sheets.flatMap((sheet) => runsOf(sheet).flatMap((run) => strangersIn(sheet, run)));
  known.set(workbook, found);
  return found;
}
