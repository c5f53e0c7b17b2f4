import type { CellRange, Workbook, WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";

/** A block of a sheet that a formula reads. */
export interface RangeRead {
  readonly sheet: WorkbookSheet;
  readonly range: CellRange;
}

export type RangesRead = (sheet: WorkbookSheet, formula: string) => readonly RangeRead[];

function reader({ sheets }: Workbook): RangesRead {
  const sheetNamed = new Map(sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  return (home, formula) =>
    referencesOf(formula).flatMap(({ sheet: name, range }) => {
      const sheet = name === null ? home : sheetNamed.get(name.toLowerCase());
      return sheet === undefined ? [] : [{ sheet, range }];
    });
}

const readers = new WeakMap<Workbook, RangesRead>();

/** What formulas of a workbook read, on whichever of its sheets. */
export function rangesRead(workbook: Workbook): RangesRead {
  const known = readers.get(workbook) ?? reader(workbook);
  readers.set(workbook, known);
  return known;
}
