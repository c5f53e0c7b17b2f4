import { a1, addSheet, fixed, put, putRow, shown, span, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { numbersUnder, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Karte:",
  honey: "Honig, Kinder unter 12 Monaten dürfen davon nichts bekommen.",
  alcohol: "Alkohol, nicht an Kinder, Schwangere oder Autofahrer.",
  nuts: "Ganze Nüsse, Erstickungsgefahr für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb, beim Kochen 71 °C erreichen oder pasteurisiert einkaufen.",
};

/** Shares as fractions shown in per cent, beside them kilograms for the batch. */
function sorte(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): MarkedRecipe {
  const words = { label: "Ansatz (kg)", bare: "Ansatz", format: "0.0" };
  put(sheet, row, 0, made.title);
  const batch = input(
    kit,
    sheet,
    { row, column: 2 },
    {
      ...{ ...words, value: kit.random.pick([4, 6, 7.5, 8]) },
    },
  );
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["Rohstoff", "Anteil", "Einwaage (kg)"],
      cells: (item, grams) => [item, shown(inUnit(grams, "fraction"), "0.0%")],
    },
  );
  const weighed = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [batch] },
    content: (spot) => `=${a1(spot)}*${fixed(batch)}`,
  });
  put(sheet, end, 0, "gesamt");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0%");
  sumOf(kit, sheet, { row: end, column: 2 }, weighed, "0.000");
  numbersUnder(kit, heads[1]!, amounts, "fraction", total);
  const cells = { names, amounts, unit: "fraction", amountLabel: heads[1]!, total } as const;
  const recipe = markRecipe(kit, made, { ...cells, alsoAmounts: weighed });
  tellIn(sheet, recipe, { row: end + 1, column: 0 }, VOICE);
  return recipe;
}

const PLANS: readonly (readonly [label: string, plan: ResultPlan])[] = [
  ["Gefrierpunkt, °C", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Erniedrigung, K", { states: "depression", as: "typed" }],
  ["Eis in der Masse bei Vitrinentemperatur", { states: "ice of mix", as: "formula" }],
  ["Zuckeranteil der Masse", { states: "sugar share", as: "typed" }],
];

/** What is known of all flavours, a line for each. */
function werte(kit: Kit, recipes: readonly MarkedRecipe[], from: string): void {
  const sheet = addSheet(kit.marked.book, "Werte");
  const vitrine = kit.random.pick([-11, -12, -13]);
  const words = { label: "Vitrine (°C)", bare: "Vitrine", value: vitrine };
  const temperature = input(kit, sheet, { row: 0, column: 0 }, words);
  const heads = putRow(sheet, 2, 0, ["Sorte", ...PLANS.map(([label]) => label), "Ausgabe als"]);
  recipes.forEach((recipe, index) => {
    const row = 3 + index;
    put(sheet, row, 0, recipe.made.title);
    const call = `${from}!${span(recipe.names)},${from}!${span(recipe.amounts)}`;
    PLANS.forEach(([, plan], at) => {
      const isIce = plan.states.startsWith("ice");
      const whole: ResultPlan = {
        ...{ ...plan, percent: "format" },
        ...(isIce && { temperature, temperatureC: vitrine }),
      };
      resultAt(sheet, recipe, heads[1 + at]!, { row, column: 1 + at }, whole, () => call);
    });
    nameTarget(sheet, recipe, { row, column: 5 });
  });
}

/** Who serves when, and what the cold room showed. */
function dienst(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Dienst");
  put(sheet, 0, 0, "Dienstplan Eis, Kalenderwoche 27");
  const days = ["Mo", "Di", "Mi", "Do", "Fr", "Sa", "So"];
  const people = ["Lena", "Lena", "Ruhetag", "Milan", "Milan", "Lena, Milan", "Lena, Aylin"];
  const cold = readings(kit, 7, [-23, -18]);
  const rows = days.map((day, index) => [day, people[index], cold[index]]);
  const heads = ["Tag", "Theke", "Zelle 8 Uhr (°C)"];
  const { heads: headings, columns } = table(sheet, { row: 2, column: 0 }, heads, rows);
  numbersUnder(kit, headings[2]!, columns[2]!, "temperature");
  note(kit, sheet, 11, 0, "Am Ruhetag wird abgetaut.");
}

/** Three flavours under each other in per cent, the answers on a sheet of their own. */
function eiscafe(kit: Kit): void {
  const words = { Zucker: "Kristallzucker", "Naturjoghurt 3,5 %": "Joghurt 3,5 %" };
  const sheet = addSheet(kit.marked.book, "Rezepturen");
  put(sheet, 0, 0, "Rezepturen, Stand Juni");
  let row = 2;
  const recipes = kit.make(3).map((made) => {
    const recipe = sorte(kit, sheet, called(largestFirst(made), words), row);
    row = recipe.total!.row + 4;
    return recipe;
  });
  werte(kit, recipes, sheet.name);
  dienst(kit);
}

/** An ice café with its mixes in shares. */
export const eiscafes: readonly Layout[] = [
  { name: "Eiscafé, Rezepturen in Anteilen und ein Blatt Werte", language: "de", build: eiscafe },
];
