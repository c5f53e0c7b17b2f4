import type { WorkbookSheet } from "../../workbook/model";
import type { Place } from "../recipes/recipeBlock";
import { isSumOfColumn } from "../recipes/totals/isSumOfColumn";
import { sumOf, type Totalled } from "./totalledLines";

/** Where the other totals of a row stand. */
const REACH = [-4, -3, -2, -1, 1, 2, 3, 4];

const hasFormula = (sheet: WorkbookSheet, { row, column }: Place): boolean =>
  sheet.cellAt(row, column)?.formula !== undefined;

/** Fewer numbers may go on in even steps by chance. */
const LEAST_STEPS = 3;

/** Whether a typed number goes on behind those above it in even steps, as the lines of a list are numbered, or minutes. */
function goesOnEvenly({ stored, summands }: Totalled): boolean {
  const values = [...summands.map(({ value }) => value), stored];
  const step = stored - (summands.at(-1)?.value ?? stored);
  const isEven = values.slice(1).every((value, at) => value - (values[at] ?? 0) === step);
  return step !== 0 && values.length > LEAST_STEPS && isEven;
}

/** A number typed in a row of sums, or where the other totals of its column are sums, is meant as one. */
export function isAmongSums(total: Totalled): boolean {
  const { sheet, place, stored, formula, mayHoldMore, otherTotals, summands } = total;
  if (formula === undefined && goesOnEvenly(total)) return false;
  const isWorkedOut = summands.every((one) => hasFormula(sheet, one.place));
  const holdsMore = mayHoldMore && !isWorkedOut && stored > sumOf(summands);
  if (formula !== undefined || holdsMore) return false;
  const beside = REACH.map((step) => ({ ...place, column: place.column + step }));
  return [...beside, ...otherTotals].some(({ row, column }) => isSumOfColumn(sheet, row, column));
}
