import type { CellRange, WorkbookSheet } from "../../workbook/model";
import type { Summand } from "./totalledLines";

/** The numbers in some rows of a column; null where one of the cells holds none. */
export function numbersInRows(
  sheet: WorkbookSheet,
  column: number,
  { top, bottom }: Pick<CellRange, "top" | "bottom">,
): Summand[] | null {
  const numbers: Summand[] = [];
  for (let row = top; row <= bottom; row += 1) {
    const cell = sheet.cellAt(row, column);
    if (typeof cell?.value !== "number") return null;
    const counts = cell.value !== 0 || cell.formula !== undefined;
    numbers.push({ place: { row, column }, value: cell.value, counts });
  }
  return numbers;
}
