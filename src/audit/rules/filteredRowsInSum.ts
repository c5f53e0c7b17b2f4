import { cellName } from "../../workbook/address";
import { eachFormula } from "../../workbook/eachFormula";
import type { WorkbookSheet } from "../../workbook/model";
import { NAMESPACE } from "../../worksheet/namespace";
import { rounded } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { isFilteredOut, within } from "../amounts/hiddenLines";
import { rangesRead, type RangeRead, type RangesRead } from "../formulas/rangesRead";
import type { Place } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "filtered-rows-in-sum", severity: "warning" } as const;

/** Functions that count what a filter hides; SUBTOTAL and AGGREGATE leave it out. */
const COUNTS_ALL = new RegExp(
  `\\b(SUM|SUMPRODUCT|AVERAGE|COUNT|COUNTA|MIN|MAX|${NAMESPACE}\\.\\w+)\\s*\\(`,
  "i",
);
const COUNTS_SHOWN = /\b(SUBTOTAL|AGGREGATE)\s*\(/i;
const PLAIN_SUM = /^SUM\([^(),]+\)$/i;
const SHOWN = 8;
/** Whoever has more than these sums sees them from the first. */
const MOST_FINDINGS = 100;
const MOST_COLUMNS = 30;

interface HiddenNumber extends Place {
  readonly sheet: WorkbookSheet;
  readonly value: number;
}

/** The rows that a filter hides, of each sheet that has any, upwards. */
type FilteredOut = ReadonlyMap<WorkbookSheet, readonly number[]>;

/** The numbers in rows that a filter hides, of a block that a formula reads. */
function hiddenNumbers({ sheet, range }: RangeRead, filteredOut: FilteredOut): HiddenNumber[] {
  const right = Math.min(range.right, sheet.columnCount - 1, range.left + MOST_COLUMNS);
  const columns = Array.from({ length: right - range.left + 1 }, (_, at) => range.left + at);
  return within(filteredOut.get(sheet) ?? [], range.top, range.bottom).flatMap((row) =>
    columns.flatMap((column) => {
      const value = sheet.cellAt(row, column)?.value;
      return typeof value === "number" ? [{ sheet, row, column, value }] : [];
    }),
  );
}

/** What a plain sum would be without the hidden rows. */
function effectOf(formula: string, value: unknown, hidden: readonly HiddenNumber[]): Effect | null {
  if (typeof value !== "number" || !PLAIN_SUM.test(formula)) return null;
  const shown = hidden.reduce((sum, cell) => sum - cell.value, value);
  const quantity = "sum of the rows shown";
  return { quantity, from: rounded(value, 2), to: rounded(shown, 2), unit: "" };
}

function finding(
  sheet: WorkbookSheet,
  place: Place,
  effect: Effect | null,
  hidden: readonly HiddenNumber[],
): Finding {
  const cells = hidden.slice(0, SHOWN).map((cell) => {
    const on = cell.sheet === sheet ? "" : `${cell.sheet.name.slice(0, 60)}!`;
    return `${on}${cellName(cell.row, cell.column)}`;
  });
  const more = hidden.length > SHOWN ? " and more" : "";
  return findingAt(identity, sheet, place, {
    message: `${cellName(place.row, place.column)} counts ${cells.join(", ")}${more}, in rows that a filter hides: it is not about what is shown.`,
    effect,
    fix: "Clear the filter, or use SUBTOTAL(109, …) where only the rows shown are meant.",
  });
}

function findOn(sheet: WorkbookSheet, read: RangesRead, filteredOut: FilteredOut): Finding[] {
  const findings: Finding[] = [];
  eachFormula(sheet, (row, column, { formula, value }) => {
    if (formula === undefined || findings.length >= MOST_FINDINGS) return;
    if (sheet.hiddenRows.has(row)) return;
    if (!COUNTS_ALL.test(formula) || COUNTS_SHOWN.test(formula)) return;
    const hidden = read(sheet, formula).flatMap((block) => hiddenNumbers(block, filteredOut));
    if (hidden.length > 0)
      findings.push(finding(sheet, { row, column }, effectOf(formula, value, hidden), hidden));
  });
  return findings;
}

const filteredOutOn = (sheet: WorkbookSheet): readonly number[] =>
  [...sheet.hiddenRows]
    .filter((row) => isFilteredOut(sheet, row))
    .sort((one, other) => one - other);

export const filteredRowsInSum: Rule = {
  ...identity,
  title: "A sum counts rows that a filter hides",
  find: ({ blocks, workbook }) => {
    if (blocks.length === 0) return [];
    const filteredOut: FilteredOut = new Map(
      workbook.sheets
        .map((sheet) => [sheet, filteredOutOn(sheet)] as const)
        .filter(([, rows]) => rows.length > 0),
    );
    if (filteredOut.size === 0) return [];
    const read = rangesRead(workbook);
    return workbook.sheets.flatMap((sheet) => findOn(sheet, read, filteredOut));
  },
};
