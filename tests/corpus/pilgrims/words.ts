import { put, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { columnOf } from "../kitchens/hand";
import type { Place, Said } from "../layouts/parts";
import { trueValue, type MarkedRecipe, type States } from "../marks";
import { labelWords, type MadeRecipe } from "../recipes";

/** Cautions as these people write them. */
const WRITTEN: readonly (readonly [RegExp, string])[] = [
  [/^Honey/, "Honey in it: not for babies under 12 months."],
  [/^Contains alcohol/, "Alcohol in it: not for children, drivers or in pregnancy."],
  [/^Whole nuts/, "Whole nuts in it: choking hazard, not for children under 5."],
  [/^Raw egg/, "Raw egg yolk: heat the mix to 71 °C or use pasteurised yolk."],
  [/^Honig/, "Mit Honig: nicht für Kinder unter 12 Monaten."],
  [/^Enthält Alkohol/, "Alkohol: nicht für Kinder, nicht für Schwangere, nicht vor dem Fahren."],
  [/^Ganze Nüsse/, "Ganze Nüsse: Erstickungsgefahr für Kinder unter 5 Jahren."],
  [/^Rohes Eigelb/, "Rohes Eigelb: Masse auf 71 °C erhitzen oder pasteurisiertes nehmen."],
];

const written = (caution: string): string =>
  WRITTEN.find(([of]) => of.test(caution))?.[1] ?? caution;

/** What has to be told of a recipe, behind a lead; empty where there is nothing. */
export function warnings(made: MadeRecipe, lead: string): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen").join(", ");
  const first = allergens === "" ? [] : [`${lead} ${allergens}.`];
  return [...first, ...labelWords(made, "caution").map(written)].join(" ");
}

/** Tells it in one cell; gives the next free row. */
export function warnAt(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): number {
  const words = warnings(made, lead);
  if (words === "") return row;
  flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** Grams of something in 100 g of an ingredient, to a tenth. */
export const inHundred = (name: string, states: States): number =>
  Number((trueValue({ names: [name], grams: [100] }, states, null) ?? 0).toFixed(1));

/** Marks what a formula of the sheet's own says of a recipe. */
export function byHand(
  { results }: MarkedRecipe,
  states: States,
  label: Spot,
  spot: Spot,
  scale = 1,
): void {
  results.push({ states, spot, label, scale, temperatureC: null, decimals: 1, typed: false });
}

/** Only where there is alcohol to speak of. */
export const ofAlcohol = (made: MadeRecipe, said: Omit<Said, "states" | "as">): readonly Said[] =>
  (trueValue(made, "alcohol", null) ?? 0) > 0.5
    ? [{ decimals: 1, ...said, states: "alcohol", as: "typed" }]
    : [];

/** A column of readings in °C. */
export const readings = (
  { marked }: Kit,
  heading: Spot,
  rows: readonly (readonly Spot[])[],
  at: number,
): void => {
  marked.numberColumns.push({
    ...{ spots: columnOf(rows, at), heading, total: null, kind: "temperature" },
  });
};

/** A column of formulas that are in place already. */
export const formulaColumn = (
  { marked }: Kit,
  heading: Spot,
  rows: readonly (readonly Spot[])[],
  at: number,
  fixed: readonly Spot[] = [],
): void => {
  marked.formulaColumns.push({ spots: columnOf(rows, at), heading, fixed });
};

/** What a kilogram costs here, in the money of the sheet. */
export function perKilo({ random }: Kit, en: string): number {
  if (/^water$/.test(en)) return 0;
  if (/sugar|sucrose|salt|^whole milk/.test(en)) return random.whole(90, 190) / 100;
  if (/juice|puree|coffee|syrup|dextrose/.test(en)) return random.whole(180, 420) / 100;
  return random.whole(320, /nut|pistachio|vodka|cocoa/.test(en) ? 2400 : 1100) / 100;
}
