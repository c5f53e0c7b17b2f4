import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "./cells";
import { isSumOfColumn } from "./isSumOfColumn";

const WHOLE = /batch|\b(whole|mix|recipe|all)\b|ansatz|charge|gesamt|menge|masse|mischung/i;

/** Whether a row has a word for the whole in a column of names, and adds up amounts beside it. */
export function isTotalRow(
  sheet: WorkbookSheet,
  { column }: { readonly column: number },
  row: number,
): boolean {
  const beside = [column + 1, column + 2, column - 1];
  return (
    WHOLE.test(textAt(sheet, row, column)) && beside.some((at) => isSumOfColumn(sheet, row, at))
  );
}
