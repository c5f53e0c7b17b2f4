import { cellName } from "../workbook/address";
import type { WorkbookSheet } from "../workbook/model";
import type { CellEdit } from "./finding";
import type { Place } from "./recipes/recipeBlock";

/** A cell's content as an edit names it: its formula with "=", else its value; null for what no edit can restore. */
function contentOf(sheet: WorkbookSheet, { row, column }: Place): string | number | null {
  const cell = sheet.cellAt(row, column);
  if (cell?.formula !== undefined)
    return cell.spills === undefined ? `=${cell.written ?? cell.formula}` : null;
  const value = cell?.value ?? "";
  return typeof value === "string" || typeof value === "number" ? value : null;
}

/** A formula by address, with "=", as the user would write it in a cell: with the names and table columns there are. */
export const writtenFormula = (
  { asWritten }: WorkbookSheet,
  { row, column }: Place,
  formula: string,
): string => `=${asWritten?.(formula, row, column) ?? formula}`;

/** The change of one cell to a new content; none where it holds an error, a truth value or a spilling formula. */
export function cellEdit(
  sheet: WorkbookSheet,
  place: Place,
  to: string | number,
): readonly CellEdit[] {
  const from = contentOf(sheet, place);
  return from === null || from === to
    ? []
    : [{ sheet: sheet.name, cell: cellName(place.row, place.column), from, to }];
}

/** The change of a cell to a formula by address; none where it stays the same. */
export const formulaEdit = (
  sheet: WorkbookSheet,
  place: Place,
  formula: string,
): readonly CellEdit[] => cellEdit(sheet, place, writtenFormula(sheet, place, formula));

/** The change of a typed number; none where a formula gives it: then a person decides. */
export const numberEdit = (sheet: WorkbookSheet, place: Place, to: number): readonly CellEdit[] =>
  sheet.cellAt(place.row, place.column)?.formula === undefined ? cellEdit(sheet, place, to) : [];
