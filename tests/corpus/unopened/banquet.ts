import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { upTo } from "../strollers/words";
import { ENGLISH, fetchedFrom } from "./words";

const SHIFTS: readonly (readonly [string, string, number])[] = [
  ["Mina", "06:00 to 14:00", 8],
  ["Joel", "10:00 to 18:00", 8],
  ["Petra", "16:00 to 22:00", 6],
  ["Sam (agency)", "17:00 to 22:00", 5],
];

const PLACES = ["Tap", "Walk-in", "Cellar bar", "Dry store"] as const;

/** A mix with its yield over it. */
function mix(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number): MarkedRecipe {
  put(sheet, top, 0, made.title.toUpperCase());
  const list = listed(
    sheet,
    made,
    { row: top + 2, column: 0 },
    {
      heads: ["Unit", "Quantity", "Item", "Fetch from"],
      cells: (item, grams, index) => [
        ...["kg", shown(inUnit(grams, "kg"), "0.000"), item],
        fetchedFrom(made.lines[index]!, PLACES),
      ],
      ...{ name: 2, amount: 1 },
    },
  );
  const { names, amounts, rows, heads } = list;
  put(sheet, top + 1, 0, "Yield, kg");
  const total = sumOf(kit, sheet, { row: top + 1, column: 1 }, amounts, "0.000");
  const unitCells = columnOf(rows, 0);
  const cells = { names, amounts, unitCells, total, amountLabel: heads[1]! };
  return markRecipe(kit, made, { ...cells, unit: "kg" });
}

/** Who is on. */
function roster(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 0, 6, ["On shift Saturday", undefined, "Hours"]);
  const rows = SHIFTS.map((shift, index) => putRow(sheet, 1 + index, 6, shift));
  put(sheet, 1 + SHIFTS.length, 7, "Hours in all");
  sumOf(kit, sheet, { row: 1 + SHIFTS.length, column: 8 }, columnOf(rows, 2));
  note(kit, sheet, 7, 6, "Agency staff sign in at the loading bay.");
}

const ROWS: readonly (readonly [string, ResultPlan])[] = [
  ["First ice forms at, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Freezing point lowered by, K", { states: "depression", as: "formula", format: "0.0" }],
  [
    "Ice at −14 °C, % of the mix",
    { states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  ],
  [
    "Sugars for every 100 g water, g",
    { states: "sugar per 100 g water", as: "typed", decimals: 1 },
  ],
  ["Water, g per batch", { states: "water", as: "typed", decimals: 0 }],
];

/** The chef's sheet: a mix in each column. */
function brief(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  putRow(sheet, 0, 0, ["Saturday banquet", "Ballroom, 120 covers"]);
  put(sheet, 2, 0, "Mix");
  ROWS.forEach(([label], index) => put(sheet, 3 + index, 0, label));
  put(sheet, 8, 0, "Plated as");
  put(sheet, 9, 0, "Tell the floor");
  recipes.forEach((recipe, at) => {
    const column = 1 + at;
    put(sheet, 2, column, recipe.made.title);
    const lines = `'Pastry prep'!${span(recipe.names)},'Pastry prep'!${span(recipe.amounts)}`;
    ROWS.forEach(([, plan], index) => {
      const label: Spot = { sheet: sheet.name, row: 3 + index, column: 0 };
      resultAt(sheet, recipe, label, { row: label.row, column }, plan, () => lines);
    });
    nameTarget(sheet, recipe, { row: 8, column });
    tellIn(sheet, recipe, { row: 9, column }, ENGLISH);
  });
  note(kit, sheet, 11, 0, "Speeches may run late: keep one tray back in the blast freezer.");
  const [label, cups] = putRow(sheet, 12, 0, [
    "A portion weighs, g",
    kit.random.pick([60, 70, 80]),
  ]);
  kit.marked.inputs.push({ label: label!, value: cups!, bare: "A portion weighs" });
  recipes.forEach(({ total }, at) => {
    const portions = `='Pastry prep'!${a1(total!)}*1000/$B$13`;
    put(sheet, 13, 1 + at, shown(portions, "0"));
  });
  put(sheet, 13, 0, "Portions from the batch");
}

/** Two mixes to weigh and the chef's brief. */
function banquet(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Pastry prep");
  const own = { "cream 35 % fat": "cream 35%", sugar: "granulated sugar" };
  let top = 0;
  const recipes = kit.make(2).map((each) => {
    const recipe = mix(kit, sheet, called(upTo(each, 5000), own), top);
    top += recipe.names.length + 5;
    return recipe;
  });
  roster(kit, sheet);
  brief(kit, addSheet(kit.marked.book, "Chef's brief"), recipes);
}

/** A hotel's banquet. */
export const banquets: readonly Layout[] = [
  {
    name: "hotel banquet, yields above the lists and a chef's brief",
    language: "en",
    build: banquet,
  },
];
