import { columnIndex } from "../../../workbook/address";
import type { WorkbookSheet } from "../../../workbook/model";
import type { Role } from "../headings/headerRole";
import { isNumbering } from "./isNumbering";
import { readInRow } from "./readInRow";
import { stockColumns } from "./stockColumns";
import { isClassSheet } from "../classSheet";
import { leadingUnit, massIn } from "./unit";
import { vesselColumns } from "./vesselColumns";
import { onlyMultiplies } from "./onlyMultiplies";

/** A list's lines, and what heads the columns beside them. */
interface Headed {
  readonly items: readonly number[];
  readonly header: (column: number) => string;
  readonly roles: ReadonlyMap<number, Role>;
}

/** So much for a kilogram: "Rs/kg", "per kg", "£ a kilo". */
const FOR_EACH =
  /(\/|\b(per|pro|je|a)\b) ?(1000 ?|1 ?)?(k?g|kilos?|kilogramm?|lb|pound|l|lit(er|re))\b/i;
/** How little of each there may be before more is ordered. */
const RESTOCK =
  /\bre-?order|\border (below|at|under|from)\b|\bpar (level|stock)\b|^par\b|\bmin(imum|\.)? (stock|level)\b|mindestbestand|meldebestand|nachbestell|bestellen (ab|unter|bei)\b/i;
/** What is missing, and never less than nothing: the column that is taken off, and the row. */
const MISSING = /\b(?:MAX|IF)\s*\(.*-\s*\$?([A-Z]{1,3})\$?(\d+)\b/i;

/** How far several values of a row lie apart. */
const SPREAD = /^\s*(MAX\s*\(.*\)\s*-\s*MIN|STDEV|VAR)[.A-Z]*\s*\(/i;

/** The column that a formula takes off another one of its row where that leaves something; null where it does not. */
function takenOff(sheet: WorkbookSheet, row: number, column: number): number | null {
  const formula = sheet.cellAt(row, column)?.formula;
  const [, letters, line] = (formula === undefined ? null : MISSING.exec(formula)) ?? [];
  return letters === undefined || Number(line) !== row + 1 ? null : columnIndex(letters);
}

/**
 * The columns that are no amounts of a recipe, whatever their headings say: the lines' numbers; what each line costs,
 * worked out from what a kilogram does; what is there of each, what is missing of it, and how
 * little of it makes one order more; how far several amounts lie apart; in a class, what a scale read of a vessel.
 */
export function unweighed(
  sheet: WorkbookSheet,
  columns: readonly number[],
  { items, header, roles }: Headed,
): ReadonlySet<number> {
  const isMost = (holds: (row: number) => boolean) => items.filter(holds).length * 2 > items.length;
  const isRate = (column: number) =>
    roles.get(column) === "price" ||
    (FOR_EACH.test(header(column)) && leadingUnit(header(column)) === null);
  const isCost = (column: number) =>
    massIn(header(column)) === null &&
    isMost((row) => {
      const formula = sheet.cellAt(row, column)?.formula ?? "";
      const read = onlyMultiplies(formula) ? [...readInRow(sheet, row, column)] : [];
      return read.length === 2 && read.some(isRate);
    });
  const isSpread = (column: number) =>
    isMost((row) => SPREAD.test(sheet.cellAt(row, column)?.formula ?? ""));
  const isCount = (column: number) =>
    items.length > 2 &&
    roles.get(column) !== "amount" &&
    isNumbering(items.map((row) => sheet.cellAt(row, column)?.value)) &&
    items.every((row) => sheet.cellAt(row, column)?.formula === undefined);
  const shop = columns.flatMap((bought) => {
    const taken = items.map((row) => takenOff(sheet, row, bought));
    const stock = taken.find((each) => each !== null) ?? null;
    const isBought = taken.filter((each) => each === stock).length * 2 > items.length;
    return stock !== null && isBought ? [bought, stock] : [];
  });
  const left = stockColumns(sheet, columns, items);
  const others = columns.filter(
    (column) =>
      isCost(column) || isCount(column) || isSpread(column) || RESTOCK.test(header(column)),
  );
  const vessels = isClassSheet(roles) ? vesselColumns(sheet, columns, items) : [];
  return new Set([...others, ...shop, ...left, ...vessels]);
}
