import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { trueValue, type MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { onSheet } from "../guests/words";
import { tellBelow } from "./words";

/** One sample with its weights and their shares. */
function sample(kit: Kit, sheet: CorpusSheet, given: MadeRecipe): MarkedRecipe {
  const made = called(given, { Zucker: "Feinzucker", Wasser: "Leitungswasser" });
  putRow(sheet, 0, 0, [sheet.name, made.title]);
  const plan = {
    heads: ["Nr.", "Rezeptbestandteil", "Einwaage [g]", "Massenanteil [%]"],
    cells: (name: string, grams: number, index: number) => [index + 1, name, grams],
    ...{ name: 1, amount: 2 },
  };
  const { heads, names, amounts, end } = listed(sheet, made, { row: 2, column: 0 }, plan);
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  put(sheet, end, 1, "Gesamteinwaage");
  const shares = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [total] },
    content: (spot) => `=100*${a1(spot)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end, column: 3 }, shares, "0.00");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: shares, unit: "g", amountLabel: heads[2]!, total },
  });
  const next = tellBelow(sheet, recipe, { row: end + 2, column: 0 }, "Kennzeichnung:");
  note(kit, sheet, next + 1, 0, "Waage vor der Einwaage justiert.");
  return recipe;
}

const HEADS = [
  ...["Muster", "Bezeichnung", "Gefrierpunkt [°C]", "Ausgefrorener Wasseranteil [%]"],
  ...["Eisanteil der Probe [%]", "Zucker [g/100 g Wasser]", "Wasser in der Einwaage [g]"],
  ...["Soll", "Kryoskop [°C]"],
];

const plansAt = (temperature: Spot, temperatureC: number): readonly ResultPlan[] => [
  { states: "freezing point", as: "formula" },
  { states: "ice of water", as: "formula", temperature, temperatureC, format: "0.0" },
  { states: "ice of mix", as: "formula", temperature, temperatureC, format: "0.0" },
  { states: "sugar per 100 g water", as: "formula", format: "0.0" },
  { states: "water", as: "formula", format: "0" },
];

/** One sample along its row of the table; gives what the cryoscope read, where there is anything. */
function summary(
  kit: Kit,
  recipe: MarkedRecipe,
  row: number,
  heads: readonly Spot[],
  plans: readonly ResultPlan[],
): Spot[] {
  const sheet = kit.marked.book.sheets[0]!;
  const home = recipe.names[0]!.sheet;
  putRow(sheet, row, 0, [home, recipe.made.title]);
  plans.forEach((plan, at) => {
    const column = 2 + at;
    resultAt(sheet, recipe, heads[column]!, { row, column }, plan, onSheet(home, span));
  });
  nameTarget(sheet, recipe, { row, column: 7 });
  const real = trueValue(recipe.made, "freezing point", null);
  if (real === null) return [];
  const read = Number((real + kit.random.between(-0.15, 0.15)).toFixed(2));
  return [put(sheet, row, 8, shown(read, "0.00"))];
}

/** The table over all samples, each read from its own sheet. */
function overview(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 0, 0, "Speiseeis, Muster der Woche: Zusammenfassung");
  const value = -kit.random.pick([15, 18, 20]);
  const words = { label: "Prüftemperatur [°C]", bare: "Prüftemperatur", value };
  const temperature = input(kit, sheet, { row: 1, column: 0 }, words);
  const heads = putRow(sheet, 3, 0, HEADS);
  const plans = plansAt(temperature, value);
  const spots = recipes.flatMap((recipe, index) => summary(kit, recipe, 4 + index, heads, plans));
  const none = { total: null, kind: "temperature" } as const;
  if (spots.length > 0) kit.marked.numberColumns.push({ spots, heading: heads[8]!, ...none });
  note(kit, sheet, 5 + recipes.length, 0, "Kryoskop: Mittel aus drei Messungen.");
}

/** A lab's samples of the week, their summary before them. */
function lab(kit: Kit): void {
  const { book } = kit.marked;
  const first = addSheet(book, "Zusammenfassung");
  const recipes = kit
    .make(4)
    .map((made, index) => sample(kit, addSheet(book, `Muster ${index + 1}`), made));
  overview(kit, first, recipes);
}

/** A food technologist who tests what dairies send. */
export const labore: readonly Layout[] = [
  { name: "Prüflabor, Muster der Woche und Zusammenfassung", language: "de", build: lab },
];
