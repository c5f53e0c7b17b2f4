import { referencesOf } from "../../../workbook/references";
import type { WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";
import { isAboutSum } from "./isAboutSum";
import { isSumOfColumn } from "./isSumOfColumn";
import { plainWords } from "../headings/plainWords";
import { lotWords } from "../roles/lotWords";

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

const numberAt = (sheet: WorkbookSheet, row: number, column: number): number | null => {
  const value = sheet.cellAt(row, column)?.value;
  return typeof value === "number" ? value : null;
};

/** No recipe is longer; below more lines than this a weight is an entry of a ledger. */
const LONGEST = 400;

/** Whether a typed number is about the sum of two lines and more. */
function isTypedSum(sheet: WorkbookSheet, row: number, column: number, items: readonly number[]) {
  if (items.length > LONGEST) return false;
  const value = numberAt(sheet, row, column);
  const amounts = items.flatMap((item) => numberAt(sheet, item, column) ?? []);
  const sum = amounts.reduce((total, amount) => total + amount, 0);
  return value !== null && amounts.length > 1 && isAboutSum(value, sum);
}

/**
 * Whether a row has a word for the whole in a column of names and adds up amounts beside it, or adds up the list, or
 * has the weight of the lot typed in.
 */
export function isTotalRow(
  sheet: WorkbookSheet,
  { column }: { readonly column: number },
  row: number,
  items: readonly number[],
): boolean {
  const beside = [column + 1, column + 2, column - 1];
  const text = textAt(sheet, row, column);
  if (lotWords.test(plainWords(text)) && beside.some((at) => isTypedSum(sheet, row, at, items)))
    return true;
  if (WHOLE.test(text)) return beside.some((at) => isSumOfColumn(sheet, row, at));
  return !OF_SOME.test(text) && beside.some((at) => addsThem(sheet, row, at, items));
}
