import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { inUnit } from "../list";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { upTo } from "../strollers/words";
import { formulaColumn, ofAlcohol, readings, warnAt } from "./words";

interface Recipe {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
}

const TYPED: readonly Said[] = [
  { label: "Will begin to freeze at °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Sugar to 100 g of water, g", states: "sugar per 100 g water", as: "typed" },
  {
    label: "Ice at −12 °C, % of everything in it",
    ...{ states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  },
];

/** One flavour on its own sheet, the ingredients along the top, kilograms under them. */
function flavour(kit: Kit, made: MadeRecipe, index: number): Recipe {
  const sheet = addSheet(kit.marked.book, `F${index + 1}`);
  put(sheet, 0, 0, `Flavour ${index + 1}: ${made.title}`);
  const names = putRow(sheet, 2, 1, made.names);
  put(sheet, 2, 0, "One tank");
  const amountLabel = put(sheet, 3, 0, "kg");
  const kilos = made.grams.map((grams) => shown(inUnit(grams, "kg"), "0.000"));
  const amounts = putRow(sheet, 3, 1, kilos);
  const column = 1 + names.length;
  put(sheet, 2, column, "Tank holds");
  const total = sumOf(kit, sheet, { row: 3, column }, amounts, "0.000");
  const recipe = markRecipe(kit, made, { names, amounts, unit: "kg", amountLabel, total });
  const said = [...TYPED, ...ofAlcohol(made, { label: "Alcohol in the tank, g", decimals: 0 })];
  const next = say(sheet, recipe, { row: 5, column: 0 }, said);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Counter wants" });
  warnAt(sheet, recipe, { row: next + 1, column: 0 }, "Ticket must say: contains");
  return { recipe, total };
}

const HEADS = [
  ...["Flavour", "Tanks, harbour", "Tanks, station", "Kilograms in all", "Scoops from them"],
  ...["Freezing point of the mix (°C)", "Water frozen at −12 °C (%)", "Counter at noon (°C)"],
];

/** A flavour's line of the plan. */
function planned(kit: Kit, sheet: CorpusSheet, each: Recipe, row: number, scoop: Spot): Spot[] {
  const { recipe, total } = each;
  const { random } = kit;
  const tanks = [random.whole(1, 4), random.whole(1, 3)];
  const [name, harbour, station] = putRow(sheet, row, 0, [recipe.made.title, ...tanks]);
  const both = `(${a1(harbour!)}+${a1(station!)})`;
  const made = `=${both}*${total.sheet}!${a1(total)}`;
  const kilos = put(sheet, row, 3, shown(made, "0.0"));
  const scoops = put(sheet, row, 4, shown(`=1000*${a1(kilos)}/${fixed(scoop)}`, "0"));
  const head = (column: number) => ({ sheet: sheet.name, row: 5, column });
  const point = { states: "freezing point", as: "typed", decimals: 1 } as const;
  resultAt(sheet, recipe, head(5), { row, column: 5 }, point);
  const ice = { states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 } as const;
  resultAt(sheet, recipe, head(6), { row, column: 6 }, ice);
  const noon = put(sheet, row, 7, shown(-random.whole(22, 28) / 2, "0.0"));
  return [name!, harbour!, station!, kilos, scoops, noon];
}

/** The week of two parlours, drawn from a sheet for each flavour. */
function parlours(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Week");
  put(sheet, 0, 0, "Harbour and station, what we freeze this week");
  const scoop = input(
    kit,
    sheet,
    { row: 2, column: 0 },
    { label: "A scoop (g)", bare: "A scoop", value: random.pick([55, 60, 70]) },
  );
  const heads = putRow(sheet, 5, 0, HEADS);
  const list = kit.make(4).map((made, index) => flavour(kit, upTo(made, 6000), index));
  const rows = list.map((each, index) => planned(kit, sheet, each, 6 + index, scoop));
  formulaColumn(kit, heads[3]!, rows, 3);
  formulaColumn(kit, heads[4]!, rows, 4, [scoop]);
  readings(kit, heads[7]!, rows, 5);
  put(sheet, 10, 0, "Both shops");
  [1, 2, 3, 4].forEach((column) => {
    const format = column === 3 ? "0.0" : "0";
    sumOf(kit, sheet, { row: 10, column }, columnOf(rows, column), format);
  });
  note(kit, sheet, 12, 0, "Station closes on Mondays, send its tanks on Tuesday morning.");
}

/** An owner of two parlours. */
export const parlourWeeks: readonly Layout[] = [
  { name: "two parlours, the week from flavour sheets", language: "en", build: parlours },
];
