import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { columnOf } from "../kitchens/hand";
import { desk, down, linesOn } from "./desk";

const DAYS = ["Mi", "Do", "Fr", "Sa", "So"];

/** Portions by ice and day; gives the cells with the grams of the week. */
function week(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Spot[] {
  const { marked, random } = kit;
  put(sheet, 0, 0, `Nachtisch in der Woche ${random.whole(20, 34)}`);
  const words = { label: "Eis je Portion (g)", bare: "Eis je Portion" };
  const value = random.pick([80, 100, 120]);
  const portion = input(kit, sheet, { row: 1, column: 0 }, { ...words, value });
  const heads = putRow(sheet, 3, 0, ["Eis", ...DAYS, "Portionen", "Bedarf (g)"]);
  const needs = mades.map(({ title }, index) => {
    const row = 4 + index;
    const [, ...days] = putRow(sheet, row, 0, [title, ...DAYS.map(() => random.whole(4, 22))]);
    const all = sumOf(kit, sheet, { row, column: 6 }, days);
    return [all, put(sheet, row, 7, `=${a1(all)}*${fixed(portion)}`)];
  });
  const grams = columnOf(needs, 1);
  [0, 1].forEach((at) => {
    const fixedCells = at === 0 ? [] : [portion];
    const spots = columnOf(needs, at);
    marked.formulaColumns.push({ spots, heading: heads[6 + at]!, fixed: fixedCells });
  });
  return grams;
}

/** How cold it was in the freezer on each day, along a row. */
function freezer({ marked, random }: Kit, sheet: CorpusSheet, row: number): void {
  const readings = DAYS.map(() => shown(-random.whole(29, 37) / 2, "0.0"));
  const [heading, ...spots] = putRow(sheet, row, 0, ["Eisfach mittags (°C)", ...readings]);
  marked.numberColumns.push({ spots, heading: heading!, total: null, kind: "temperature" });
}

const SAID: readonly Said[] = [
  { label: "fängt zu gefrieren an bei (°C)", states: "freezing point", as: "formula" },
  { label: "Zucker, % des Gewichts", states: "sugar share", as: "typed" },
  {
    label: "Eis bei −15 °C, % des Wassers",
    ...{ states: "ice of water", as: "typed", temperatureC: -15, decimals: 0 },
  },
  {
    label: "Eis bei −15 °C, % der Masse",
    ...{ states: "ice of mix", as: "typed", temperatureC: -15, decimals: 0 },
  },
];

/** A basic recipe with what the week needs; gives the next free row. */
function basis(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, need: Spot): number {
  put(sheet, top, 0, made.title);
  const list = desk(kit, sheet, made, {
    ...{ row: top + 1, column: 0 },
    heads: ["Grundrezept (g)", "Diese Woche (g)", "Zutat"],
    cells: (index) => [made.grams[index], undefined, made.names[index]],
    ...{ name: 2, amount: 0, sum: "alles" },
  });
  const { heads, amounts, total, end } = list;
  const alsoAmounts = down(kit, sheet, amounts, {
    ...{ heading: heads[1]!, end, format: "0", fixed: [total] },
    formula: (cell) => `=${cell}/${fixed(total)}*Woche!${fixed(need)}`,
  });
  const recipe = markRecipe(kit, made, { ...linesOn(list), alsoAmounts, unit: "g" });
  const next = say(sheet, recipe, { row: top + 1, column: 4 }, SAID);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "so gewollt" });
  const row = Math.max(end, next) + 1;
  return tell(kit, sheet, recipe, { row, column: 0, as: "sentence" }) + 1;
}

const SHOTS = [
  ["Obstbrand 40 %", 40, 0.948],
  ["Rum 54 %", 54, 0.922],
  ["Kräuterlikör 30 %", 30, 1.04],
  ["Wodka 37,5 %", 37.5, 0.952],
] as const;

/** What goes over it on request, the alcohol by way of the volume. */
function shots(kit: Kit): Spot {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Mit Schuss");
  const density = putRow(sheet, 0, 0, ["Dichte von Ethanol (g/ml)", shown(0.789, "0.000")])[1]!;
  const heads = putRow(sheet, 2, 0, [
    ...["Flasche", "Vol.-%", "Dichte (g/ml)", "Schuss (g)", "Alkohol darin (g)"],
  ]);
  const spots = SHOTS.map(([bottle, strength, heavy], index) => {
    const row = 3 + index;
    const [, abv, per, grams] = putRow(sheet, row, 0, [
      ...[bottle, strength, shown(heavy, "0.000"), random.whole(12, 24)],
    ]) as [Spot, Spot, Spot, Spot];
    const pure = `=${a1(grams)}/${a1(per)}*${a1(abv)}/100*${fixed(density)}`;
    const alcohol = put(sheet, row, 4, shown(pure, "0.0"));
    marked.alcohols.push({ grams, abv, alcohol });
    return alcohol;
  });
  marked.formulaColumns.push({ spots, heading: heads[4]!, fixed: [density] });
  const warning = "Enthält Alkohol: nicht für Kinder, Schwangere und wer noch fährt.";
  return put(sheet, 8, 0, warning);
}

/** A plan of the week, the basic recipes, and what is poured over. */
function inn(kit: Kit): void {
  const plan = addSheet(kit.marked.book, "Woche");
  const mades = kit.make(4);
  const needs = week(kit, plan, mades);
  freezer(kit, plan, 5 + mades.length);
  const sheet = addSheet(kit.marked.book, "Grundrezepte");
  let top = 0;
  mades.forEach((made, index) => {
    top = basis(kit, sheet, made, top, needs[index]!);
  });
  note(kit, plan, 7 + mades.length, 0, "Montag und Dienstag Ruhetag, dann wird gefroren.");
  kit.marked.recipes[0]!.flags.push(shots(kit));
}

/** Sheets of a country inn. */
export const gasthoefe: readonly Layout[] = [
  { name: "Gasthof, Nachtischplan der Woche", language: "de", build: inn },
];
