import type { WorkbookSheet } from "../../workbook/model";

/** Whether a row is hidden by a filter rather than by hand. */
export const isFilteredOut = ({ hiddenRows, filtered = [] }: WorkbookSheet, row: number): boolean =>
  hiddenRows.has(row) && filtered.some(({ top, bottom }) => row > top && row <= bottom);

/** The part of an ascending list that lies in a span, both ends included. */
export function within(ascending: readonly number[], from: number, to: number): readonly number[] {
  let [low, high] = [0, ascending.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ascending[middle] ?? Infinity) < from) low = middle + 1;
    else high = middle;
  }
  const inside: number[] = [];
  for (let at = low; at < ascending.length && (ascending[at] ?? Infinity) <= to; at += 1)
    inside.push(ascending[at] ?? 0);
  return inside;
}
