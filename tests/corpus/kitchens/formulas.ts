import { a1, addSheet, put, putRow, shown, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { input } from "../page";
import { perHundred } from "../recipes";
import { columnOf, stillMet } from "./hand";

/** Syrups for the refractometer, their strength worked out both ways. */
function syrups({ random, marked }: Kit): void {
  const sheet = addSheet(marked.book, "Syrups");
  const heads = putRow(sheet, 0, 0, [
    ...["Water (g)", "Sucrose (g)", "g sucrose per 100 g water", "Sucrose, % m/m"],
  ]);
  const rows = Array.from({ length: 5 }, (_, index) => {
    const amounts = [250, 20 + 50 * index + 5 * random.whole(0, 9)];
    const [water, sugar] = putRow(sheet, 1 + index, 0, amounts) as [Spot, Spot];
    const ratio = `=100*${a1(sugar)}/${a1(water)}`;
    const perWater = put(sheet, 1 + index, 2, shown(ratio, "0.0"));
    const mass = `=100*${a1(sugar)}/(${a1(sugar)}+${a1(water)})`;
    const share = put(sheet, 1 + index, 3, shown(mass, "0.0"));
    marked.strengths.push({ sugar, water, perWater, share });
    return [perWater, share];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[2 + at]!, fixed: [] }),
  );
}

/** A mix by mass fractions; the pilot batch by the name of its mass. */
function fractions(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Formula");
  const made = stillMet(perHundred(kit.make(1)[0]!));
  putRow(sheet, 0, 0, ["Formula under study", made.title]);
  const words = { label: "Pilot batch (g)", bare: "Pilot batch", value: random.pick([750, 2500]) };
  input(kit, sheet, { row: 1, column: 0 }, words);
  marked.book.names.push({ name: "PilotBatch", refersTo: "Formula!$B$2", sheet: null });
  const heads = putRow(sheet, 3, 0, ["Component", "Mass fraction", "In the pilot batch (g)"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 4 + index, 0, [name, shown(inUnit(made.grams[index]!, "fraction"), "0.000")]),
  );
  const [names, amounts] = [columnOf(rows, 0), columnOf(rows, 1)];
  const alsoAmounts = amounts.map((spot) =>
    put(sheet, spot.row, 2, shown(`=PilotBatch*${a1(spot)}`, "0")),
  );
  marked.formulaColumns.push({ spots: alsoAmounts, heading: heads[2]!, fixed: [] });
  const row = 4 + rows.length;
  put(sheet, row, 0, "Sum");
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts, "0.000");
  sumOf(kit, sheet, { row, column: 2 }, alsoAmounts, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "fraction", amountLabel: heads[1]!, total },
  });
  const place = { row: 3, column: 4 };
  const temperatureC = random.pick([-12, -15, -18]);
  const air = { label: "Storage temperature (°C)", bare: "Storage temperature" };
  const temperature = input(kit, sheet, place, { ...air, value: temperatureC });
  const ice = { temperature, temperatureC, as: "formula", percent: "format" } as const;
  const next = say(sheet, recipe, { row: 4, column: 4 }, [
    { label: "Initial freezing point (°C)", states: "freezing point", as: "formula" },
    { label: "Freezing-point depression (K)", states: "depression", as: "typed" },
    { label: "Fraction of the water frozen in storage", states: "ice of water", ...ice },
    { label: "Ice fraction of the whole mix in storage", states: "ice of mix", ...ice },
    { label: "Sugars, mass fraction", states: "sugar share", as: "typed", percent: "format" },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Serving category" });
  const free = tell(kit, sheet, recipe, { row: row + 2, column: 0, as: "sentence" });
  note(kit, sheet, free + 1, 0, "Composition by mass; replicate weighings agree.");
  syrups(kit);
}

/** Sheets of a lecturer with a formula under study. */
export const formulas: readonly Layout[] = [
  { name: "formula by mass fractions", language: "en", build: fractions },
];
