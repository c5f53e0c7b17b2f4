import type { Workbook, WorkbookSheet } from "../workbook/model";
import { lastInRow } from "./amounts/rowOfInputs";
import { isUnit } from "./answers/isUnit";
import { looksNumeric, textAt } from "./recipes/cells";
import { headerRole, type Role } from "./recipes/headings/headerRole";
import { nextColumn } from "./recipes/nextFilled";
import type { Place } from "./recipes/recipeBlock";
import { sheetTexts } from "./recipes/sheetTexts";
import { countsOtherThing } from "./temperatures/countsOtherThing";

/** A label with the first number to its right. */
export interface LabelledNumber extends Place {
  readonly sheet: WorkbookSheet;
  readonly role: Role;
  readonly label: string;
  readonly labelColumn: number;
  readonly value: number;
  /** The words between, or right after it and the numbers that go on with it: usually a unit. */
  readonly beside: string;
}

const REACH = 3;

/** Whether a text is the unit of the number left of it: it labels nothing behind it. */
const isUnitBehind = (sheet: WorkbookSheet, row: number, column: number): boolean =>
  looksNumeric(sheet, row, column - 1) && isUnit(textAt(sheet, row, column));

/** So many letters make a word of their own: "ca." and "=" only lead to a number. */
const WORD = /\p{L}{3}/u;

/**
 * Whether a text says behind a number and its unit what that number is, as legends do: another table begins beyond
 * its next words, and beyond a gap where the number has such a label before it, too.
 */
function isLegend(sheet: WorkbookSheet, row: number, column: number, role: Role): boolean {
  const hasUnit = isUnitBehind(sheet, row, column - 1);
  const number = hasUnit ? column - 2 : column - 1;
  if (!looksNumeric(sheet, row, number)) return false;
  if (looksNumeric(sheet, row, column + 1)) return false;
  if (headerRole(textAt(sheet, row, number - 1)) === role) return true;
  const next = textAt(sheet, row, nextColumn(sheet, row, column));
  return WORD.test(next) && !isUnit(next);
}

function numberBeside(
  sheet: WorkbookSheet,
  row: number,
  column: number,
  role: Role,
): LabelledNumber | null {
  const label = textAt(sheet, row, column);
  let words = "";
  for (let at = column + 1; at <= column + REACH; at += 1) {
    const value = sheet.cellAt(row, at)?.value;
    if (typeof value === "number") {
      if (role === "temperature" && countsOtherThing(sheet, { row, column: at }, column))
        return null;
      return {
        sheet,
        row,
        column: at,
        role,
        label,
        labelColumn: column,
        value,
        beside:
          words ||
          textAt(sheet, row, nextColumn(sheet, row, lastInRow(sheet, { row, column: at }))),
      };
    }
    words = textAt(sheet, row, at) || words;
    if (words.length > 12) return null;
  }
  return null;
}

/** All labels of some roles in a workbook that have a number to their right. */
export function labelledNumbers(workbook: Workbook, roles: readonly Role[]): LabelledNumber[] {
  return workbook.sheets.flatMap((sheet) =>
    [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
      columns.flatMap((column) => {
        const role = headerRole(textAt(sheet, row, column));
        return role !== null &&
          roles.includes(role) &&
          !isUnitBehind(sheet, row, column) &&
          !isLegend(sheet, row, column, role)
          ? (numberBeside(sheet, row, column, role) ?? [])
          : [];
      }),
    ),
  );
}
