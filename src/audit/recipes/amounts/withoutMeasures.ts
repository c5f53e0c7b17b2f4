import type { WorkbookSheet } from "../../../workbook/model";
import { contains } from "../../../workbook/references";
import { rangesReadHere } from "../../formulas/rangesReadHere";
import type { Role } from "../headings/headerRole";

/** So many lines tell how a column is filled. */
const SAMPLES = 20;

/**
 * The columns of amounts without those in cups, spoons or packs that another of them weighs: its formulas read the
 * quantity and its unit line by line. What is weighed is the recipe.
 */
export function withoutMeasures(
  sheet: WorkbookSheet,
  items: readonly number[],
  amounts: readonly number[],
  roles: ReadonlyMap<number, Role>,
): readonly number[] {
  const units = [...roles].filter(([, role]) => role === "unit").map(([column]) => column);
  if (amounts.length < 2 || units.length === 0) return amounts;
  const rows = items.slice(0, SAMPLES);
  const weighs = (column: number, quantity: number) => {
    const lines = rows.filter((row) => {
      const read = rangesReadHere(sheet, { row, column });
      const reads = (at: number) => read.some((range) => contains(range, row, at));
      return reads(quantity) && units.some(reads);
    });
    return lines.length * 2 > rows.length;
  };
  return amounts.filter((quantity) => !amounts.some((column) => weighs(column, quantity)));
}
