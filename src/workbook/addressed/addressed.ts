import { eachCell } from "../eachCell";
import { eachFormula } from "../eachFormula";
import type { CellVisitor, Workbook, WorkbookCell, WorkbookSheet } from "../model";
import { additionsAsSums, mayAdd } from "./additionsAsSums";
import { addressBook, type AddressBook } from "./addressBook";
import { asWrittenOn } from "./formulaAsWritten";
import { heldCells } from "./heldCells";
import { byAddressOn, type ByAddress } from "./formulaByAddress";

/** A cell with its formula by address; the cell itself where that is how it is written. */
type Readdress = (cell: WorkbookCell, row: number, column: number) => WorkbookCell;

function readdressOn(sheet: WorkbookSheet, book: AddressBook): Readdress {
  const hasWords = book.tables.size + book.names.size > 0;
  const ofWords = byAddressOn(sheet, book);
  const byAddress: ByAddress = (formula, row, column) =>
    additionsAsSums(sheet, hasWords ? ofWords(formula, row, column) : formula);
  return (cell, row, column) => {
    // Where many cells share a formula, whether anything in it is to be read otherwise is seen from that.
    const shared = cell.sharedFormula;
    if (shared !== undefined && !mayAdd(shared) && byAddress(shared, row, column) === shared)
      return cell;
    const written = cell.formula;
    if (written === undefined) return cell;
    const formula = byAddress(written, row, column);
    if (formula === written) return cell;
    const { value, format, spills } = cell;
    return {
      ...{ value, formula, written },
      ...(format !== undefined && { format }),
      ...(spills !== undefined && { spills }),
    };
  };
}

function addressedSheet(sheet: WorkbookSheet, book: AddressBook): WorkbookSheet {
  const readdress = readdressOn(sheet, book);
  const cellAt = heldCells(sheet, (row, column) => {
    const cell = sheet.cellAt(row, column);
    return cell === undefined ? undefined : readdress(cell, row, column);
  });
  const visitCells = (visit: CellVisitor): void =>
    eachCell(sheet, (row, column, cell) => visit(row, column, readdress(cell, row, column)));
  const visitFormulas = (visit: CellVisitor): void =>
    eachFormula(sheet, (row, column, cell) => visit(row, column, readdress(cell, row, column)));
  return { ...sheet, cellAt, visitCells, visitFormulas, asWritten: asWrittenOn(sheet, book) };
}

/**
 * A workbook whose formulas reach cells by address only: defined names for fixed cells and columns of tables are
 * replaced by what they stand for, and cells added one by one are a sum. What the user wrote stays with each cell
 * as `written`.
 */
export function addressed(workbook: Workbook): Workbook {
  const book = addressBook(workbook);
  const sheets = workbook.sheets.map((sheet) => addressedSheet(sheet, book));
  return { ...workbook, sheets };
}
