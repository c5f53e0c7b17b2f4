import type { WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";
import type { Segment } from "../segments";
import { readInRow } from "./readInRow";
import { massIn } from "./unit";

/**
 * Columns of masses of one measure each, like "1 spoon weighs (g)", each with the column that takes so many of them as
 * stand in a third one: only that is added up.
 */
export function weightsOfOne(
  sheet: WorkbookSheet,
  { headerRow }: Segment,
  items: readonly number[],
  weighed: readonly number[],
  { numeric, totals }: { readonly numeric: readonly number[]; readonly totals: readonly number[] },
): ReadonlyMap<number, number> {
  const isSummed = (column: number) =>
    totals.some((row) => sheet.cellAt(row, column)?.value !== undefined);
  const isCount = (column: number) =>
    new Set(items.map((row) => sheet.cellAt(row, column)?.value)).size > 1;
  const isProduct = (product: number, weight: number) => {
    const read = items.map((row) => readInRow(sheet, row, product));
    const products = read.filter((from) => from.has(weight) && from.size === 2);
    const count = [...(products[0] ?? [])].find((other) => other !== weight);
    return products.length * 2 > items.length && count !== undefined && isCount(count);
  };
  const ofMass = numeric.filter(
    (column) => isSummed(column) && massIn(textAt(sheet, headerRow ?? -1, column)) !== null,
  );
  const found = weighed
    .filter((column) => !isSummed(column))
    .map((weight) => [weight, ofMass.find((product) => isProduct(product, weight))] as const);
  return new Map(
    found.flatMap(([weight, product]) => (product === undefined ? [] : [[weight, product]])),
  );
}
