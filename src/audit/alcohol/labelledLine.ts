import type { WorkbookSheet } from "../../workbook/model";
import { amountText } from "../recipes/amounts/amountText";
import type { Place } from "../recipes/recipeBlock";

/** The numbers that follow a label: below a heading, or to the right of a row's. */
export interface LabelledLine {
  readonly sheet: WorkbookSheet;
  readonly label: string;
  readonly at: Place;
  readonly isDown: boolean;
  /** The rows (below a heading) or columns (beside a label) that hold a number. */
  readonly indexes: readonly number[];
}

const MOST_CELLS = 500;
const MOST_BLANKS = { down: 30, right: 3 } as const;

export const placeIn = (
  { at, isDown }: Pick<LabelledLine, "at" | "isDown">,
  index: number,
): Place => (isDown ? { row: index, column: at.column } : { row: at.row, column: index });

const STRENGTH = /^(\d+(?:[.,]\d+)?)\s*%\s*(vol\.?)?$/i;

/** A number, be it typed as text; also the 40 of "40 % vol". */
export function numberIn(sheet: WorkbookSheet, { row, column }: Place): number | null {
  if (row < 0 || column < 0) return null;
  const value = sheet.cellAt(row, column)?.value ?? null;
  if (typeof value === "number") return value;
  if (typeof value !== "string") return null;
  const [, strength] = STRENGTH.exec(value.trim()) ?? [];
  return amountText(strength ?? value)?.number ?? null;
}

/** The numbers after a label, past one cell with a unit, up to the next words. */
export function lineAfter(
  sheet: WorkbookSheet,
  label: string,
  at: Place,
  isDown: boolean,
): LabelledLine {
  const first = (isDown ? at.row : at.column) + 1;
  const indexes: number[] = [];
  let [blanks, words] = [0, 0];
  for (let index = first; index < first + MOST_CELLS; index += 1) {
    const place = placeIn({ at, isDown }, index);
    const value = sheet.cellAt(place.row, place.column)?.value ?? "";
    if (numberIn(sheet, place) !== null) {
      indexes.push(index);
      blanks = 0;
    } else if (value === "") blanks += 1;
    else words += 1;
    if (blanks > MOST_BLANKS[isDown ? "down" : "right"]) break;
    if (words > (indexes.length === 0 ? 1 : 0)) break;
  }
  return { sheet, label, at, isDown, indexes };
}
