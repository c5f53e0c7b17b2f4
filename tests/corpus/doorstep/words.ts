import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import type { Place } from "../layouts/parts";
import type { Voice } from "../caterers/words";

/** How the people at the door put what the eater has to know. */
export const CHEF: Voice = {
  lead: "ALLERGENS",
  honey: "Honey in it, no babies under 12 months.",
  alcohol: "Alcohol in it, not for children, pregnant guests or drivers.",
  nuts: "Whole nuts, choking hazard, not for under 5s.",
  egg: "Raw yolks, take the mix to 71 °C or use pasteurised.",
};
export const FRIENDLY: Voice = {
  lead: "Tell people there is this in it:",
  honey: "There is honey in it, so nothing for a baby below 12 months.",
  alcohol: "There is alcohol in it: keep it from children, mums-to-be and whoever drives.",
  nuts: "Nuts are whole, little ones under 5 could choke.",
  egg: "The yolk is raw: cook to 71 °C or buy pasteurised yolk.",
};
export const WIRT: Voice = {
  lead: "Enthält",
  honey: "Mit Honig, nicht für Babys unter 12 Monaten.",
  alcohol: "Mit Alkohol, nicht für Kinder, Schwangere, Autofahrer.",
  nuts: "Ganze Nüsse, Erstickungsgefahr, nicht unter 5 Jahren.",
  egg: "Rohes Eigelb, Masse auf 71 °C bringen oder pasteurisiert kaufen.",
};
export const DAHEIM: Voice = {
  lead: "Aufpassen wegen Allergie:",
  honey: "Honig drin, also nichts für Kinder unter 12 Monaten!",
  alcohol: "Alkohol drin! Nicht für Kinder, Schwangere und die, die fahren.",
  nuts: "Nüsse sind ganz, Kinder unter 5 Jahren können sich verschlucken.",
  egg: "Eigelb ist roh: bis 71 °C erhitzen oder pasteurisiertes nehmen.",
};

/** Rows below each other; gives the cells by row. */
export const rowsAt = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): Spot[][] => rows.map((cells, index) => putRow(sheet, row + index, column, cells));

/** Half degrees below a heading, marked as temperatures. */
export function thermometer(
  kit: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  plan: {
    readonly heading: string;
    readonly count: number;
    readonly range: readonly [number, number];
  },
): void {
  const { heading: words, count, range } = plan;
  const heading = put(sheet, row, column, words);
  const spots = Array.from({ length: count }, (_, index) => {
    const degrees = kit.random.whole(2 * range[0], 2 * range[1]) / 2;
    return put(sheet, row + 1 + index, column, shown(degrees, "0.0"));
  });
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}

/** What a kilogram costs; water comes from the tap. */
export const perKilo = (kit: Kit, german: string): number =>
  /asser|water/.test(german) ? 0 : kit.random.whole(90, 1600) / 100;
