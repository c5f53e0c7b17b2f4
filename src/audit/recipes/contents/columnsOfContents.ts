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
  const contents = contentsByFormula(sheet, columns.length, (at) =>
    items.map((row) => ({ row, column: columns[at] ?? 0 })),
  );
  return columns.filter((column, at) => contents.has(at) && !saysOnlyAmount(header(column)));
}
