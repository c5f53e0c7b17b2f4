import type { WorkbookSheet } from "../../../workbook/model";
import { readInRow } from "./readInRow";
import { onlyMultiplies } from "./onlyMultiplies";

/** Columns by which amounts are multiplied line by line, and those of the products: prices and costs, no recipes. */
export function multipliedColumns(
  sheet: WorkbookSheet,
  items: readonly number[],
  amounts: readonly number[],
  numeric: readonly number[],
): ReadonlySet<number> {
  const isProduct = (column: number) => {
    const products = items.filter((row) => {
      const formula = sheet.cellAt(row, column)?.formula ?? "";
      const read = onlyMultiplies(formula) ? readInRow(sheet, row, column) : new Set();
      return read.size > 1 && amounts.some((amount) => read.has(amount));
    });
    return products.length * 2 > items.length;
  };
  const [first] = items;
  const products = numeric.filter((column) => !amounts.includes(column) && isProduct(column));
  const factors = products.flatMap((column) => [...readInRow(sheet, first ?? 0, column)]);
  return new Set([...products, ...factors.filter((column) => !amounts.includes(column))]);
}
