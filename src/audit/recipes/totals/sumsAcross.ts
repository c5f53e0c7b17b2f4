import { referencesOf } from "../../../workbook/references";
import type { FinderContext } from "../finderContext";
import { plainWords } from "../headings/plainWords";
import type { RecipeName } from "../recipeBlock";
import { isAboutSum } from "./isAboutSum";

const CLOSE = 0.003;
const ROWS_READ = 6;
const SUMS = /^=?\s*(SUM|SUBTOTAL)\s*\(/i;

/**
 * Columns under an unknown word, or one of amounts, that hold the sums of the amounts beside them: totals, whatever
 * they are called ("Brine", "Charge", "Batch"). One that is called as sums are elsewhere holds about the sum.
 */
export function sumsAcross(
  { sheet, check, sumLabels }: FinderContext,
  first: number,
  names: readonly RecipeName[],
  headed: readonly number[],
): readonly number[] {
  const rows = Array.from({ length: ROWS_READ }, (_, step) => first + step);
  const known = names.filter(({ item }) => check(item).kind !== "unknown");
  const numberAt = (row: number, column: number): number => {
    const value = sheet.cellAt(row, column)?.value;
    return typeof value === "number" ? value : 0;
  };
  const isSum = (row: number, column: number): boolean => {
    const formula = sheet.cellAt(row, column)?.formula;
    if (formula !== undefined && SUMS.test(formula)) {
      const read = referencesOf(formula).filter(
        ({ range }) => range.top === row && range.bottom === row,
      );
      const summed = known.filter((one) =>
        read.some(({ range }) => range.left <= one.column && one.column <= range.right),
      );
      return summed.length * 2 > known.length;
    }
    const others = names.filter((one) => one.column !== column);
    const sum = others.reduce((all, one) => all + numberAt(row, one.column), 0);
    const own = numberAt(row, column);
    const isCalledSum = names.some(
      (one) => one.column === column && sumLabels.has(plainWords(one.item)),
    );
    return own > 0 && (isCalledSum ? isAboutSum(own, sum) : Math.abs(sum / own - 1) <= CLOSE);
  };
  const unknown = names.filter((name) => !known.includes(name)).map(({ column }) => column);
  return [...unknown, ...headed].filter((column) => {
    const filled = rows.filter((row) => numberAt(row, column) > 0);
    const sums = filled.filter((row) => isSum(row, column)).length;
    return known.length >= 2 && filled.length > 0 && sums * 2 > filled.length;
  });
}
