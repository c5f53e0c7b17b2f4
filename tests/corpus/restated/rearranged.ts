import { cellName, parseCellName } from "../../../src/workbook/address";
import { replaceReferences } from "../../../src/workbook/replaceReferences";
import type { CellRange, Workbook, WorkbookCell, WorkbookSheet } from "../../../src/workbook/model";
import type { Recalculation } from "../../../src/workbook/recalculation";
import type { Restated } from "./restatement";

export interface Place {
  readonly row: number;
  readonly column: number;
}

/** Where the cells of a sheet go. */
export interface Arrangement {
  readonly to: (place: Place) => Place;
  /** Where what is now at a place was; null for a cell that was put in. */
  readonly from: (place: Place) => Place | null;
  /** Whether rows become columns. */
  readonly turns?: true;
}

/** How one sheet is arranged anew; null for a sheet that stays. */
export type ArrangementOf = (sheet: string) => Arrangement | null;

const movedRange = ({ top, left, bottom, right }: CellRange, { to }: Arrangement): CellRange => {
  const [one, other] = [to({ row: top, column: left }), to({ row: bottom, column: right })];
  return {
    top: Math.min(one.row, other.row),
    left: Math.min(one.column, other.column),
    bottom: Math.max(one.row, other.row),
    right: Math.max(one.column, other.column),
  };
};

/** An address as it has to be written once the cells have moved; a dollar stays with what it holds fast. */
const movedAddress = (address: string, { to, turns }: Arrangement): string =>
  address.replaceAll(
    /(\$?)([A-Z]+)(\$?)(\d+)/g,
    (token, one: string, letters: string, two: string, digits: string) => {
      const place = parseCellName(`${letters}${digits}`);
      if (place === null) return token;
      const { row, column } = to(place);
      const [, newLetters, newDigits] = /^([A-Z]+)(\d+)$/.exec(cellName(row, column))!;
      const [before, between] = turns === true ? [two, one] : [one, two];
      return `${before}${newLetters}${between}${newDigits}`;
    },
  );

const written = (sheet: string | null, address: string): string =>
  sheet === null ? address : `'${sheet.replaceAll("'", "''")}'!${address}`;

const movedFormula = (formula: string, home: string, arrangementOf: ArrangementOf): string =>
  replaceReferences(formula, ({ sheet, address }) => {
    const arrangement = arrangementOf(sheet ?? home);
    return arrangement === null ? null : written(sheet, movedAddress(address, arrangement));
  });

function extent({ rowCount, columnCount }: WorkbookSheet, { to, turns }: Arrangement) {
  if (turns === true) return { rowCount: columnCount, columnCount: rowCount };
  const last = to({ row: rowCount - 1, column: columnCount - 1 });
  return {
    rowCount: Math.max(rowCount, last.row + 1),
    columnCount: Math.max(columnCount, last.column + 1),
  };
}

function movedSheet(sheet: WorkbookSheet, arrangementOf: ArrangementOf): WorkbookSheet {
  const here = arrangementOf(sheet.name);
  const cellAt = (row: number, column: number): WorkbookCell | undefined => {
    const was = here === null ? { row, column } : here.from({ row, column });
    const cell = was === null ? undefined : sheet.cellAt(was.row, was.column);
    if (cell?.formula === undefined) return cell;
    return { ...cell, formula: movedFormula(cell.formula, sheet.name, arrangementOf) };
  };
  if (here === null) return { ...sheet, cellAt };
  const range = (given: CellRange) => movedRange(given, here);
  return {
    ...{ ...sheet, cellAt, ...extent(sheet, here) },
    tables: sheet.tables.map((table) => ({ ...table, range: range(table.range) })),
    merged: sheet.merged.map(range),
    hiddenRows: new Set([...sheet.hiddenRows].map((row) => here.to({ row, column: 0 }).row)),
    hiddenColumns: new Set(
      [...sheet.hiddenColumns].map((column) => here.to({ row: 0, column }).column),
    ),
    ...(sheet.filtered && { filtered: sheet.filtered.map(range) }),
  };
}

function movedValues(
  { sheets }: Workbook,
  recalculated: Recalculation,
  arrangementOf: ArrangementOf,
): Recalculation {
  const nameOf = (sheet: number) => sheets[sheet]?.name ?? "";
  type Calculated = Recalculation["calculated"][number];
  const moved = (cell: Calculated): Calculated => ({
    ...{ ...cell, ...arrangementOf(nameOf(cell.sheet))?.to(cell) },
    formula: movedFormula(cell.formula, nameOf(cell.sheet), arrangementOf),
  });
  return {
    ...recalculated,
    valueAt: (sheet, row, column) => {
      const here = arrangementOf(nameOf(sheet));
      const was = here === null ? { row, column } : here.from({ row, column });
      return was === null ? undefined : recalculated.valueAt(sheet, was.row, was.column);
    },
    calculated: recalculated.calculated.map(moved),
    leftAlone: recalculated.leftAlone.map((left) => ({ ...left, cell: moved(left.cell) })),
  };
}

/** A book with the cells of its sheets arranged anew, as a spreadsheet does it: formulas follow. */
export function rearranged(
  { workbook, recalculated }: Restated,
  arrangementOf: ArrangementOf,
): Restated {
  const names = workbook.names.map((name) => ({
    ...name,
    refersTo: movedFormula(name.refersTo, "", arrangementOf),
  }));
  const sheets = workbook.sheets.map((sheet) => movedSheet(sheet, arrangementOf));
  return {
    workbook: { ...workbook, sheets, names },
    recalculated: movedValues(workbook, recalculated, arrangementOf),
    before: ({ sheet, row, column }) => {
      const here = arrangementOf(sheet);
      const was = here === null ? { row, column } : here.from({ row, column });
      return was === null ? null : { sheet, ...was };
    },
  };
}
