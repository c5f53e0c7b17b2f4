import type { CellRange } from "../../src/workbook/model";
import { EXTENT_PROPERTIES, cellRange } from "./blockAround";
import { isSupported } from "./isSupported";

/** Gives, after the next sync, the blocks of which a filter hides rows; undefined where nothing tells. */
export type FilterAnswer = () => readonly CellRange[] | undefined;

/** Asks with the next sync for the filter of a sheet or a table, and whether it has a condition set. */
export function askFilter(filtered: Excel.Worksheet | Excel.Table): FilterAnswer {
  if (!isSupported("1.9")) return () => undefined;
  const { autoFilter } = filtered;
  const range = autoFilter.getRangeOrNullObject();
  autoFilter.load("isDataFiltered");
  range.load(EXTENT_PROPERTIES);
  return () => (range.isNullObject || !autoFilter.isDataFiltered ? [] : [cellRange(range)]);
}
