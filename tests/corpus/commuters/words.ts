import { put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import type { Place, Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { labelWords, meets, type MadeRecipe } from "../recipes";
import { stock } from "../stock";

/** Cautions as these people write them. */
const WRITTEN: readonly (readonly [RegExp, string])[] = [
  [/^Honey/, "Honey in it, so nothing for babies under 12 months."],
  [/^Contains alcohol/, "Alcohol in it: not for children, pregnant guests or drivers."],
  [/^Whole nuts/, "Nuts are whole, choking risk for children under 5."],
  [/^Raw egg/, "Raw egg yolk: bring to 71 °C or take pasteurised."],
  [/^Honig/, "Honig drin, nicht für Babys unter 12 Monaten."],
  [/^Enthält Alkohol/, "Alkohol drin: nicht für Kinder, Schwangere und Fahrer."],
  [/^Ganze Nüsse/, "Ganze Nüsse, Erstickungsgefahr für Kinder unter 5 Jahren."],
  [/^Rohes Eigelb/, "Rohes Eigelb: auf 71 °C bringen oder pasteurisiert kaufen."],
];

const written = (caution: string): string =>
  WRITTEN.find(([of]) => of.test(caution))?.[1] ?? caution;

/** What has to be known of a recipe, the allergens after a lead; empty where there is nothing. */
export function warning(made: MadeRecipe, lead: string): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen").join(", ");
  const cautions = labelWords(made, "caution").map(written);
  return [...(allergens === "" ? [] : [`${lead} ${allergens}.`]), ...cautions].join(" ");
}

/** Writes it into a cell; gives the next free row. */
export function warnAt(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): number {
  const text = warning(made, lead);
  if (text === "") return row;
  flags.push(put(sheet, row, column, text));
  return row + 1;
}

/** A labelled number with its unit behind the label. */
export const asked = (
  kit: Kit,
  sheet: CorpusSheet,
  [row, column]: readonly [row: number, column: number],
  [bare, unit, value, format]: readonly [string, string, number, string?],
): Spot =>
  input(
    kit,
    sheet,
    { row, column },
    {
      ...{ label: `${bare} (${unit})`, bare, value },
      ...(format !== undefined && { format }),
    },
  );

/** A labelled count, price or rate. */
export const counted = (
  sheet: CorpusSheet,
  [row, column]: readonly [row: number, column: number],
  [label, value, format]: readonly [string, number, string?],
): Spot =>
  putRow(sheet, row, column, [label, format === undefined ? value : shown(value, format)])[1]!;

/** Forgets the target where the change, and not a mistake, decides whether it is met. */
export function asBefore(before: MadeRecipe, after: MadeRecipe): MadeRecipe {
  const { target } = before;
  if (target === null || meets(before, target) === meets(after, target)) return after;
  return { ...after, target: null };
}

export const hasAlcohol = ({ lines }: MadeRecipe): boolean =>
  lines.some(({ caution }) => /alcohol/.test(caution?.en ?? ""));

/** The alcohol, where there is any. */
export const alcoholIn = (made: MadeRecipe, label: string): readonly Said[] =>
  hasAlcohol(made) ? [{ label, states: "alcohol", as: "typed", decimals: 1 }] : [];

/** All that there are. */
const EVERY = stock.length;

/** Recipes of which most are of a kind; one with a mistake is always among them. */
export function chosen(kit: Kit, count: number, test: (made: MadeRecipe) => boolean): MadeRecipe[] {
  const mades = kit.make(EVERY);
  const rank = (made: MadeRecipe): number => (made.seeded !== undefined ? 0 : test(made) ? 1 : 2);
  const first = [...mades].sort((one, other) => rank(one) - rank(other)).slice(0, count);
  return mades.filter((made) => first.includes(made));
}

/** Marks a column of temperatures. */
export const readings = ({ marked }: Kit, heading: Spot, spots: readonly Spot[]): void => {
  marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
};
