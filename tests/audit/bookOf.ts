import type { Workbook, WorkbookSheet, WorkbookValue } from "../../src/workbook/model";
import { sheetFromRows, type ShortCell } from "../../src/workbook/sheetFromRows";

export type Rows = readonly (readonly ShortCell[])[];

/** A formula with the result that the sheet shows. */
export const formula = (text: string, value: WorkbookValue): ShortCell => ({
  value,
  formula: text,
});

/** A workbook held in memory, from sheets' rows. */
export function bookOf(
  sheets: Readonly<Record<string, Rows>>,
  extras: Readonly<Record<string, Partial<WorkbookSheet>>> = {},
  workbook: Partial<Workbook> = {},
): Workbook {
  return {
    sheets: Object.entries(sheets).map(([name, rows]) => sheetFromRows(name, rows, extras[name])),
    names: [],
    calculation: "automatic",
    externalLinks: [],
    ...workbook,
  };
}
