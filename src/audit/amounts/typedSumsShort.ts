import type { WorkbookSheet } from "../../workbook/model";
import { contains, overlaps } from "../../workbook/references";
import type { AuditContext } from "../context";
import { carriesUnit } from "./inputLabel";
import { textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import { columnSums, type ColumnSum } from "./columnSums";
import type { FilledTotal } from "./filledTotals";
import { isAlike } from "./isAlike";
import { labelColumn } from "./labelColumn";
import { listsOn } from "./listsOn";
import { totalElsewhere } from "./totalElsewhere";
import { typedLinesAbove, type LabelledLine } from "./typedLinesAbove";

/** A sum may forget the last line, or two that were added later, or the first one. */
const [MOST_LAST, MOST_FIRST] = [2, 1];
const LEAST_LINES = 3;

/** The lines that a sum leaves out, where they are few, and either all below or, under their heading, above the others. */
function forgotten(
  sheet: WorkbookSheet,
  { column, range: { top, bottom } }: ColumnSum,
  lines: readonly LabelledLine[],
): readonly LabelledLine[] {
  const last = lines.filter(({ place }) => place.row > bottom);
  const first = lines.filter(({ place }) => place.row < top);
  if (first.length === 0) return last.length <= MOST_LAST ? last : [];
  const isHeaded = textAt(sheet, top - 1 - first.length, column) !== "";
  return last.length === 0 && first.length <= MOST_FIRST && isHeaded ? first : [];
}

/** Whether the label of a sum says the heading above its numbers again: "Hours to pay" under "Hours". */
function saysHeading(sheet: WorkbookSheet, sum: ColumnSum, heading: string): boolean {
  const [noun] = /\p{L}{3,}/u.exec(heading.toLowerCase()) ?? [];
  const label = textAt(sheet, sum.row, labelColumn(sheet, sum) ?? -1);
  return noun !== undefined && label.toLowerCase().includes(noun);
}

function shortSum(sheet: WorkbookSheet, sum: ColumnSum, sums: readonly ColumnSum[]): FilledTotal[] {
  const { row, column, range } = sum;
  const stored = sheet.cellAt(row, column)?.value;
  const lines = typedLinesAbove(sheet, sum);
  const counted = lines.filter(({ place }) => contains(range, place.row, place.column));
  const missing = forgotten(sheet, sum, lines);
  const isWhole = counted.length === range.bottom - range.top + 1;
  const isShort = missing.length > 0 && missing.length < counted.length;
  if (typeof stored !== "number" || !isWhole || !isShort || lines.length < LEAST_LINES) return [];
  const isRead = ({ place }: LabelledLine) =>
    sums.some((other) => contains(other.range, place.row, place.column));
  const like = { row: range.bottom, column };
  // Under a heading with its unit "phase diagrams" and "kinetics" are of one kind, though both sound like counts.
  const heading = textAt(sheet, Math.min(...lines.map(({ place }) => place.row)) - 1, column);
  const named = carriesUnit(heading) ? counted : [];
  const isHeaded = saysHeading(sheet, sum, heading);
  // There a name in the plural is no count.
  const isSame = (one: LabelledLine) =>
    isAlike(
      sheet,
      isHeaded && headerRole(one.label) === null ? { ...one, label: "" } : one,
      like,
      named,
    );
  if (!missing.every((one) => isSame(one) && !isRead(one))) return [];
  const summands = lines.filter((line) => counted.includes(line) || missing.includes(line));
  return [{ total: totalElsewhere(sheet, sum, stored, summands.reverse()), missing }];
}

/**
 * Sums right below typed numbers of a list that is no recipe, of which they leave out the last, or the first: what was
 * paid, with a line that came later.
 */
export const typedSumsShort = ({ workbook, blocks }: AuditContext): FilledTotal[] =>
  workbook.sheets.flatMap((sheet) => {
    const lists = listsOn(blocks, sheet);
    const sums = [...columnSums(sheet).values()].flat();
    return sums
      .filter(({ range }) => !lists.some((list) => overlaps(list, range)))
      .flatMap((sum) => shortSum(sheet, sum, sums));
  });
