import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { stillMet } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { benchMix, ownBand } from "./preps";
import { tellBelow } from "./words";

const HEADS = ["#", "Raw material", "Weight for the run (g)", "Dosage (% w/w)"];

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

/** One formula in per cent, weighed out for a pilot run. */
function formula(kit: Kit, sheet: CorpusSheet, given: MadeRecipe): MarkedRecipe {
  const { random } = kit;
  const made = stillMet(perHundred(given));
  put(sheet, 0, 0, `${sheet.name}: ${made.title}`);
  const words = { label: "Pilot run (g)", bare: "Pilot run", value: 500 * random.whole(3, 10) };
  const run = input(kit, sheet, { row: 1, column: 1 }, words);
  const value = -random.pick([18, 20, 22]);
  const cold = { label: "Cold store (°C)", bare: "Cold store", value };
  const store = input(kit, sheet, { row: 2, column: 1 }, cold);
  const list = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      ...{ heads: HEADS, name: 1, amount: 3 },
      cells: (name, share, index) => [index + 1, name, undefined, shown(share, "0.0")],
    },
  );
  const { heads, names, amounts, end } = list;
  const weights = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [run] },
    content: (spot) => `=${fixed(run)}*${a1(spot)}/100`,
  });
  put(sheet, end, 1, "Sum");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, weights, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: weights, unit: "%", amountLabel: heads[3]!, total },
  });
  const next = say(sheet, recipe, { row: 4, column: 5 }, said(store, value));
  nameTarget(sheet, recipe, { row: next + 1, column: 5, label: "House style" });
  const under = ownBand(kit, sheet, { row: next + 3, column: 5 }, recipe, given);
  const row = Math.max(end, under) + 1;
  const last = tellBelow(sheet, recipe, { row, column: 1 }, "Allergens on the spec:");
  note(kit, sheet, last + 1, 1, "Confirm the water content of the fruit with each delivery.");
  return recipe;
}

/** What came out of the pilot runs beside what was forecast. */
function runs(kit: Kit, recipes: readonly MarkedRecipe[]): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Pilot runs");
  const heads = putRow(sheet, 0, 0, [
    ...["Run", "Formula", "Forecast freezing point (°C)", "Measured (°C)", "Off by (K)"],
    ...["Exit of the freezer (°C)", "Bite, 1 soft to 5 hard"],
  ]);
  const told = recipes.flatMap(({ made, results }) =>
    results.flatMap(({ states, spot }) =>
      states === "freezing point" ? [{ spot, real: trueValue(made, states, null)! }] : [],
    ),
  );
  const rows = [...told, ...told, ...told].map(({ spot, real }, index) => {
    const forecast = shown(`='${spot.sheet}'!${a1(spot)}`, "0.0");
    const cells = putRow(sheet, 1 + index, 0, [`R${index + 1}`, spot.sheet, forecast]);
    const value = Number((real + random.between(-0.2, 0.2)).toFixed(1));
    const measured = put(sheet, 1 + index, 3, shown(value, "0.0"));
    const off = put(sheet, 1 + index, 4, shown(`=${a1(measured)}-${a1(cells[2]!)}`, "0.0"));
    const leaving = put(sheet, 1 + index, 5, shown(-random.whole(50, 66) / 10, "0.0"));
    put(sheet, 1 + index, 6, random.whole(2, 4));
    return [measured, off, leaving];
  });
  if (rows.length === 0) return;
  const at = (index: number): Spot[] => rows.map((cells) => cells[index]!);
  marked.formulaColumns.push({ spots: at(1), heading: heads[4]!, fixed: [] });
  const none = { total: null, kind: "temperature" } as const;
  marked.numberColumns.push({ spots: at(2), heading: heads[5]!, ...none });
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
