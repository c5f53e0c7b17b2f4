import type { Workbook, WorkbookCell, WorkbookSheet } from "../../../src/workbook/model";

/** Writes the formula of a cell in another way. */
export type Reformulate = (
  formula: string,
  sheet: WorkbookSheet,
  row: number,
  column: number,
) => string;

/** A workbook with every formula written in another way; values stay as they are. */
export const reformulated = (workbook: Workbook, reformulate: Reformulate): Workbook => ({
  ...workbook,
  sheets: workbook.sheets.map((sheet) => ({
    ...sheet,
    cellAt: (row: number, column: number): WorkbookCell | undefined => {
      const cell = sheet.cellAt(row, column);
      if (cell?.formula === undefined) return cell;
      return { ...cell, formula: reformulate(cell.formula, sheet, row, column) };
    },
  })),
});
