import type { CellRange } from "../../workbook/model";
import { MAX_COLUMNS, MAX_ROWS } from "../../workbook/address";
import type { Grid } from "../grid";
import { HostError } from "./hostError";

/** Cells of one sheet. */
export interface Place {
  readonly sheet: string;
  readonly range: CellRange;
}

export const rowsOf = ({ top, bottom }: CellRange): number => bottom - top + 1;
export const columnsOf = ({ left, right }: CellRange): number => right - left + 1;

/** The range moved and resized; outside the sheet it is an error, as in Excel. */
export function reshaped(place: Place, change: Partial<CellRange>): Place {
  const range = { ...place.range, ...change };
  const { top, left, bottom, right } = range;
  if (top < 0 || left < 0 || bottom < top || right < left) {
    throw new HostError(
      "InvalidArgument",
      "The range would have no cells or lie outside the sheet.",
    );
  }
  if (bottom >= MAX_ROWS || right >= MAX_COLUMNS) {
    throw new HostError("InvalidArgument", "The range would lie outside the sheet.");
  }
  return { sheet: place.sheet, range };
}

export function intersection(one: CellRange, other: CellRange): CellRange | null {
  const range = {
    top: Math.max(one.top, other.top),
    left: Math.max(one.left, other.left),
    bottom: Math.min(one.bottom, other.bottom),
    right: Math.min(one.right, other.right),
  };
  return range.top > range.bottom || range.left > range.right ? null : range;
}

/** The block around a range that is bounded by blank rows and columns on all sides. */
export function surroundingRegion(grid: Grid, { sheet, range }: Place): Place {
  const used = grid.usedRange(sheet);
  if (used === null) return { sheet, range };
  const { values } = grid.read(sheet, used);
  const isFilled = (row: number, column: number): boolean =>
    (values[row - used.top]?.[column - used.left] ?? null) !== null;
  const rowHas = (row: number, { left, right }: CellRange): boolean => {
    for (let c = left - 1; c <= right + 1; c += 1) if (isFilled(row, c)) return true;
    return false;
  };
  const columnHas = (column: number, { top, bottom }: CellRange): boolean => {
    for (let r = top - 1; r <= bottom + 1; r += 1) if (isFilled(r, column)) return true;
    return false;
  };
  let region = range;
  for (;;) {
    const grown = {
      top: rowHas(region.top - 1, region) ? region.top - 1 : region.top,
      bottom: rowHas(region.bottom + 1, region) ? region.bottom + 1 : region.bottom,
      left: columnHas(region.left - 1, region) ? region.left - 1 : region.left,
      right: columnHas(region.right + 1, region) ? region.right + 1 : region.right,
    };
    const before = `${region.top},${region.left},${region.bottom},${region.right}`;
    if (`${grown.top},${grown.left},${grown.bottom},${grown.right}` === before) break;
    region = grown;
  }
  return { sheet, range: region };
}
