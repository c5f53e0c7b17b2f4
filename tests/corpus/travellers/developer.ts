import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { benchMix, ownBand } from "./preps";
import { tellBelow } from "./words";

const HEADS = ["#", "Raw material", "Weight for the run (g)", "Dosage (% w/w)"];

const RUN_HEADS = [
  ...["Run", "Formula", "Forecast freezing point (°C)", "Measured (°C)", "Off by (K)"],
  ...["Exit of the freezer (°C)", "Bite, 1 soft to 5 hard"],
];

const said = (store: Spot, temperatureC: number): readonly Said[] => [
  { label: "Initial freezing point", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Freezing point depression", inCell: "K", states: "depression", as: "formula" },
  {
    ...{ label: "Frozen part of the water, in store", inCell: "%", states: "ice of water" },
    ...{ as: "formula", temperature: store, temperatureC, format: "0.0" },
  },
  {
    ...{ label: "Ice in the product, in store", inCell: "%", states: "ice of mix" },
    ...{ as: "formula", temperature: store, temperatureC, format: "0.0" },
  },
  {
    ...{ label: "Sugars", inCell: "g per 100 g water" },
    ...{ states: "sugar per 100 g water", as: "formula", format: "0.0" },
  },
  {
    ...{ label: "Dissolved solids in 100 g", inCell: "g" },
    ...{ states: "dissolved", as: "formula", format: "0.0" },
  },
  { label: "Water in 100 g", inCell: "g", states: "water", as: "formula", format: "0.0" },
];

/** The lines in per cent, weighed out for a pilot run. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const value = 500 * kit.random.whole(3, 10);
  const words = { label: "Pilot run (g)", bare: "Pilot run", value };
  const run = input(kit, sheet, { row: 1, column: 1 }, words);
  const plan = {
    ...{ heads: HEADS, name: 1, amount: 3 },
    cells: (name: string, share: number, index: number) => [
      ...[index + 1, name, undefined, shown(share, "0.0")],
    ],
  };
  const { heads, names, amounts, end } = listed(sheet, made, { row: 4, column: 0 }, plan);
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [run] },
    content: (spot) => `=${fixed(run)}*${a1(spot)}/100`,
  });
  put(sheet, end, 1, "Sum");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0");
  const amountLabel = heads[3]!;
  return markRecipe(kit, made, { names, amounts, alsoAmounts, unit: "%", amountLabel, total });
}

/** One formula with what it does in the cold store. */
function formula(kit: Kit, sheet: CorpusSheet, given: MadeRecipe): MarkedRecipe {
  const made = stillMet(perHundred(given));
  put(sheet, 0, 0, `${sheet.name}: ${made.title}`);
  const value = -kit.random.pick([18, 20, 22]);
  const cold = { label: "Cold store (°C)", bare: "Cold store", value };
  const store = input(kit, sheet, { row: 2, column: 1 }, cold);
  const recipe = lines(kit, sheet, made);
  const next = say(sheet, recipe, { row: 4, column: 5 }, said(store, value));
  nameTarget(sheet, recipe, { row: next + 1, column: 5, label: "House style" });
  const under = ownBand(kit, sheet, { row: next + 3, column: 5 }, recipe, given);
  const row = Math.max(recipe.total!.row, under) + 1;
  const last = tellBelow(sheet, recipe, { row, column: 1 }, "Allergens on the spec:");
  note(kit, sheet, last + 1, 1, "Confirm the water content of the fruit with each delivery.");
  return recipe;
}

interface Told {
  readonly spot: Spot;
  readonly real: number;
}

const forecasts = (recipes: readonly MarkedRecipe[]): Told[] =>
  recipes.flatMap(({ made, results }) =>
    results.flatMap(({ states, spot }) =>
      states === "freezing point" ? [{ spot, real: trueValue(made, states, null)! }] : [],
    ),
  );

/** One pilot run; gives its reading's distance and the temperature at the freezer's exit. */
function run({ random }: Kit, sheet: CorpusSheet, row: number, { spot, real }: Told): Spot[] {
  const forecast = shown(`='${spot.sheet}'!${a1(spot)}`, "0.0");
  const value = shown(Number((real + random.between(-0.2, 0.2)).toFixed(1)), "0.0");
  const cells = putRow(sheet, row, 0, [`R${row}`, spot.sheet, forecast, value]);
  const off = put(sheet, row, 4, shown(`=${a1(cells[3]!)}-${a1(cells[2]!)}`, "0.0"));
  const leaving = put(sheet, row, 5, shown(-random.whole(50, 66) / 10, "0.0"));
  put(sheet, row, 6, random.whole(2, 4));
  return [off, leaving];
}

/** What came out of the pilot runs beside what was forecast. */
function runs(kit: Kit, recipes: readonly MarkedRecipe[]): void {
  const { formulaColumns, numberColumns, book } = kit.marked;
  const sheet = addSheet(book, "Pilot runs");
  const heads = putRow(sheet, 0, 0, RUN_HEADS);
  const told = forecasts(recipes);
  const rows = [...told, ...told, ...told].map((each, index) => run(kit, sheet, 1 + index, each));
  if (rows.length === 0) return;
  formulaColumns.push({ spots: columnOf(rows, 0), heading: heads[4]!, fixed: [] });
  const exit = { spots: columnOf(rows, 1), heading: heads[5]!, total: null };
  numberColumns.push({ ...exit, kind: "temperature" });
}

/** Two formulas of a developer and their pilot runs. */
function development(kit: Kit): void {
  const sheets = ["F-07", "F-09"].map((name) => addSheet(kit.marked.book, name));
  const mades = kit.make(2);
  const recipes = mades.map((made, index) => formula(kit, sheets[index]!, made));
  runs(kit, recipes);
  benchMix(kit);
}

/** Sheets of somebody who develops for a factory. */
export const developers: readonly Layout[] = [
  { name: "developer, dosages and their pilot runs", language: "en", build: development },
];
