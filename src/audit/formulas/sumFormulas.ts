import { isPlainSum } from "./isPlainSum";
import { rangeName } from "../../workbook/address";
import type { CellRange } from "../../workbook/model";
import { contains, referencesOf } from "../../workbook/references";
import type { Place } from "../recipes/recipeBlock";
import type { Summand, Totalled } from "../amounts/totalledLines";

const isRead = (formula: string) => {
  const own = referencesOf(formula).filter(({ sheet }) => sheet === null);
  return ({ row, column }: Place): boolean => own.some(({ range }) => contains(range, row, column));
};

const SUMS = /\bSUM\s*\(/i;

/** The numbers that a sum leaves out though it reads most of their neighbours. */
export function leftOut(
  formula: string | undefined,
  summands: readonly Summand[],
): readonly Summand[] {
  if (formula === undefined || !SUMS.test(formula)) return [];
  const reads = isRead(formula);
  const missing = summands.filter(({ place, counts }) => counts && !reads(place));
  // A sum of sums, or of something else altogether, is not judged by its ranges.
  return missing.length * 2 <= summands.length ? missing : [];
}

/** Other totals that a sum counts beside the numbers they are made of. */
export function countedTwice({
  formula,
  otherTotals,
  summands,
  sheet,
}: Totalled): readonly Place[] {
  if (formula === undefined || !SUMS.test(formula)) return [];
  const reads = isRead(formula);
  const isNumber = ({ row, column }: Place) => typeof sheet.cellAt(row, column)?.value === "number";
  return summands.some(({ place }) => reads(place))
    ? otherTotals.filter((place) => isNumber(place) && reads(place))
    : [];
}

/** Whether a formula adds up the totals before it and nothing else: what is wrong with one of those is told there. */
export function addsAllTotals({ formula, otherTotals, summands, place }: Totalled): boolean {
  if (formula === undefined || !/^[^*/-]*$/.test(formula)) return false;
  const reads = isRead(formula);
  const before = otherTotals.filter(({ row }) => row < place.row);
  const last = Math.max(-1, ...before.map(({ row }) => row));
  const isWhole = summands.every(({ place: { row } }) => row < last);
  return (
    before.length > 1 &&
    isWhole &&
    before.every(reads) &&
    !summands.some((summand) => reads(summand.place))
  );
}

/** What holds all of some places; there may be a hundred thousand. */
export function rangeOfAll(places: readonly Place[]): CellRange {
  let [top, bottom, left, right] = [Infinity, 0, Infinity, 0];
  for (const { row, column } of places) {
    [top, bottom] = [Math.min(top, row), Math.max(bottom, row)];
    [left, right] = [Math.min(left, column), Math.max(right, column)];
  }
  return { top, bottom, left, right };
}

/** A plain sum made to count every number once, in as many ranges as the totals among them make it; null for other formulas. */
export function wholeSum({ formula, summands, otherTotals }: Totalled): string | null {
  if (formula === undefined || !isPlainSum(formula) || summands.length === 0) return null;
  const parts: Place[][] = [[]];
  let previous: Place | null = null;
  for (const { place } of summands) {
    const [from, to] = [previous, place];
    const isCut = otherTotals.some(
      ({ row, column }) =>
        from !== null &&
        row >= from.row &&
        row <= to.row &&
        column >= from.column &&
        column <= to.column,
    );
    if (isCut) parts.push([]);
    parts.at(-1)?.push(place);
    previous = place;
  }
  return `SUM(${parts.map((part) => rangeName(rangeOfAll(part))).join(",")})`;
}
