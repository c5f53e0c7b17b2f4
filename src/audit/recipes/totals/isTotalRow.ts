import type { WorkbookSheet } from "../../../workbook/model";
import { unitFromWord } from "../amounts/unit";
import { isBlank, textAt } from "../cells";
import { addsList } from "./addsList";
import { isAboutSum } from "./isAboutSum";
import { isOfSome } from "./isOfSome";
import { isSumOfColumn } from "./isSumOfColumn";
import { nextColumn } from "../nextFilled";
import { plainWords } from "../headings/plainWords";
import { lotWords } from "../roles/lotWords";

const WHOLE = /batch|\b(whole|mix|recipe|all)\b|ansatz|charge|gesamt|menge|masse|mischung/i;
/** The sum of a section, though it may have one line only, and be that of the sugars. */
const OF_SECTION = /^((sub|section|part(ial)?)[ -]?(totals?|sum)|(zwischen|teil)[ -]?summen?)\b/i;
/** Of several recipes one may have a typed total. */
const FARTHER = [3, 4, 5, 6];

const numberAt = (sheet: WorkbookSheet, row: number, column: number): number | null => {
  const value = sheet.cellAt(row, column)?.value;
  return typeof value === "number" ? value : null;
};

/** The columns farther right in a row, up to words behind a number: what follows those is another list's. */
function columnsFarther(sheet: WorkbookSheet, row: number, column: number): readonly number[] {
  const farthest = column + Math.max(...FARTHER);
  let [at, hasNumber] = [column + 1, false];
  for (; at <= farthest; at += 1) {
    const text = textAt(sheet, row, at);
    if (hasNumber && text !== "" && unitFromWord(text) === null) break;
    hasNumber ||= numberAt(sheet, row, at) !== null;
  }
  return FARTHER.map((step) => column + step).filter((each) => each < at);
}

/** No recipe is longer; below more lines than this a weight is an entry of a ledger. */
const LONGEST = 400;

/** The lines at the end of a list, back to a row that is no line of it. */
function linesAbove(items: readonly number[]): readonly number[] {
  let from = items.length - 1;
  while (from > 0 && items[from - 1] === (items[from] ?? 0) - 1) from -= 1;
  return items.slice(from);
}

/** Whether a typed number is about the sum of two lines and more: of all, or of those since the last total. */
function isTypedSum(sheet: WorkbookSheet, row: number, column: number, items: readonly number[]) {
  const value = numberAt(sheet, row, column);
  if (items.length > LONGEST || value === null) return false;
  return [items, linesAbove(items)].some((lines) => {
    const amounts = lines.flatMap((item) => numberAt(sheet, item, column) ?? []);
    const sum = amounts.reduce((total, amount) => total + amount, 0);
    return amounts.length > 1 && isAboutSum(value, sum);
  });
}

/** Whether a number right of a list, beyond a free column, has a label of its own behind it: the sum of the next list. */
function isOfNextList(
  sheet: WorkbookSheet,
  row: number,
  { column, at }: { readonly column: number; readonly at: number },
  items: readonly number[],
): boolean {
  const between = Array.from(
    { length: Math.max(0, at - column - 1) },
    (_, step) => column + 1 + step,
  );
  const isFree = (each: number) => [...items, row].every((line) => isBlank(sheet, line, each));
  return textAt(sheet, row, at + 1) !== "" && between.some(isFree);
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
  const next = nextColumn(sheet, row, column);
  const isUnitLeft = unitFromWord(textAt(sheet, row, column - 1)) !== null;
  const beside = [next, next + 1, column - 1, ...(isUnitLeft ? [column - 2] : [])];
  const inList = [...beside, ...columnsFarther(sheet, row, column)].filter(
    (at) => !isOfNextList(sheet, row, { column, at }, items),
  );
  const text = textAt(sheet, row, column);
  if (lotWords.test(plainWords(text)) && inList.some((at) => isTypedSum(sheet, row, at, items)))
    return true;
  if (WHOLE.test(text) || OF_SECTION.test(text))
    return inList.some((at) => isSumOfColumn(sheet, row, at));
  return !isOfSome(text) && inList.some((at) => addsList(sheet, row, at, items));
}
