import type { WorkbookSheet } from "../../../workbook/model";
import type { RecipeName } from "../recipeBlock";

/** Whether a row below recipes calls itself an average or a sum of them, and so is no recipe. */
export const isSummaryTitle = (title: string): boolean =>
  /^(average|mean|total|sum|mittelwert|durchschnitt|summe|min|max|Ø)(?!\p{L})/iu.test(title);

const SUMS_UP =
  /^\s*(ROUND\s*\(\s*)?(AVERAGE|MEDIAN|MIN|MAX|SUM|SUMPRODUCT|SUBTOTAL|AGGREGATE)\s*\(/i;

/** Among so many sums one may be typed. */
const MANY = 4;

/** Whether the amounts of a row are worked out from a column each, whatever it is called: "Mittel" may be a grade, too. */
export function isSummaryRow(
  sheet: WorkbookSheet,
  row: number,
  names: readonly RecipeName[],
): boolean {
  const cells = names.map(({ column }) => sheet.cellAt(row, column));
  const filled = cells.filter((cell) => typeof cell?.value === "number");
  const others = filled.filter((cell) => !SUMS_UP.test(cell?.formula ?? ""));
  return filled.length > 0 && others.length <= (filled.length > MANY ? 1 : 0);
}
