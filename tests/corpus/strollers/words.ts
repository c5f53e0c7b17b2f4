import { put, putRow, type Content, type CorpusSheet, type Spot } from "../book";
import type { Kit } from "../kit";
import type { Place, Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { labelWords, massOf, withLines, type MadeRecipe } from "../recipes";

/** Cautions as these people put them. */
const PUT: readonly (readonly [RegExp, string])[] = [
  [/^Honey/, "Honey: do not give to babies under 12 months."],
  [/^Contains alcohol/, "Contains alcohol: adults only, not when pregnant or driving."],
  [/^Whole nuts/, "Whole nuts: children under 5 can choke on them."],
  [/^Raw egg/, "Raw yolk: heat to 71 °C or buy it pasteurised."],
  [/^Honig/, "Honig: nichts für Säuglinge unter 12 Monaten."],
  [/^Enthält Alkohol/, "Mit Alkohol: nicht für Kinder, Schwangere und Autofahrer."],
  [/^Ganze Nüsse/, "Ganze Nüsse: Kinder unter 5 Jahren können sich verschlucken."],
  [/^Rohes Eigelb/, "Rohes Eigelb: auf 71 °C erhitzen oder pasteurisiertes nehmen."],
];

const inTheirWords = (caution: string): string =>
  PUT.find(([of]) => of.test(caution))?.[1] ?? caution;

/** What has to be known before eating, the allergens after a lead; empty where there is nothing. */
export function labelOf(made: MadeRecipe, lead: string): string {
  if (!made.flagged) return "";
  const allergens = labelWords(made, "allergen").join(", ");
  const cautions = labelWords(made, "caution").map(inTheirWords);
  return [...(allergens === "" ? [] : [`${lead} ${allergens}.`]), ...cautions].join(" ");
}

/** Writes it into a cell; gives the next free row. */
export function labelAt(
  sheet: CorpusSheet,
  { made, flags }: MarkedRecipe,
  { row, column }: Place,
  lead: string,
): number {
  const words = labelOf(made, lead);
  if (words === "") return row;
  flags.push(put(sheet, row, column, words));
  return row + 1;
}

/** Rows of labels with their number, a unit after it perhaps; gives the cells of the numbers. */
export const facts = (
  sheet: CorpusSheet,
  { row, column }: Place,
  rows: readonly (readonly Content[])[],
): Spot[] => rows.map((cells, index) => putRow(sheet, row + index, column, cells)[1]!);

export const isAlcoholic = ({ lines }: MadeRecipe): boolean =>
  lines.some(({ caution }) => /alcohol/.test(caution?.en ?? ""));

/** What to say of the alcohol, where there is any. */
export const ofAlcohol = (made: MadeRecipe, label: string, inCell?: string): readonly Said[] =>
  isAlcoholic(made)
    ? [
        {
          label,
          states: "alcohol",
          as: "typed",
          decimals: 1,
          ...(inCell !== undefined && { inCell }),
        },
      ]
    : [];

/** So many recipes of a kind; one with a mistake is always among them. */
export function madeOf(kit: Kit, count: number, test: (made: MadeRecipe) => boolean): MadeRecipe[] {
  const mades = kit.make(3 * count);
  const wrong = mades.filter(({ seeded }) => seeded !== undefined);
  const right = mades.filter(({ seeded }) => seeded === undefined);
  const fits = right.filter(test);
  const others = right.filter((made) => !test(made));
  return [...wrong, ...fits, ...others].slice(0, count);
}

/** Whole multiples of a recipe, up to about so many grams. */
export function upTo(made: MadeRecipe, grams: number): MadeRecipe {
  const factor = Math.max(1, Math.round(grams / massOf(made)));
  const lines = made.lines.map((each) => ({ ...each, grams: factor * each.grams }));
  return withLines(made, lines);
}

/** The names of some recipes, each once. */
export const itemsOf = (mades: readonly MadeRecipe[]): string[] => [
  ...new Set(mades.flatMap(({ names }) => names)),
];

/** A column of temperatures. */
export const temperatures = (kit: Kit, heading: Spot, spots: readonly Spot[]): void => {
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
};
