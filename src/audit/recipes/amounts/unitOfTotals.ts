import type { WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";
import type { RecipeName } from "../recipeBlock";
import { massIn, type AmountUnit } from "./unit";

const ROWS_READ = 6;
const CLOSE = 0.01;

/** The unit over a total of recipes in rows: where it is what the amounts add up to, they are in the same. */
export function unitOfTotals(
  sheet: WorkbookSheet,
  names: readonly RecipeName[],
  totals: readonly number[],
  { header, first }: { readonly header: number; readonly first: number },
): AmountUnit | null {
  const numberAt = (row: number, column: number): number => {
    const value = sheet.cellAt(row, column)?.value;
    return typeof value === "number" ? value : 0;
  };
  const isSum = (row: number, column: number): boolean => {
    const sum = names.reduce((all, name) => all + numberAt(row, name.column), 0);
    return sum > 0 && Math.abs(numberAt(row, column) / sum - 1) <= CLOSE;
  };
  const rows = Array.from({ length: ROWS_READ }, (_, at) => first + at);
  const units = totals.map((column) =>
    rows.some((row) => isSum(row, column)) ? massIn(textAt(sheet, header, column)) : null,
  );
  return units.find((unit) => unit !== null) ?? null;
}
