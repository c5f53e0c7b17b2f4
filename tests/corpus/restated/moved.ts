import { cellName, parseCellName } from "../../../src/workbook/address";
import type { CellRange, Workbook, WorkbookCell, WorkbookSheet } from "../../../src/workbook/model";
import type { Recalculation } from "../../../src/workbook/recalculation";
import type { Restated } from "./restatement";
import { replaceReferences } from "../../../src/workbook/replaceReferences";

/** Rows and columns put into a sheet: so many before the row, or the column, with this number. */
export interface Insertion {
  readonly rows?: { readonly before: number; readonly count: number };
  readonly columns?: { readonly before: number; readonly count: number };
}

export type InsertionIn = (sheet: string) => Insertion;

type Along = Insertion["rows"];
const after = (at: number, along: Along): number =>
  along !== undefined && at >= along.before ? at + along.count : at;
function before(at: number, along: Along): number | null {
  if (along === undefined || at < along.before) return at;
  return at < along.before + along.count ? null : at - along.count;
}

const movedRange = (range: CellRange, { rows, columns }: Insertion): CellRange => ({
  top: after(range.top, rows),
  left: after(range.left, columns),
  bottom: after(range.bottom, rows),
  right: after(range.right, columns),
});

/** An address as it has to be written once rows and columns have been put in; dollars stay. */
const movedAddress = (address: string, { rows, columns }: Insertion): string =>
  address.replaceAll(
    /(\$?)([A-Z]+)(\$?)(\d+)/g,
    (token, one: string, letters: string, two: string, digits: string) => {
      const place = parseCellName(`${letters}${digits}`);
      if (place === null) return token;
      const name = cellName(after(place.row, rows), after(place.column, columns));
      return name.replace(/^([A-Z]+)/, `${one.replace("$", "$$$$")}$1${two.replace("$", "$$$$")}`);
    },
  );

const written = (sheet: string | null, address: string): string =>
  sheet === null ? address : `'${sheet.replaceAll("'", "''")}'!${address}`;

const movedFormula = (formula: string, home: string, insertion: InsertionIn): string =>
  replaceReferences(formula, ({ sheet, address }) =>
    written(sheet, movedAddress(address, insertion(sheet ?? home))),
  );

function movedSheet(sheet: WorkbookSheet, insertion: InsertionIn): WorkbookSheet {
  const here = insertion(sheet.name);
  const cellAt = (row: number, column: number): WorkbookCell | undefined => {
    const [r, c] = [before(row, here.rows), before(column, here.columns)];
    const cell = r === null || c === null ? undefined : sheet.cellAt(r, c);
    if (cell?.formula === undefined) return cell;
    return { ...cell, formula: movedFormula(cell.formula, sheet.name, insertion) };
  };
  return {
    ...{ ...sheet, cellAt },
    rowCount: after(sheet.rowCount, here.rows),
    columnCount: after(sheet.columnCount, here.columns),
    tables: sheet.tables.map((table) => ({ ...table, range: movedRange(table.range, here) })),
    merged: sheet.merged.map((range) => movedRange(range, here)),
    hiddenRows: new Set([...sheet.hiddenRows].map((row) => after(row, here.rows))),
    hiddenColumns: new Set([...sheet.hiddenColumns].map((column) => after(column, here.columns))),
    ...(sheet.filtered && { filtered: sheet.filtered.map((range) => movedRange(range, here)) }),
  };
}

function movedValues(
  { sheets }: Workbook,
  recalculated: Recalculation,
  insertion: InsertionIn,
): Recalculation {
  const here = (sheet: number) => insertion(sheets[sheet]?.name ?? "");
  type Calculated = Recalculation["calculated"][number];
  const moved = (cell: Calculated): Calculated => ({
    ...cell,
    row: after(cell.row, here(cell.sheet).rows),
    column: after(cell.column, here(cell.sheet).columns),
    formula: movedFormula(cell.formula, sheets[cell.sheet]?.name ?? "", insertion),
  });
  return {
    ...recalculated,
    valueAt: (sheet, row, column) => {
      const [r, c] = [before(row, here(sheet).rows), before(column, here(sheet).columns)];
      return r === null || c === null ? undefined : recalculated.valueAt(sheet, r, c);
    },
    calculated: recalculated.calculated.map(moved),
    leftAlone: recalculated.leftAlone.map((left) => ({ ...left, cell: moved(left.cell) })),
  };
}

/** A book with rows and columns put into its sheets, as a spreadsheet does it: formulas follow. */
export function moved({ workbook, recalculated }: Restated, insertion: InsertionIn): Restated {
  const names = workbook.names.map((name) => ({
    ...name,
    refersTo: movedFormula(name.refersTo, "", insertion),
  }));
  const sheets = workbook.sheets.map((sheet) => movedSheet(sheet, insertion));
  return {
    workbook: { ...workbook, sheets, names },
    recalculated: movedValues(workbook, recalculated, insertion),
    before: ({ sheet, row, column }) => {
      const { rows, columns } = insertion(sheet);
      const [r, c] = [before(row, rows), before(column, columns)];
      return r === null || c === null ? null : { sheet, row: r, column: c };
    },
  };
}
