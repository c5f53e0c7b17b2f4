import { a1, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import { stillMet } from "../kitchens/hand";
import type { Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, withLines, type MadeRecipe } from "../recipes";
import type { StockLine } from "../stock";

/** What is to be heeded, as these people write it down. */
const HEED: readonly (readonly [RegExp, string])[] = [
  [/^Honig/, "Mit Honig, deshalb nicht für Babys im ersten Jahr (unter 12 Monaten)."],
  [/^Enthält Alkohol/, "Alkoholhaltig, nur für Erwachsene, nicht in der Schwangerschaft."],
  [/^Ganze Nüsse/, "Achtung ganze Nüsse: Verschlucken, nichts für Kinder unter 5 Jahren."],
  [/^Rohes Eigelb/, "Eigelb ist roh: Masse auf 71 °C erhitzen oder pasteurisiertes nehmen."],
];

const cautionsOf = (made: MadeRecipe): string[] =>
  labelWords(made, "caution").map((each) => HEED.find(([of]) => of.test(each))?.[1] ?? each);

/** Allergens after a lead, then what is to be heeded; empty where there is nothing. */
export function heed(made: MadeRecipe, lead: string): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen").join(", ");
  return [...(allergens === "" ? [] : [`${lead} ${allergens}.`]), ...cautionsOf(made)].join(" ");
}

/** Writes it into one cell; gives the next free row. */
export function heedAt(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): number {
  const words = heed(made, lead);
  if (words === "") return row;
  flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** The cautions alone, where the allergens stand beside the lines. */
export function cautionsAt(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
): number {
  const words = made.flagged ? cautionsOf(made).join(" ") : "";
  if (words === "") return row;
  flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** A recipe with a line more; one with a mistake stays as it is. */
export const with1 = (made: MadeRecipe, added: StockLine): MadeRecipe =>
  made.seeded !== undefined ? made : stillMet(withLines(made, [...made.lines, added]));

const PRICES: readonly (readonly [RegExp, number, number])[] = [
  [/^(Wasser|Leitungswasser|Trinkwasser)$/, 0, 0],
  [/ucker|Saccharose|Raffinade|sirup|Salz|salz|Dextrose/, 90, 340],
  [/ilch|Sahne|rahm|joghurt/, 110, 560],
  [/üsse|Pistazien|Spirituose|brand|Honig|Kakao|Kokos|Xylit/, 750, 2400],
];

/** Euros for a kilogram, bought by the box. */
export function euros({ random }: Kit, name: string): number {
  const [, from, to] = PRICES.find(([of]) => of.test(name)) ?? [name, 190, 1150];
  return random.whole(from, to) / 100;
}

export interface Readings {
  readonly count: number;
  /** From and to, in tenths of a degree. */
  readonly tenths: readonly [number, number];
  readonly falling?: boolean;
}

/** Readings of a thermometer along a column, with a heading; marked as such. */
export function readings(
  { marked, random }: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  { count, tenths, falling = false }: Readings,
): Spot[] {
  const read = Array.from({ length: count }, () => random.whole(tenths[0], tenths[1]) / 10);
  if (falling) read.sort((one, other) => other - one);
  const { row, column } = heading;
  const spots = read.map((each, index) => put(sheet, row + 1 + index, column, shown(each, "0.0")));
  marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  return spots;
}

/** Sugar waters with their strength by formula, given both ways; the place is that of the headings. */
export function sugarWaters(
  { marked, random }: Kit,
  sheet: CorpusSheet,
  { row, column }: Place,
  heads: readonly string[],
): void {
  const places = putRow(sheet, row, column, heads);
  const rows = Array.from({ length: 4 }, (_, index) => {
    const at = row + 1 + index;
    const [sugar, water] = putRow(sheet, at, column + 1, [
      ...[20 * random.whole(8, 30), 50 * random.whole(8, 14)],
    ]) as [Spot, Spot];
    put(sheet, at, column, String.fromCharCode(97 + index));
    const perWater = shown(`=${a1(sugar)}/${a1(water)}*100`, "0.0");
    const share = shown(`=${a1(sugar)}/(${a1(sugar)}+${a1(water)})*100`, "0.0");
    const [first, second] = putRow(sheet, at, column + 3, [perWater, share]) as [Spot, Spot];
    marked.strengths.push({ sugar, water, perWater: first, share: second });
    return [first, second];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({
      ...{ spots: rows.map((cells) => cells[at]!), heading: places[3 + at]!, fixed: [] },
    }),
  );
}
