import { put, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import type { Place, Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { Chance } from "../random";
import { labelWords, massOf, withLines, type MadeRecipe } from "../recipes";

/** Cautions in the words of these people. */
const OWN: readonly (readonly [RegExp, string])[] = [
  [/^Honey/, "Honey in it: not for babies under 1 year."],
  [/^Contains alcohol/, "Alcohol in it: not for children, in pregnancy or before driving."],
  [/^Whole nuts/, "Whole nuts: small children (under 5) could choke."],
  [/^Raw egg/, "Raw egg yolk: cook to 71 °C or use the pasteurised one."],
  [/^Honig/, "Honig: kein Eis für Babys unter 12 Monaten."],
  [/^Enthält Alkohol/, "Enthält Alkohol, nichts für Kinder, Schwangere und wer fährt."],
  [/^Ganze Nüsse/, "Ganze Nüsse: Erstickungsgefahr für Kinder unter 5 Jahren."],
  [/^Rohes Eigelb/, "Rohes Eigelb: Masse auf 71 °C bringen oder pasteurisiertes kaufen."],
];

const own = (caution: string): string => OWN.find(([of]) => of.test(caution))?.[1] ?? caution;

const cautions = (made: MadeRecipe): string[] => labelWords(made, "caution").map(own);

/** All that the eater must know, in one cell; empty where there is nothing. */
export function toKnow(made: MadeRecipe, lead: string): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen");
  const first = allergens.length === 0 ? [] : [`${lead} ${allergens.join(", ")}.`];
  return [...first, ...cautions(made)].join(" ");
}

/** Writes it; gives the next free row. */
export function tellOnce(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): number {
  const words = toKnow(made, lead);
  if (words === "") return row;
  flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** The allergens beside their label, each caution in a row of its own; gives the next free row. */
export function tellInRows(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  label: string,
): number {
  if (!made.flagged) return row;
  let next = row;
  const allergens = labelWords(made, "allergen").join(", ");
  if (allergens !== "") {
    flags.push(put(sheet, next, column, label), put(sheet, next++, column + 1, allergens));
  }
  for (const caution of cautions(made)) flags.push(put(sheet, next++, column, caution));
  return next;
}

export const hasAlcohol = ({ lines }: MadeRecipe): boolean =>
  lines.some(({ caution }) => /alcohol/.test(caution?.en ?? ""));

/** What is said of the alcohol, where there is any. */
export const ofSpirit = (made: MadeRecipe, said: Pick<Said, "label" | "inCell">): Said[] =>
  hasAlcohol(made) ? [{ ...said, states: "alcohol", as: "typed", decimals: 1 }] : [];

const PRICES: readonly (readonly [RegExp, from: number, to: number])[] = [
  [/sugar|sucrose|dextrose|syrup|^salt/, 110, 290],
  [/^whole milk|coffee/, 95, 180],
  [/cream|yogurt|juice|puree/, 230, 640],
  [/nuts|pistachios|cocoa|vodka/, 1250, 2600],
];

/** What a kilogram of it costs; water from the tap nothing. */
export function perKilo(random: Chance, en: string): number {
  if (en === "water") return 0;
  const [, from, to] = PRICES.find(([of]) => of.test(en)) ?? [/./, 320, 890];
  return random.whole(from, to) / 100;
}

/** A whole number of times the recipe, near so many grams. */
export function timesTo(made: MadeRecipe, grams: number): MadeRecipe {
  const factor = Math.max(1, Math.round(grams / massOf(made)));
  const lines = made.lines.map((each) => ({ ...each, grams: each.grams * factor }));
  return withLines(made, lines);
}

/** Every name once. */
export const namesOf = (mades: readonly MadeRecipe[]): string[] => [
  ...new Set(mades.flatMap(({ names }) => names)),
];

/** Marks readings of a thermometer. */
export function readings(kit: Kit, heading: Spot, spots: readonly Spot[]): void {
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}
