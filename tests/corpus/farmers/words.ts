import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { sumOf, type Place } from "../layouts/parts";

interface Readings {
  readonly heads: readonly string[];
  readonly labels: readonly Content[];
  readonly ranges: readonly (readonly [from: number, to: number])[];
}

/** Thermometer readings in tenths, a column for each range; gives the next free row. */
export function readings(
  { random, marked }: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  plan: Readings,
): number {
  const heads = putRow(sheet, row, column, plan.heads);
  const read = ([from, to]: readonly [number, number]) =>
    shown(Math.round(10 * random.between(from, to)) / 10, "0.0");
  const rows = plan.labels.map((label, index) =>
    putRow(sheet, row + 1 + index, column, [label, ...plan.ranges.map(read)]),
  );
  plan.ranges.forEach((_, at) =>
    marked.numberColumns.push({
      ...{ spots: columnOf(rows, at + 1), heading: heads[at + 1]! },
      ...{ total: null, kind: "temperature" },
    }),
  );
  return row + 1 + rows.length;
}

interface Parted {
  readonly heads: readonly [string, string];
  readonly labels: readonly string[];
  readonly total: string;
}

/** Whole per cents that make a hundred, with their sum; gives the next free row. */
export function parted(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  { heads, labels, total }: Parted,
): number {
  const heading = putRow(sheet, row, column, heads)[1]!;
  const most = Math.floor(100 / labels.length);
  const others = labels.slice(1).map(() => kit.random.whole(5, most));
  const first = 100 - others.reduce((sum, each) => sum + each, 0);
  const spots = [first, ...others].map((share, index) => {
    put(sheet, row + 1 + index, column, labels[index]);
    return put(sheet, row + 1 + index, column + 1, share);
  });
  const end = row + 1 + labels.length;
  put(sheet, end, column, total);
  const spot = sumOf(kit, sheet, { row: end, column: column + 1 }, spots);
  kit.marked.numberColumns.push({ spots, heading, total: spot, kind: "per cent" });
  return end + 1;
}

/** A little table of words and numbers that nothing reads; gives its cells, line by line. */
export const table = (
  sheet: CorpusSheet,
  { row, column }: Place,
  lines: readonly (readonly Content[])[],
): Spot[][] => lines.map((line, index) => putRow(sheet, row + index, column, line));
