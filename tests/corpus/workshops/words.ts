import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Voice } from "../caterers/words";
import type { Kit } from "../kit";
import type { Place } from "../layouts/parts";
import { temperatures } from "../strollers/words";

/** How the English workshops warn. */
export const WARNS: Voice = {
  ...{ lead: "Contains:", honey: "Honey: not suitable for infants under 12 months." },
  alcohol: "Contains alcohol: not for children, in pregnancy or before driving.",
  nuts: "Whole nuts: choking hazard for children under 5.",
  egg: "Raw egg yolk: cook the mix to 71 °C or use pasteurised yolk.",
};

/** How the German workshops warn. */
export const WARNT: Voice = {
  ...{ lead: "Enthält:", honey: "Honig: nicht für Kinder unter 12 Monaten." },
  alcohol: "Mit Alkohol: nichts für Kinder, Schwangere und Autofahrer.",
  nuts: "Ganze Nüsse: Kinder unter 5 Jahren können daran ersticken.",
  egg: "Rohes Eigelb: Masse auf 71 °C erhitzen oder Eigelb pasteurisiert kaufen.",
};

export interface Readings {
  /** The heading of the first column, and of the readings. */
  readonly heads: readonly [string, string];
  readonly when: readonly string[];
  /** Tenths of a degree, the coldest and the warmest. */
  readonly tenths: readonly [from: number, to: number];
}

/** A little table with what a thermometer showed; gives the next free row. */
export function readings(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  { heads, when, tenths }: Readings,
): number {
  const [, heading] = putRow(sheet, row, column, heads);
  const spots = when.map((word, index) => {
    const read = shown(kit.random.whole(...tenths) / 10, "0.0");
    return putRow(sheet, row + 1 + index, column, [word, read])[1]!;
  });
  temperatures(kit, heading!, spots);
  return row + 1 + when.length;
}

/** Rows of anything: a roster, opening hours, telephone numbers. */
export const rowsOf = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): void => rows.forEach((cells, index) => putRow(sheet, row + index, column, cells));

/** A labelled formula; gives its cell. */
export function line(
  sheet: CorpusSheet,
  { row, column }: Place,
  [label, formula, format]: readonly [label: string, formula: string, format: string],
): Spot {
  put(sheet, row, column, label);
  return put(sheet, row, column + 1, shown(formula, format));
}
