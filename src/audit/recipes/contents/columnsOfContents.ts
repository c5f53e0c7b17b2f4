import type { WorkbookSheet } from "../../../workbook/model";
import { saysOnlyAmount } from "../headings/saysOnlyAmount";
import { contentsByFormula } from "./contentsByFormula";

/** The columns beside a list that say by their formulas what each of its amounts is made of, and are not headed as amounts. */
export function columnsOfContents(
  sheet: WorkbookSheet,
  columns: readonly number[],
  {
    items,
    header,
  }: { readonly items: readonly number[]; readonly header: (column: number) => string },
): readonly number[] {
  const lines = columns.map((column) => items.map((row) => ({ row, column })));
  const contents = contentsByFormula(sheet, lines);
  const isContent = (at: number) => lines[at] !== undefined && contents.includes(lines[at]);
  return columns.filter((column, at) => isContent(at) && !saysOnlyAmount(header(column)));
}
