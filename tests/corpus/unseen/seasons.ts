import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, nameTarget, tell, type Kit, type Layout } from "../kit";
import { answer } from "../layouts/marking";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe, States } from "../marks";
import type { MadeRecipe } from "../recipes";
import { called, columnOf } from "../kitchens/hand";
import type { ResultPlan } from "../results";
import { hasSpirit, lineRows } from "./shared";

const HOW = ["into the pan", "whisk in", undefined, undefined, "last of all"];

const FACTS: readonly (readonly [string, ResultPlan])[] = [
  ["Freezing point (°C)", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Water in a batch (g)", { states: "water", as: "formula", format: "0" }],
  ["Sugars per 100 g of water (g)", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  [
    "Water frozen in the cart at −16 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -16, decimals: 0 },
  ],
];

/** What is said of a flavour, each fact in the same row on every sheet. */
function facts(sheet: CorpusSheet, recipe: MarkedRecipe): void {
  FACTS.forEach(([label, plan], index) =>
    answer(sheet, recipe, [label, 2 + index, 0], [2 + index, 1], plan),
  );
  if (!hasSpirit(recipe.made)) return;
  const alcohol = { states: "alcohol", as: "typed", decimals: 1 } as const;
  answer(sheet, recipe, ["Pure alcohol in a batch (g)", 7, 0], [7, 1], alcohol);
}

/** A flavour on its sheet: the facts first, the list under them. */
function flavour(kit: Kit, made: MadeRecipe): MarkedRecipe {
  const sheet = addSheet(kit.marked.book, made.title);
  put(sheet, 0, 0, made.title);
  const top = 9;
  const heads = putRow(sheet, top, 0, ["Ingredient", "Quantity", "Unit", "How"]);
  const rows = lineRows(sheet, { row: top + 1, column: 0 }, made, (index) => [
    ...[made.names[index], made.grams[index], "g", HOW[index]],
  ]);
  const [names, amounts, unitCells] = [0, 1, 2].map((at) => columnOf(rows, at)) as [
    ...[Spot[], Spot[], Spot[]],
  ];
  const total = sumOf(kit, sheet, { row: 1, column: 1 }, amounts);
  putRow(sheet, 1, 0, ["One batch (g)"]);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unitCells, unit: "g", amountLabel: heads[1]!, total },
  });
  facts(sheet, recipe);
  nameTarget(sheet, recipe, { row: 6, column: 0, label: "Feel" });
  tell(kit, sheet, recipe, { row: top + rows.length + 2, column: 0, as: "sentence" });
  return recipe;
}

/** The row of one flavour in the overview, its numbers fetched from its sheet. */
function fetched(sheet: CorpusSheet, row: number, recipe: MarkedRecipe): (Spot | undefined)[] {
  const { made, total, results } = recipe;
  put(sheet, row, 0, made.title);
  const saying = (what: States) => results.find(({ states }) => states === what)?.spot;
  return [total, saying("freezing point"), saying("water")].map((spot, at) => {
    if (spot === undefined || spot === null) return undefined;
    const link = `='${made.title}'!${a1(spot)}`;
    return put(sheet, row, 1 + at, shown(link, at === 1 ? "0.00" : "0"));
  });
}

/** The season at a glance. */
function glance(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 0, 0, "Ice cart, this season");
  const heads = putRow(sheet, 2, 0, [
    ...["Flavour", "Batch (g)", "Freezing point (°C)", "Water in a batch (g)"],
  ]);
  const rows = recipes.map((recipe, index) => fetched(sheet, 3 + index, recipe));
  const end = 3 + rows.length;
  put(sheet, end, 0, "All batches");
  [0, 1, 2].forEach((at) => {
    const spots = rows.flatMap((cells) => cells[at] ?? []);
    kit.marked.formulaColumns.push({ spots, heading: heads[1 + at]!, fixed: [] });
    if (at === 0) sumOf(kit, sheet, { row: end, column: 1 }, spots, "0");
  });
  note(kit, sheet, end + 2, 0, "Two coolers, four flavours at most.");
}

/** Four flavours of an ice cart, a sheet each, the season before them. */
function cart(kit: Kit): void {
  const season = addSheet(kit.marked.book, "Season");
  const words = { sugar: "table sugar", salt: "sea salt", "lemon juice": "juice of lemon" };
  const recipes = kit.make(4).map((made) => flavour(kit, called(made, words)));
  glance(kit, season, recipes);
}

/** Books with a sheet for each recipe. */
export const seasons: readonly Layout[] = [
  { name: "ice cart, a sheet a flavour and the season", language: "en", build: cart },
];
