import { parseRangeName } from "../../workbook/address";
import type { WorkbookSheet, WorkbookValue } from "../../workbook/model";
import type { Finding } from "../finding";
import { hashText } from "./hashText";

/** Of a whole column the first cells speak. */
const MOST_ROWS = 500;
const MOST_COLUMNS = 50;

const shown = (value: WorkbookValue): string => JSON.stringify(value);

/** What the cells of a finding hold: formulas and values, blank ones included. */
function contents(sheet: WorkbookSheet, { cell }: Finding): string {
  const range = parseRangeName(cell);
  if (range === null) return "";
  const texts: string[] = [];
  for (let row = range.top; row <= Math.min(range.bottom, range.top + MOST_ROWS); row += 1) {
    const last = Math.min(range.right, range.left + MOST_COLUMNS);
    for (let column = range.left; column <= last; column += 1) {
      const found = sheet.cellAt(row, column);
      texts.push(found === undefined ? "" : `${found.formula ?? ""}=${shown(found.value)}`);
    }
  }
  return texts.join("\n");
}

/** The part of a key that tells where a finding is, before what its cells hold. */
export const placeOfKey = (key: string): string => key.slice(0, key.lastIndexOf("#"));

/** A key that stays the same from one audit to the next as long as the finding's cells do. */
export function findingKey(sheet: WorkbookSheet | undefined, finding: Finding): string {
  const hash = hashText(sheet === undefined ? "" : contents(sheet, finding));
  return `${finding.rule}@${finding.sheet}!${finding.cell}#${hash}`;
}
