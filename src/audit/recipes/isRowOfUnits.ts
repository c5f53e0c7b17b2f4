import { isUnit } from "../answers/isUnit";
import type { WorkbookSheet } from "../../workbook/model";
import { holdsNumber, isBlank, textAt } from "./cells";

/** What stands in a row of units where there is none. */
const NO_UNIT = /^(\W{1,3}|units?|einheit(en)?|dimensionless|none|ohne)$/iu;
const [REACH_LEFT, REACH_RIGHT] = [4, 12];
const FEWEST = 2;

/** The filled cells of a row around one of them, up to the first blank on either side. */
function filledAround(sheet: WorkbookSheet, row: number, column: number): readonly number[] {
  const columns = [column];
  while (columns.length <= REACH_LEFT && !isBlank(sheet, row, (columns[0] ?? 0) - 1))
    columns.unshift((columns[0] ?? 0) - 1);
  for (let at = column + 1; at <= column + REACH_RIGHT && !isBlank(sheet, row, at); at += 1)
    columns.push(at);
  return columns;
}

/**
 * Whether a row between words and numbers holds units, for most of them, and dashes where there are none: "– | g |
 * g/mol | mol". The words above it are the headings, whatever they say.
 */
export function isRowOfUnits(sheet: WorkbookSheet, row: number, column: number): boolean {
  if (!NO_UNIT.test(textAt(sheet, row, column)) || textAt(sheet, row - 1, column) === "")
    return false;
  const columns = filledAround(sheet, row, column);
  const said = columns.filter((at) => !NO_UNIT.test(textAt(sheet, row, at)));
  const units = said.filter((at) => isUnit(textAt(sheet, row, at)));
  return (
    units.length >= FEWEST &&
    2 * units.length > said.length &&
    units.every((at) => textAt(sheet, row - 1, at) !== "" && holdsNumber(sheet, row + 1, at))
  );
}
