import { a1, put, putRow, shown, span, type Content, type CorpusSheet, type Spot } from "../book";
import type { Fact, Voice } from "../caterers/words";
import type { Kit } from "../kit";
import { absolute, markRecipe, sumOf, type Place } from "../layouts/parts";
import { inUnit, type SheetUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";

/** How these people warn in English, the lead before the allergens their own. */
export const inEnglish = (lead: string): Voice => ({
  lead,
  honey: "Honey in it, not for babies under 12 months.",
  alcohol: "Alcohol in it: not for children, in pregnancy or before driving.",
  nuts: "Whole nuts: choking risk for children under 5.",
  egg: "Raw egg yolk: take the mix to 71 °C or use pasteurised.",
});

/** How these people warn in German. */
export const inGerman = (lead: string): Voice => ({
  lead,
  honey: "Enthält Honig, nicht für Säuglinge unter 12 Monaten.",
  alcohol: "Enthält Alkohol: nicht für Kinder, Schwangere oder vor dem Autofahren.",
  nuts: "Ganze Nüsse: Erstickungsgefahr bei Kindern unter 5 Jahren.",
  egg: "Rohes Eigelb: Masse auf 71 °C bringen oder pasteurisiertes nehmen.",
});

interface Cells {
  /** The cells with the names of the ingredients. */
  readonly items: readonly Spot[];
  readonly unit: SheetUnit;
  readonly format?: string;
  readonly amountLabel: Spot;
  /** How many columns to the right the same lines stand again, worked out. */
  readonly again?: number;
}

export interface InGrid {
  readonly recipe: MarkedRecipe;
  /** Every cell beside or under an ingredient, empty ones too. */
  readonly all: readonly Spot[];
  /** The range of names and that of amounts, as a formula on the sheet calls them. */
  readonly lines: string;
}

/** A recipe among others in a grid; `at` says where an ingredient's amount stands. */
function inGrid(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  { items, unit, format, amountLabel, again }: Cells,
  at: (item: Spot) => Spot,
  sumAt?: Place,
): InGrid {
  const listed = items.map(({ row, column }) => sheet.cells[row]![column]!.content);
  const names = made.names.map((name) => items[listed.indexOf(name)]!);
  const amounts = names.map((name, index) => {
    const { row, column } = at(name);
    const grams = inUnit(made.grams[index]!, unit);
    return put(sheet, row, column, format === undefined ? grams : shown(grams, format));
  });
  const all = items.map(at);
  const total = sumAt === undefined ? null : sumOf(kit, sheet, sumAt, all, format);
  const alsoAmounts =
    again === undefined ? [] : amounts.map((spot) => ({ ...spot, column: spot.column + again }));
  const cells = { names, amounts, alsoAmounts, unit, total, amountLabel, shared: true };
  const lines = `${absolute(span(items))},${span(all)}`;
  return { recipe: markRecipe(kit, made, cells), all, lines };
}

/** A recipe down a column. */
export const inColumn = (
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  plan: Cells & { readonly column: number; readonly sumRow?: number },
): InGrid => {
  const { column, sumRow } = plan;
  const sumAt = sumRow === undefined ? undefined : { row: sumRow, column };
  return inGrid(kit, sheet, made, plan, (item) => ({ ...item, column }), sumAt);
};

/** A recipe along a row. */
export const inRow = (
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  plan: Cells & { readonly row: number; readonly sumColumn?: number },
): InGrid => {
  const { row, sumColumn } = plan;
  const sumAt = sumColumn === undefined ? undefined : { row, column: sumColumn };
  return inGrid(kit, sheet, made, plan, (item) => ({ ...item, row }), sumAt);
};

/** Says things of a recipe down its column, the labels at the left. */
export function sayDown(
  sheet: CorpusSheet,
  { recipe, lines }: InGrid,
  facts: readonly Fact[],
  { row, column, labels }: Place & { readonly labels: number },
): void {
  facts.forEach(([words, plan], index) => {
    const label = put(sheet, row + index, labels, words);
    resultAt(sheet, recipe, label, { row: label.row, column }, plan, () => lines);
  });
}

/** Says things of a recipe along its row, each under its heading. */
export function sayAlong(
  sheet: CorpusSheet,
  { recipe, lines }: Pick<InGrid, "recipe" | "lines">,
  facts: readonly Fact[],
  { row, column }: Place,
  heads: readonly Spot[],
): void {
  facts.forEach(([, plan], index) => {
    const place = { row, column: column + index };
    resultAt(sheet, recipe, heads[index]!, place, plan, () => lines);
  });
}

/** The range of the lines as another sheet calls it. */
export const linesFrom = ({ names, amounts }: MarkedRecipe): string =>
  [names, amounts].map((spots) => `'${spots[0]!.sheet}'!${span(spots)}`).join(",");

/** A small table that no recipe needs; gives its headings and its cells. */
export function smallTable(
  sheet: CorpusSheet,
  { row, column }: Place,
  heads: readonly Content[],
  rows: readonly (readonly Content[])[],
): { readonly heads: readonly Spot[]; readonly rows: readonly (readonly Spot[])[] } {
  return {
    heads: putRow(sheet, row, column, heads),
    rows: rows.map((cells, index) => putRow(sheet, row + 1 + index, column, cells)),
  };
}

/** Temperatures in a column that somebody read. */
export function readings(kit: Kit, heading: Spot, spots: readonly Spot[]): void {
  kit.marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
}

/** A temperature in tenths or halves of a degree between two. */
export const degrees = (kit: Kit, from: number, to: number): Content =>
  shown(kit.random.whole(2 * from, 2 * to) / 2, "0.0");

const PER_KILO: readonly (readonly [RegExp, from: number, to: number])[] = [
  [/water|wasser/i, 0, 0],
  [/salt|salz/i, 60, 140],
  [/sugar|zucker|sucrose|saccharose/i, 110, 220],
  [/powder|pulver/i, 620, 980],
  [/milk|milch|yog|jog/i, 110, 260],
  [/cream|sahne/i, 450, 700],
  [/nuts|nüsse|pistach|pistaz/i, 1400, 2600],
  [/juice|saft|coffee|kaffee/i, 220, 480],
  [/honey|honig/i, 850, 1400],
  [/vodka|spirit/i, 1400, 1900],
];

/** A price for a kilogram. */
export function price({ random }: Kit, item: string): number {
  const [, from, to] = PER_KILO.find(([of]) => of.test(item)) ?? [/./, 350, 900];
  return random.whole(from, to) / 100;
}

/** The allergens of every line in a column of their own. */
export function allergensBeside(
  sheet: CorpusSheet,
  { made, names, flags }: MarkedRecipe,
  column: number,
): void {
  if (!made.flagged) return;
  made.lines.forEach(({ allergen }, index) => {
    const words = allergen?.[made.language];
    if (words !== undefined) flags.push(put(sheet, names[index]!.row, column, words));
  });
}

/** What all recipes need of an ingredient, a sum along its row. */
export const sumsAcross = (
  kit: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  rows: readonly (readonly Spot[])[],
  format: string,
): Spot[] => {
  const spots = rows.map((cells) =>
    sumOf(kit, sheet, { row: cells[0]!.row, column: heading.column }, cells, format),
  );
  kit.marked.formulaColumns.push({ spots, heading, fixed: [] });
  return spots;
};

/** A formula under each heading of a block's rows, marked as a column. */
export function formulaColumn(
  kit: Kit,
  sheet: CorpusSheet,
  heading: Spot,
  rows: readonly (readonly Spot[])[],
  content: (cell: (at: number) => string) => string,
  format: string,
  fixed: readonly Spot[] = [],
): Spot[] {
  const spots = rows.map((cells) => {
    const formula = `=${content((at) => a1(cells[at]!))}`;
    return put(sheet, cells[0]!.row, heading.column, shown(formula, format));
  });
  kit.marked.formulaColumns.push({ spots, heading, fixed });
  return spots;
}
