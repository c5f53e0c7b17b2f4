import { a1, addSheet, put, putRow, type CorpusSheet } from "../book";
import { nameTarget, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { usualPrice } from "../unseen/shared";
import { about, toldBy, type Voice } from "./own";

const VOICE: Voice = {
  lead: "Enthält",
  honey: "Honig: nicht für Säuglinge unter 12 Monaten.",
  alcohol: "Alkohol: nicht für Kinder, Schwangere und Fahrer.",
  nuts: "Ganze Nüsse: Verschluckungsgefahr, nicht für Kinder unter 5 Jahren.",
  egg: "Rohes Eigelb: auf 71 °C erhitzen oder pasteurisiert verwenden.",
};

const HEADS = ["Rezept", "Zutat", "Menge (g)", "Preis (EUR je kg)", "Kosten (EUR)"];

const ANSWERS: readonly (readonly [string, ResultPlan])[] = [
  ["Gefrierpunkt (°C)", { states: "freezing point", as: "typed", decimals: 1 }],
  ["Wasser (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Gelöste Stoffe (g)", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Alkohol (g)", { states: "alcohol", as: "typed", decimals: 1 }],
  [
    "Wasser gefroren bei −13 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  ],
];

const cents = (value: number): number => Math.round(100 * value) / 100;

/** A recipe's lines in the long list. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number): MarkedRecipe {
  const rows = made.names.map((name, index) => {
    const price = name === "Wasser" ? 0 : usualPrice(kit.random, made.lines[index]!.en);
    const cells = [made.title, name, made.grams[index], price];
    const spots = putRow(sheet, row + index, 0, cells);
    const cost = `=ROUND(${a1(spots[2]!)}*${a1(spots[3]!)}/1000,2)`;
    return [...spots, put(sheet, row + index, 4, cost)];
  });
  const [names, amounts] = [columnOf(rows, 1), columnOf(rows, 2)];
  const amountLabel = { sheet: sheet.name, row: 0, column: 2 };
  return markRecipe(kit, made, { names, amounts, amountLabel, unit: "g" });
}

/** What is said of every recipe, a row each, under the list. */
function answers(sheet: CorpusSheet, recipes: readonly MarkedRecipe[], top: number): void {
  const heads = putRow(sheet, top, 0, [
    ...["Rezept", ...ANSWERS.map(([label]) => label), "Serviert als", "Kennzeichnung"],
  ]);
  recipes.forEach((recipe, index) => {
    const row = top + 1 + index;
    put(sheet, row, 0, recipe.made.title);
    ANSWERS.forEach(([, plan], at) =>
      resultAt(sheet, recipe, heads[1 + at]!, { row, column: 1 + at }, plan),
    );
    nameTarget(sheet, recipe, { row, column: 1 + ANSWERS.length });
    const words = toldBy(recipe.made, VOICE);
    if (words !== "") recipe.flags.push(put(sheet, row, 2 + ANSWERS.length, words));
  });
}

/** The galley of an excursion steamer: the till's export, every line of every recipe. */
function dampfer(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Export");
  putRow(sheet, 0, 0, HEADS);
  let row = 1;
  const mades = kit.make(4).map((made) => called(about(made, 5000), { Zucker: "Feinzucker" }));
  const recipes = mades.map((made) => {
    const recipe = lines(kit, sheet, made, row);
    row += made.names.length;
    return recipe;
  });
  answers(sheet, recipes, row + 1);
  const sum = cents(mades.reduce((all, { grams }) => all + grams.reduce((a, b) => a + b, 0), 0));
  putRow(sheet, row + 3 + recipes.length, 0, ["Alle Rezepte zusammen (g)", sum]);
}

export const dampferKuechen: readonly Layout[] = [
  {
    ...{ name: "Ausflugsdampfer, Bordküche als Datei", language: "de" },
    ...{ isCsv: true, build: dampfer },
  },
];
