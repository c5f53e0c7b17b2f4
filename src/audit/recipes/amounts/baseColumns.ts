import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";
import { textAt } from "../cells";
import type { Role } from "../headings/headerRole";
import { massIn } from "./unit";

/** Whether most formulas of a column read one cell of another column in their own row, and nothing else of that row. */
function isMultipleOf(
  sheet: WorkbookSheet,
  items: readonly number[],
  column: number,
  base: number,
): boolean {
  const multiples = items.filter((row) => {
    const formula = sheet.cellAt(row, column)?.formula ?? "";
    const inRow = referencesOf(formula).filter(
      ({ sheet: other, range }) => other === null && range.top <= row && range.bottom >= row,
    );
    return (
      inRow.length > 0 &&
      inRow.every(({ range: { left, right } }) => left === base && right === base)
    );
  });
  return multiples.length * 2 > items.length;
}

/**
 * The columns of masses of which columns of amounts are calculated as multiples, whatever their headers say
 * they are for: "per table (g)", of which the shopping for all tables is, "Issue" before its units, of which a
 * portion is.
 */
export function baseColumns(
  sheet: WorkbookSheet,
  headerRow: number | null,
  items: readonly number[],
  {
    numeric,
    amounts,
    roles,
  }: {
    readonly numeric: readonly number[];
    readonly amounts: readonly number[];
    readonly roles: ReadonlyMap<number, Role>;
  },
): readonly number[] {
  const isOfMass = (column: number) =>
    massIn(textAt(sheet, headerRow ?? -1, column)) !== null || roles.get(column + 1) === "unit";
  return numeric.filter(
    (column) =>
      !amounts.includes(column) &&
      isOfMass(column) &&
      amounts.some((each) => isMultipleOf(sheet, items, each, column)),
  );
}
