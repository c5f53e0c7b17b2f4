import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import type { Place } from "../recipes/recipeBlock";

/** What the formula of a cell reads on its own sheet; nothing where there is none. */
export const rangesReadHere = (
  sheet: WorkbookSheet,
  { row, column }: Place,
): readonly CellRange[] =>
  referencesOf(sheet.cellAt(row, column)?.formula ?? "").flatMap(({ sheet: other, range }) =>
    other === null ? [range] : [],
  );
