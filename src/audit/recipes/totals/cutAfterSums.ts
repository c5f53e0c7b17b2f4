import type { WorkbookSheet } from "../../../workbook/model";
import { contains } from "../../../workbook/references";
import { rangesReadHere } from "../../formulas/rangesReadHere";
import { sumOfRange } from "../../formulas/sumOfRange";
import { holdsNumber, isBlank } from "../cells";
import type { Place } from "../recipeBlock";
import { columnsBeside, type Segment } from "../segments";

/** The sum beside a row that adds up what stands right above it. */
function sumIn(sheet: WorkbookSheet, segment: Segment, row: number): Place | null {
  const column = columnsBeside(segment).find((at) => {
    const cell = sheet.cellAt(row, at);
    const range = cell === undefined ? null : sumOfRange(cell);
    return range?.left === at && range.right === at && range.bottom < row;
  });
  return column === undefined ? null : { row, column };
}

/** The sum of all parts stands at most this far above or below them. */
const REACH = 4;

/** Whether a formula adds a sum to what stands further down: the parts of one recipe are added up. */
function isPart(sheet: WorkbookSheet, segment: Segment, sum: Place): boolean {
  const { rows, column } = segment;
  const [first, last] = [(rows[0] ?? 0) - REACH, (rows.at(-1) ?? 0) + REACH];
  const lines = Array.from({ length: last - first + 1 }, (_, at) => first + at);
  const columns = [column, ...columnsBeside(segment)];
  return lines
    .filter((row) => row >= 0)
    .some((row) =>
      columns.some((at) => {
        const read = rangesReadHere(sheet, { row, column: at });
        const isOf = read.some((range) => contains(range, sum.row, sum.column));
        return isOf && read.some(({ bottom }) => bottom > sum.row);
      }),
    );
}

/** Whether words after a sum and a blank row, with a number below but none beside them, are the title of another list. */
function isTitle(sheet: WorkbookSheet, segment: Segment, at: number): boolean {
  const { column, rows } = segment;
  const [before = -1, row = -1, next = -1] = rows.slice(at - 1, at + 2);
  if (at < 1 || before === row - 1 || next !== row + 1 || !isBlank(sheet, row - 1, column))
    return false;
  const sum = sumIn(sheet, segment, before);
  return (
    sum !== null &&
    isBlank(sheet, row, sum.column) &&
    holdsNumber(sheet, next, sum.column) &&
    !isPart(sheet, segment, sum)
  );
}

/** A list without a header, cut where after its sum and a blank row another one begins with its title alone. */
export function cutAfterSums(sheet: WorkbookSheet, segment: Segment): readonly Segment[] {
  if (segment.headerRow !== null) return [segment];
  const starts = segment.rows.flatMap((_, at) => (isTitle(sheet, segment, at) ? at : []));
  return [0, ...starts].map((start, at) => ({
    ...segment,
    rows: segment.rows.slice(start, starts[at]),
  }));
}
