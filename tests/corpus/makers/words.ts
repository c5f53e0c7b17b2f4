import { put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import type { Kit } from "../kit";
import { temperatures } from "../strollers/words";

/** How the English makers put it on a label. */
export const OURS: Voice = {
  ...{ lead: "Allergens in it:", honey: "Honey inside, never for babies under 12 months." },
  alcohol: "Alcohol inside: for adults, not when pregnant, not before driving.",
  nuts: "Whole nuts, choking risk: keep from children under 5.",
  egg: "Raw egg yolk: hold at 71 °C or buy pasteurised yolk.",
};

/** How the German makers put it. */
export const UNSERE: Voice = {
  ...{ lead: "Allergene:", honey: "Honig: erst ab 12 Monaten." },
  alcohol: "Alkohol: nicht für Kinder und Schwangere, nicht vor dem Fahren.",
  nuts: "Ganze Nüsse: Erstickungsgefahr, nicht unter 5 Jahren.",
  egg: "Rohes Eigelb: auf 71 °C erhitzen oder pasteurisiertes verwenden.",
};

/** A heading over several columns, in one merged cell. */
export function banner(
  sheet: CorpusSheet,
  row: number,
  [left, right]: readonly [left: number, right: number],
  text: string,
): Spot {
  if (right > left) sheet.merged.push({ top: row, bottom: row, left, right });
  return put(sheet, row, left, text);
}

export interface Log {
  /** The heading of the first column, and of those with temperatures. */
  readonly heads: readonly [string, ...string[]];
  /** What stands in the first column. */
  readonly when: readonly string[];
  /** From the coldest to the warmest, by column. */
  readonly ranges: readonly (readonly [from: number, to: number])[];
  /** Whether it was getting colder all the time. */
  readonly isFalling?: true;
}

/** A small log of thermometer readings; gives the next free row. */
export function log(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: { readonly row: number; readonly column: number },
  { heads, when, ranges, isFalling }: Log,
): number {
  const [, ...columns] = putRow(sheet, row, column, heads);
  when.forEach((words, index) => put(sheet, row + 1 + index, column, words));
  columns.forEach((heading, at) => {
    const [from, to] = ranges[at]!;
    const read = when.map(() => kit.random.whole(10 * from, 10 * to) / 10);
    if (isFalling === true) read.sort((one, other) => other - one);
    const spots = read.map((celsius, index) =>
      put(sheet, row + 1 + index, heading.column, shown(celsius, "0.0")),
    );
    temperatures(kit, heading, spots);
  });
  return row + 1 + when.length;
}

/** A cell right or left of, above or below another. */
export const beyond = (spot: Spot, rows: number, columns: number): Spot => ({
  ...{ ...spot, row: spot.row + rows, column: spot.column + columns },
});
