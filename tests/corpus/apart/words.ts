import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import { allergensOf, cautionsIn, type Voice } from "../caterers/words";
import { hasSpirit } from "../guests/words";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import { sumOf, type Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";

/** A table of what a thermometer showed; the reading stands second. */
export interface Log {
  readonly heads: readonly string[];
  readonly when: readonly string[];
  /** In tenths of a degree. */
  readonly tenths: readonly [from: number, to: number];
  readonly rest?: (index: number) => readonly Content[];
}

/** Writes such a table; gives the next free row. */
export function readings(kit: Kit, sheet: CorpusSheet, { row, column }: Place, log: Log): number {
  const heads = putRow(sheet, row, column, log.heads);
  const rows = log.when.map((when, index) => {
    const read = shown(kit.random.whole(...log.tenths) / 10, "0.0");
    return putRow(sheet, row + 1 + index, column, [when, read, ...(log.rest?.(index) ?? [])]);
  });
  temperatures(kit, heads[1]!, columnOf(rows, 1));
  return row + 1 + rows.length;
}

interface Parts {
  readonly heads: readonly [string, string];
  readonly items: readonly string[];
  readonly total: string;
}

/** What makes up a hundred per cent of something, with its sum; gives the next free row. */
export function hundredth(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  { heads, items, total }: Parts,
): number {
  const [, heading] = putRow(sheet, row, column, heads);
  const most = Math.floor(90 / items.length);
  const shares = items.slice(1).map(() => kit.random.whole(Math.ceil(most / 3), most));
  const all = [100 - shares.reduce((sum, share) => sum + share, 0), ...shares];
  const rows = items.map((item, index) =>
    putRow(sheet, row + 1 + index, column, [item, all[index]]),
  );
  const spots = columnOf(rows, 1);
  const end = row + 1 + rows.length;
  put(sheet, end, column, total);
  const sum = sumOf(kit, sheet, { row: end, column: column + 1 }, spots);
  kit.marked.numberColumns.push({ spots, heading: heading!, total: sum, kind: "per cent" });
  return end + 1;
}

/** Allergens beside a label, the cautions under them; gives the next free row. */
export function tellBeside(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  voice: Voice,
): number {
  let next = row;
  const allergens = allergensOf(made);
  if (allergens !== "") flags.push(...putRow(sheet, next++, column, [voice.lead, allergens]));
  const cautions = cautionsIn(made, voice);
  if (cautions !== "") flags.push(put(sheet, next++, column, cautions));
  return next;
}

/** A recipe without a spirit; one with a mistake before all others. */
export function soberOnes(kit: Kit, count: number): MadeRecipe[] {
  const mades = kit.make(count + 3);
  const rank = (made: MadeRecipe): number => {
    if (made.seeded !== undefined) return 0;
    return hasSpirit(made) ? 2 : 1;
  };
  return mades.sort((one, other) => rank(one) - rank(other)).slice(0, count);
}

/** Labelled rows; gives the cells right of the labels. */
export const rowsOf = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): Spot[] => rows.map((cells, index) => putRow(sheet, row + index, column, cells)[1]!);
