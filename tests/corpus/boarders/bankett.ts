import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { down } from "../callers/desk";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { columnsOf } from "./worte";

interface Order {
  readonly guests: Spot;
  readonly portion: Spot;
  readonly need: Spot;
}

/** How many come, what each gets, and what has to be frozen for them. */
function order(kit: Kit, sheet: CorpusSheet): Order {
  const { random } = kit;
  putRow(sheet, 0, 0, ["Bankett", random.pick(["Hochzeit", "Jubiläum", "Tagung"])]);
  const guests = putRow(sheet, 1, 0, ["Gäste", 10 * random.whole(4, 14)])[1]!;
  const words = { label: "Nocke (g)", bare: "Nocke", value: random.pick([35, 40, 45, 50]) };
  const portion = input(kit, sheet, { row: 2, column: 0 }, words);
  const reserve = putRow(sheet, 3, 0, ["Reserve", shown(0.1, "0%")])[1]!;
  const formula = `=${a1(guests)}*${a1(portion)}*(1+${a1(reserve)})`;
  const need = putRow(sheet, 4, 0, ["Bedarf je Eis (g)", shown(formula, "0")])[1]!;
  return { guests, portion, need };
}

const SAID: readonly Said[] = [
  { label: "Gefrierpunkt in °C", states: "freezing point", as: "formula" },
  { label: "Zucker in der Masse", states: "sugar share", as: "typed", percent: "format" },
  {
    label: "vom Wasser gefroren bei −18 °C",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, percent: "format" },
  },
  {
    label: "von der Masse Eis bei −18 °C",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, percent: "format" },
  },
];

/** One of the ices of the evening, in shares; gives the next free row. */
function course(kit: Kit, sheet: CorpusSheet, given: MadeRecipe, column: number, need: Spot) {
  const made = largestFirst(called(given, { Salz: "Speisesalz" }));
  put(sheet, 6, column, made.title);
  const heads = putRow(sheet, 7, column, ["Anteil", "Produkt", "heute abwiegen (g)"]);
  const rows = made.names.map((name, index) => {
    const share = shown(inUnit(made.grams[index]!, "fraction"), "0.0%");
    return putRow(sheet, 8 + index, column, [share, name]);
  });
  const [amounts, names] = columnsOf(rows, 0, 1) as [Spot[], Spot[]];
  const end = 8 + rows.length;
  put(sheet, end, column + 1, "Summe");
  const total = sumOf(kit, sheet, { row: end, column }, amounts, "0.0%");
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[2]!, format: "0", fixed: [need], end },
    formula: (cell) => `=${cell}*${fixed(need)}`,
  });
  const marks = { names, amounts, alsoAmounts, total, amountLabel: heads[0]! };
  const recipe = markRecipe(kit, made, { ...marks, unit: "fraction" });
  const next = say(sheet, recipe, { row: 17, column: column + 1 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: column + 1, label: "Beschaffenheit" });
  tell(kit, sheet, recipe, { row: next + 2, column: column + 1, as: "sentence" });
}

const BOTTLES = [
  ["Obstwasser", 42, 0.945],
  ["Gin", 40, 0.948],
  ["Orangenlikör", 38, 1.03],
  ["Weinbrand", 36, 0.956],
  ["Pfefferminzlikör", 24, 1.07],
] as const;

/** What the waiter pours over, by the centilitre. */
function pouring(kit: Kit, sheet: CorpusSheet, { guests }: Order): void {
  const { marked, random } = kit;
  put(sheet, 0, 0, "Zum Aufgießen am Tisch");
  const density = putRow(sheet, 1, 0, ["Ethanol wiegt (g/ml)", shown(0.789, "0.000")])[1]!;
  const heads = putRow(sheet, 3, 0, [
    ...["Flasche", "% vol", "wiegt (g/ml)", "je Gast (ml)", "je Gast (g)"],
    ...["reiner Alkohol je Gast (g)", "für alle (ml)"],
  ]);
  const rows = BOTTLES.map(([name, strength, heavy], index) => {
    const row = 4 + index;
    const typed = [name, strength, shown(heavy, "0.000"), random.pick([10, 15, 20])];
    const [, abv, per, poured] = putRow(sheet, row, 0, typed) as [Spot, Spot, Spot, Spot];
    const grams = put(sheet, row, 4, shown(`=${a1(poured)}*${a1(per)}`, "0.0"));
    const pure = `=${a1(grams)}/${a1(per)}*${a1(abv)}/100*${fixed(density)}`;
    const alcohol = put(sheet, row, 5, shown(pure, "0.0"));
    marked.alcohols.push({ grams, abv, alcohol });
    const all = `=${a1(poured)}*'Bankettzettel'!${fixed(guests)}`;
    return [grams, alcohol, put(sheet, row, 6, all)];
  });
  columnsOf(rows, 0, 1, 2).forEach((spots, at) => {
    const reads = [[], [density], [guests]][at]!;
    marked.formulaColumns.push({ spots, heading: heads[4 + at]!, fixed: reads });
  });
  const warning = "Alkohol am Tisch: nicht für Kinder, Schwangere und wer noch Auto fährt.";
  marked.recipes[0]!.flags.push(put(sheet, 10, 0, warning));
}

/** An evening's ices beside each other, and what is poured over them. */
function banquet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Bankettzettel");
  const given = order(kit, sheet);
  kit.make(2).forEach((made, index) => course(kit, sheet, made, 4 * index, given.need));
  note(kit, sheet, 0, 5, "Nocken zwei Stunden vorher abstechen, Platten vorkühlen.");
  pouring(kit, addSheet(kit.marked.book, "Bar"), given);
}

/** A hotel's banquets. */
export const bankette: readonly Layout[] = [
  { name: "Hotel, Bankettzettel für den Abend", language: "de", build: banquet },
];
