import { parseRangeName, rangeName } from "../../../src/workbook/address";
import type { WorkbookSheet, WorkbookTable } from "../../../src/workbook/model";
import { contains, overlaps } from "../../../src/workbook/references";
import type { MarkedBook } from "../marks";
import { reformulated } from "./reformulated";
import type { Restatement } from "./restatement";
import { replaceReferences, type WrittenReference } from "../../../src/workbook/replaceReferences";

const textAt = ({ cellAt }: WorkbookSheet, row: number, column: number): string => {
  const value = cellAt(row, column)?.value;
  return typeof value === "string" ? value : "";
};

/** The tables that the recipes of a sheet would be: headings and lines, as wide as headings go. */
function tablesOf(sheet: WorkbookSheet, { recipes }: MarkedBook): WorkbookTable[] {
  const made: WorkbookTable[] = [];
  for (const { names } of recipes.filter(({ names: [first] }) => first?.sheet === sheet.name)) {
    const rows = names.map(({ row }) => row);
    const [top, bottom] = [Math.min(...rows) - 1, Math.max(...rows)];
    let left = names[0]!.column;
    let right = left;
    if (top < 0 || bottom - top !== names.length || textAt(sheet, top, left) === "") continue;
    while (left > 0 && textAt(sheet, top, left - 1) !== "") left -= 1;
    while (textAt(sheet, top, right + 1) !== "") right += 1;
    const range = { top, left, bottom, right };
    const columns = Array.from({ length: right - left + 1 }, (_, at) =>
      textAt(sheet, top, left + at),
    );
    const isFree = ![...sheet.tables, ...made].some((other) => overlaps(other.range, range));
    const isFit = new Set(columns).size === columns.length && !/[[\]#'@]/.test(columns.join(" "));
    const isColumn = names.every(({ column }) => column === names[0]!.column) && right > left;
    const name = `List_${sheet.name.replaceAll(/[^\p{L}\p{N}]/gu, "_")}_${made.length + 1}`;
    if (isFree && isFit && isColumn) made.push({ name, range, columns, hasTotals: false });
  }
  return made;
}

/** How a formula reads a whole column of a table, or the cell of its own row; null for all else. */
function byColumn(
  { name, range: table, columns }: WorkbookTable,
  address: string,
  ownRow: number | null,
): string | null {
  const range = parseRangeName(address.replaceAll("$", ""));
  if (range === null || range.left !== range.right) return null;
  if (!contains(table, range.top, range.left) || range.top === table.top) return null;
  const column = columns[range.left - table.left]!;
  // A running sum, $C$4:C9, is no whole column where it happens to end with the list.
  const isEven = new Set(address.split(":").map((end) => end.replaceAll(/[^$]/g, ""))).size === 1;
  const isWhole = isEven && range.top === table.top + 1 && range.bottom === table.bottom;
  if (isWhole) return `${name}[${column}]`;
  const isOwn = rangeName(range) === address.replaceAll("$", "") && range.top === ownRow;
  return isOwn && !/\$\d/.test(address) ? `${name}[[#This Row],[${column}]]` : null;
}

/** Lists are tables, and formulas read them by their columns. */
export const listsAsTables: Restatement = {
  name: "lists as tables",
  restate: ({ workbook, recalculated }, marked) => {
    const tables = new Map(workbook.sheets.map((sheet) => [sheet.name, tablesOf(sheet, marked)]));
    const written = (home: WorkbookSheet, row: number, column: number, read: WrittenReference) => {
      const isHere = read.sheet === null || read.sheet === home.name;
      for (const table of tables.get(read.sheet ?? home.name) ?? []) {
        const ownRow = isHere && contains(table.range, row, column) ? row : null;
        const text = byColumn(table, read.address, ownRow);
        if (text !== null) return text;
      }
      return null;
    };
    const rewritten = reformulated(workbook, (formula, home, row, column) =>
      replaceReferences(formula, (reference) => written(home, row, column, reference)),
    );
    const sheets = rewritten.sheets.map((sheet) => ({
      ...sheet,
      tables: [...sheet.tables, ...(tables.get(sheet.name) ?? [])],
    }));
    return { workbook: { ...rewritten, sheets }, recalculated };
  },
};
