import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { replaceReferences } from "../../workbook/replaceReferences";
import type { Place } from "../recipes/recipeBlock";
import { isOfOwnName } from "./namesOfRow";

const MOVING_ROW = /(?<!\$)(?<=[A-Z])\d+/g;

/** A formula without the rows of references that move. */
const withoutRows = (formula: string): string =>
  replaceReferences(formula, ({ written }) => written.replaceAll(MOVING_ROW, "#"));

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
  if (withoutRows(formula) !== withoutRows(expected)) return false;
  const theirs = referencesOf(expected);
  const moved = referencesOf(formula).filter(
    ({ range }, at) => range.top !== theirs[at]?.range.top,
  );
  return moved.some(({ sheet: other, range: { top, bottom, left } }) => {
    const read = other === null ? sheet : sheets.find((each) => each.name === other);
    const isOne = read !== undefined && top === bottom;
    return isOne && isOfOwnName(sheet, { row, column }, { sheet: read, row: top, column: left });
  });
}
