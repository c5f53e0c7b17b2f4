import { eachFormula } from "../../workbook/eachFormula";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import { isFilteredOut } from "../amounts/hiddenLines";
import { precedentsOf } from "./precedents";
import { amountPlace, type Place } from "../recipes/recipeBlock";
import { totalPlaces } from "../recipes/totals/totalPlaces";

/** Something hidden that an answer of the workbook is computed from. */
export interface HiddenSource {
  readonly kind: "sheet" | "row" | "column";
  readonly sheet: WorkbookSheet;
  readonly range: CellRange;
  /** The answer's cell. */
  readonly readBy: Place & { readonly sheet: WorkbookSheet };
}

/** Answers looked at, and hidden lines of each sheet: a ledger of recipes repeats itself. */
const MOST_ANSWERS = 200;
const MOST_LINES = 100;

type Answer = HiddenSource["readBy"];

/** How formulas begin to reach a hidden sheet. */
function wordsForHidden({ sheets }: AuditContext["workbook"]): string[] {
  const names = sheets.filter((sheet) => sheet.hidden).map(({ name }) => name.toLowerCase());
  return names.flatMap((name) => [`${name}!`, `${name.replaceAll("'", "''")}'!`]);
}

/** Formulas that name a hidden sheet: costs by its prices, an overview of its recipes. */
function readersOfHidden({ workbook }: AuditContext): Answer[] {
  const words = wordsForHidden(workbook);
  const found: Answer[] = [];
  for (const sheet of words.length === 0 ? [] : workbook.sheets) {
    eachFormula(sheet, (row, column, cell) => {
      const formula = (cell.sharedFormula ?? cell.formula)?.toLowerCase();
      if (formula === undefined || found.length >= MOST_ANSWERS) return;
      if (words.some((word) => formula.includes(word))) found.push({ sheet, row, column });
    });
  }
  return found;
}

/** Stated results, totals and computed amounts that are themselves to be seen. */
function answersOf(context: AuditContext): Answer[] {
  const { results, blocks } = context;
  const ofBlocks = blocks.flatMap((block) => {
    const { sheet, recipes, names } = block;
    return recipes
      .slice(0, MOST_ANSWERS)
      .flatMap((recipe): Answer[] => [
        ...totalPlaces(block, recipe).map(({ row, column }) => ({ sheet, row, column })),
        ...names.map((name) => ({ sheet, ...amountPlace(block, recipe, name) })),
      ]);
  });
  const ofResults = results.map(({ sheet, row, column }) => ({ sheet, row, column }));
  return [...ofResults, ...ofBlocks, ...readersOfHidden(context)]
    .filter(({ sheet, row, column }) => sheet.cellAt(row, column)?.formula !== undefined)
    .filter(
      ({ sheet, row, column }) =>
        !sheet.hidden && !sheet.hiddenRows.has(row) && !sheet.hiddenColumns.has(column),
    )
    .slice(0, 2 * MOST_ANSWERS);
}

const holdsNumber = (sheet: WorkbookSheet, { top, left, bottom, right }: CellRange): boolean => {
  for (let row = top; row <= Math.min(bottom, sheet.rowCount - 1); row += 1) {
    for (let column = left; column <= Math.min(right, sheet.columnCount - 1); column += 1) {
      if (typeof sheet.cellAt(row, column)?.value === "number") return true;
    }
  }
  return false;
};

/** The hidden lines of a range that an answer reads; ingredients' own lines have been told already. */
function hiddenIn(sheet: WorkbookSheet, range: CellRange, readBy: Answer): HiddenSource[] {
  if (sheet.hidden)
    return holdsNumber(sheet, range) ? [{ kind: "sheet", sheet, range, readBy }] : [];
  const rows = [...sheet.hiddenRows]
    .filter((row) => row >= range.top && row <= range.bottom && !isFilteredOut(sheet, row))
    .map((row) => ({ kind: "row", range: { ...range, top: row, bottom: row } }) as const);
  const columns = [...sheet.hiddenColumns]
    .filter((column) => column >= range.left && column <= range.right)
    .map(
      (column) => ({ kind: "column", range: { ...range, left: column, right: column } }) as const,
    );
  return [...rows.slice(0, MOST_LINES), ...columns.slice(0, MOST_LINES)]
    .filter((line) => holdsNumber(sheet, line.range))
    .map((line) => ({ ...line, sheet, readBy }));
}

const keyOf = ({ kind, sheet, range }: HiddenSource): string =>
  `${kind} ${sheet.name} ${kind === "row" ? range.top : kind === "column" ? range.left : ""}`;

const united = (one: CellRange, other: CellRange): CellRange => ({
  top: Math.min(one.top, other.top),
  left: Math.min(one.left, other.left),
  bottom: Math.max(one.bottom, other.bottom),
  right: Math.max(one.right, other.right),
});

/** Hidden sheets, rows and columns that visible answers are computed from, each once. */
export function hiddenSources(context: AuditContext): readonly HiddenSource[] {
  const isAnyHidden = context.workbook.sheets.some(
    ({ hidden, hiddenRows, hiddenColumns }) => hidden || hiddenRows.size + hiddenColumns.size > 0,
  );
  const found = new Map<string, HiddenSource>();
  for (const answer of isAnyHidden ? answersOf(context) : []) {
    for (const { sheet, range } of precedentsOf(context.workbook, answer.sheet, answer)) {
      for (const source of hiddenIn(sheet, range, answer)) {
        const before = found.get(keyOf(source));
        const range = before === undefined ? source.range : united(before.range, source.range);
        found.set(keyOf(source), { ...(before ?? source), range });
      }
    }
  }
  return [...found.values()];
}
