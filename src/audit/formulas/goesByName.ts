import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { replaceReferences } from "../../workbook/replaceReferences";
import type { Place } from "../recipes/recipeBlock";
import { isCalledAlike } from "./isCalledAlike";
import { isOfOwnName, namesLeftOf, namesOfRead } from "./namesOfRow";

const MOVING_ROW = /(?<!\$)(?<=[A-Z])\d+/g;

/** A formula without the rows of references that move. */
const withoutRows = (formula: string): string =>
  replaceReferences(formula, ({ written }) => written.replaceAll(MOVING_ROW, "#"));

type Read = Place & { readonly sheet: WorkbookSheet };

/** Whether a row of another sheet is called like a cell's own, and the one that would be expected is not: "sugar" of "caster sugar". */
function isOfShortName(home: WorkbookSheet, place: Place, read: Read, instead: Read): boolean {
  const [own] = namesLeftOf(home, place);
  const isAlike = (one: Read) =>
    own !== undefined &&
    namesOfRead(one.sheet, one, home).some(({ text }) => isCalledAlike(own.text, text));
  return isAlike(read) && !isAlike(instead);
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
  if (withoutRows(formula) !== withoutRows(expected)) return false;
  const theirs = referencesOf(expected);
  const moved = referencesOf(formula).flatMap((reference, at) => {
    const expectedRow = theirs[at]?.range.top ?? reference.range.top;
    return reference.range.top === expectedRow ? [] : [{ ...reference, expectedRow }];
  });
  const readIn = (name: string | null) =>
    name === null ? sheet : sheets.find((each) => each.name === name);
  return moved.some(({ sheet: other, range: { top, bottom, left }, expectedRow }) => {
    const read = readIn(other);
    if (read === undefined || top !== bottom) return false;
    const place = { sheet: read, row: top, column: left };
    const instead = { ...place, row: expectedRow };
    return (
      isOfOwnName(sheet, { row, column }, place) ||
      (read !== sheet && isOfShortName(sheet, { row, column }, place, instead))
    );
  });
}
