import type { WorkbookSheet } from "../../../workbook/model";
import { contentsByFormula } from "./contentsByFormula";

/** The columns beside a list that say by their formulas what each of its amounts is made of. */
export function columnsOfContents(
  sheet: WorkbookSheet,
  columns: readonly number[],
  items: readonly number[],
): readonly number[] {
  const lines = columns.map((column) => items.map((row) => ({ row, column })));
  const contents = contentsByFormula(sheet, lines);
  return columns.filter((_, at) => lines[at] !== undefined && contents.includes(lines[at]));
}
