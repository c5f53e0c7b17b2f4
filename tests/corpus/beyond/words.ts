import { put, putRow, shown, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import type { Place, Problem } from "../layouts/parts";
import { freezesAt } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, type MadeRecipe } from "../recipes";

/** Cautions as people put them who have to answer for a class. */
const CAUTIONS: readonly (readonly [RegExp, string])[] = [
  [/^Honey/, "Has honey in it, so nothing for babies under 12 months."],
  [/^Contains alcohol/, "Alcohol in it: not for children, not when pregnant, not before driving."],
  [/^Whole nuts/, "Nuts are whole: choking danger below the age of 5."],
  [/^Raw egg/, "Egg yolk is raw: pasteurised only, or bring the mix to 71 °C."],
  [/^Honig/, "Honig drin, also nicht für Kinder unter 12 Monaten."],
  [
    /^Enthält Alkohol/,
    "Alkohol drin: nicht für Kinder, in der Schwangerschaft oder vor dem Fahren.",
  ],
  [/^Ganze Nüsse/, "Nüsse sind ganz: Erstickungsgefahr bei Kindern unter 5 Jahren."],
  [/^Rohes Eigelb/, "Eigelb ist roh: nur pasteurisiert verwenden oder auf 71 °C erhitzen."],
];

const inOurWords = (caution: string): string =>
  CAUTIONS.find(([of]) => of.test(caution))?.[1] ?? caution;

/** All that eaters have to know, the allergens after a lead; empty where there is nothing. */
function warningOf(made: MadeRecipe, lead: string): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen").join(", ");
  const cautions = labelWords(made, "caution").map(inOurWords);
  return [...(allergens === "" ? [] : [`${lead} ${allergens}.`]), ...cautions].join(" ");
}

/** Writes it into a cell; gives the next free row. */
export function declare(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): number {
  const words = warningOf(made, lead);
  if (words === "") return row;
  flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** Rows of a little table, its heading first; gives the cells of each row. */
export const table = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): Spot[][] => rows.map((cells, index) => putRow(sheet, row + index, column, cells));

/** Temperatures in half degrees under a heading, marked as such. */
export function readings(
  { marked, random }: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  count: number,
  [from, to]: readonly [number, number],
): void {
  const spots = Array.from({ length: count }, (_, index) => {
    const celsius = shown(random.whole(2 * from, 2 * to) / 2, "0.0");
    return put(sheet, heading.row + 1 + index, heading.column, celsius);
  });
  marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}

/** Where a sample of a lesson really begins to freeze. */
export const sampleFreezesAt = ({ solute, waterGrams, grams }: Problem): number =>
  freezesAt(["water", solute.en], [waterGrams, grams]);

/** In cents a kilogram. */
const PRICES: readonly (readonly [RegExp, from: number, to: number])[] = [
  [/^water$/, 0, 0],
  [/nuts|pistachios|vodka|honey|cocoa/, 980, 2200],
  [/^sugar|sucrose|salt/, 89, 180],
  [/syrup|dextrose|fructose|inulin|acid|powder/, 350, 790],
  [/^whole milk|juice/, 115, 260],
  [/milk|cream|yolk/, 390, 640],
];

/** What a kilogram of a line costs: the same wherever the line stands. */
export function priceOf({ lines }: MadeRecipe, index: number): Content {
  const { en } = lines[index]!;
  const [, from, to] = PRICES.find(([pattern]) => pattern.test(en)) ?? [en, 210, 980];
  const own = 53 * en.length + 7 * en.charCodeAt(0);
  return shown((from + (own % (to - from + 1))) / 100, "0.00");
}
