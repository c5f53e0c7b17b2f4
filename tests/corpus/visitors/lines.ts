import {
  a1,
  put,
  putRow,
  sheetNamed,
  shown,
  type Content,
  type CorpusSheet,
  type Spot,
} from "../book";
import type { Kit } from "../kit";
import type { Place, Said } from "../layouts/parts";
import { trueValue } from "../marks";
import type { Chance } from "../random";
import { labelWords, type MadeRecipe } from "../recipes";

/** Writes rows one below the other, each from the same column. */
export const block = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): Spot[][] => rows.map((contents, index) => putRow(sheet, row + index, column, contents));

/** A column of temperatures in half degrees, marked as such. */
export function temperatures(
  { marked, random }: Kit,
  sheet: CorpusSheet,
  { heading, count }: { readonly heading: Spot; readonly count: number },
  [from, to]: readonly [number, number],
): Spot[] {
  const { row, column } = heading;
  const spots = Array.from({ length: count }, (_, index) =>
    put(sheet, row + 1 + index, column, shown(random.whole(2 * from, 2 * to) / 2, "0.0")),
  );
  marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  return spots;
}

/** All that the label of a recipe has to say, in one text; empty where there is nothing. */
export const labelText = (made: MadeRecipe, contains: string): string => {
  const allergens = labelWords(made, "allergen").join(", ");
  return [
    ...(allergens === "" ? [] : [`${contains}: ${allergens}.`]),
    ...labelWords(made, "caution"),
  ].join(" ");
};

const PRICES: readonly (readonly [RegExp, from: number, to: number, supplier: string])[] = [
  [/^water$/, 1, 1, "tap"],
  [/milk powder|sugar|sucrose|syrup|dextrose|fructose|inulin|salt|acid/, 90, 690, "dry store"],
  [/milk|cream|yogurt|yolk/, 110, 790, "dairy"],
  [/nuts|pistachios|vodka|honey|cocoa|coconut/, 890, 2600, "dry store"],
];

/** What a kilogram costs, and where it is bought. */
export function bought(random: Chance, name: string): readonly [price: number, supplier: string] {
  const known = PRICES.find(([pattern]) => pattern.test(name));
  const [, from, to, supplier] = known ?? [name, 210, 1300, "greengrocer"];
  return [random.whole(from, to) / 100, supplier];
}

/** Only what is there to be told: a mix without alcohol has no line for it. */
export const alcoholIn = (made: MadeRecipe, said: Said): Said[] =>
  (trueValue(made, "alcohol", null) ?? 0) > 0 ? [said] : [];

interface Beside {
  readonly column: number;
  readonly heading: Spot;
  readonly fixed: readonly Spot[];
  readonly format: string;
}

/** A formula for each amount in its row, marked as a column. */
export function beside(
  { marked }: Kit,
  amounts: readonly Spot[],
  { column, heading, fixed, format }: Beside,
  formula: (amount: string) => string,
): Spot[] {
  const sheet = sheetNamed(marked.book, heading.sheet);
  const spots = amounts.map((spot) =>
    put(sheet, spot.row, column, shown(formula(a1(spot)), format)),
  );
  marked.formulaColumns.push({ spots, heading, fixed });
  return spots;
}
