import { referencesOf } from "../../workbook/references";
import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "./cells";
import { isSumOfColumn } from "./isSumOfColumn";

const WHOLE = /batch|\b(whole|mix|recipe|all)\b|ansatz|charge|gesamt|menge|masse|mischung/i;
/** Sums of some of the lines by intent: of what is dry, of the sugars, of all but the water. */
const OF_SOME =
  /\b(dry|wet|liquids?|solids?|without|but|except|of which|powders?|sugars?|fruit|ohne|außer|davon|trocken\w*|flüssig\w*|pulver|zucker|frucht)\b/i;

/** Whether one formula adds up the lines of a list in a column, all of them or all but one at an end. */
function addsThem(
  sheet: WorkbookSheet,
  row: number,
  column: number,
  items: readonly number[],
): boolean {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  const [only, ...more] = referencesOf(formula);
  if (only === undefined || more.length > 0 || items.length < 3) return false;
  if (!isSumOfColumn(sheet, row, column) || !/^=?\s*\w+\s*\([^()]*\)\s*$/.test(formula))
    return false;
  const { top, bottom, left, right } = only.range;
  const added = items.filter((item) => item >= top && item <= bottom);
  return left === column && right === column && added.length >= items.length - 1;
}

/** Whether a row has a word for the whole in a column of names and adds up amounts beside it, or adds up the list. */
export function isTotalRow(
  sheet: WorkbookSheet,
  { column }: { readonly column: number },
  row: number,
  items: readonly number[],
): boolean {
  const beside = [column + 1, column + 2, column - 1];
  const text = textAt(sheet, row, column);
  if (WHOLE.test(text)) return beside.some((at) => isSumOfColumn(sheet, row, at));
  return !OF_SOME.test(text) && beside.some((at) => addsThem(sheet, row, at, items));
}
