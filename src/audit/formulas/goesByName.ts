import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { replaceReferences } from "../../workbook/replaceReferences";
import { unitFromWord } from "../recipes/amounts/unit";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";

const MOVING_ROW = /(?<!\$)(?<=[A-Z])\d+/g;

/** A formula without the rows of references that move. */
const withoutRows = (formula: string): string =>
  replaceReferences(formula, ({ written }) => written.replaceAll(MOVING_ROW, "#"));

/** The words that a row begins with, left of a column; a unit before them is no name. */
function nameOf(sheet: WorkbookSheet, row: number, column: number): string {
  for (let at = 0; at < column; at += 1) {
    const text = textAt(sheet, row, at);
    if (text !== "" && unitFromWord(text) === null) return text;
  }
  return "";
}

/**
 * Whether a formula differs from the one expected only in the row that it reads, and that row, here or on another
 * sheet, has the name of its own: a list worked out from another one that lies otherwise.
 */
export function goesByName(
  { sheets }: Workbook,
  sheet: WorkbookSheet,
  { row, column }: Place,
  formula: string,
  expected: string,
): boolean {
  const name = nameOf(sheet, row, column);
  if (name === "" || withoutRows(formula) !== withoutRows(expected)) return false;
  const theirs = referencesOf(expected);
  const moved = referencesOf(formula).filter(
    ({ range }, at) => range.top !== theirs[at]?.range.top,
  );
  return moved.some(({ sheet: other, range: { top, bottom } }) => {
    const read = other === null ? sheet : sheets.find((each) => each.name === other);
    const isOther = read !== sheet || top !== row;
    return read !== undefined && isOther && top === bottom && nameOf(read, top, column) === name;
  });
}
