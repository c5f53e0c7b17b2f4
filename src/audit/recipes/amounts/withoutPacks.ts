import type { WorkbookSheet } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";
import { columnName } from "../../../workbook/address";
import type { Role } from "../headings/headerRole";

/** A formula that works with a price, and the columns of its row that it reads. */
interface Cost {
  readonly column: number;
  readonly formula: string;
  readonly read: ReadonlySet<number>;
}

/** The formulas of a row that work with a price. */
function costsOf(
  sheet: WorkbookSheet,
  row: number,
  roles: ReadonlyMap<number, Role>,
): readonly Cost[] {
  return [...roles.keys()].flatMap((column) => {
    const formula = sheet.cellAt(row, column)?.formula;
    if (formula === undefined) return [];
    const inRow = referencesOf(formula).filter(({ range }) => range.top === row);
    const read = new Set(inRow.map(({ range }) => range.left));
    return [...read].some((each) => roles.get(each) === "price") ? [{ column, formula, read }] : [];
  });
}

/**
 * The columns of amounts without those that prices are divided by on their way to what another column of amounts
 * costs: they hold what was bought for the price, whatever they are called. Where nothing else is weighed, nor
 * summed, prices divided by what a pack holds make a list of prices: then none is left.
 */
export function withoutPacks(
  sheet: WorkbookSheet,
  items: readonly number[],
  columns: readonly number[],
  roles: ReadonlyMap<number, Role>,
  isSummed: boolean,
): readonly number[] {
  if (columns.length < 2 && (isSummed || ![...roles.values()].includes("price"))) return columns;
  const costs = items.map((row) => ({ row, costs: costsOf(sheet, row, roles) }));
  const isPack = (column: number): boolean => {
    const rows = costs.filter(({ row, costs: here }) => {
      const divided = new RegExp(`/\\s*\\$?${columnName(column)}\\$?${row + 1}(?!\\d)`, "i");
      const isOfAmount = ({ read }: Cost) =>
        columns.some((other) => other !== column && read.has(other));
      // The price of a kilogram may have a column of its own, which what another amount costs then reads.
      const isCost = (cost: Cost) =>
        isOfAmount(cost) || here.some((next) => next.read.has(cost.column) && isOfAmount(next));
      return here.some(
        (cost) => divided.test(cost.formula) && (columns.length < 2 || isCost(cost)),
      );
    });
    return rows.length * 2 > items.length;
  };
  const amounts = columns.filter((column) => !isPack(column));
  return amounts.length > 0 || columns.length < 2 ? amounts : columns;
}
