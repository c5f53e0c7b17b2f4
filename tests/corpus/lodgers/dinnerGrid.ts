import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { about, forChildren } from "../passing/words";
import { labelWords, type MadeRecipe } from "../recipes";
import { cautionsOf, given, type Cautions } from "./words";

const OWN: Cautions = {
  honey: "honey: not for infants under 12 months",
  alcohol: "alcohol: adults only, not in pregnancy",
  nuts: "whole nuts: choking hazard under 5",
  egg: "raw egg yolk: heat to 71 °C or use pasteurised",
};

/** The columns of the grid, and what in a recipe's allergens they stand for. */
const GRID: readonly (readonly [heading: string, of: RegExp])[] = [
  ["Milk", /milk/],
  ["Egg", /egg/],
  ["Tree nuts", /tree nuts/],
  ["Wheat (gluten)", /wheat/],
  ["Soya", /soy/],
  ["Sulphites", /sulphites/],
];

/** The grid for the serving hatch: a row a pudding, what it contains spelt out where it does. */
function grid(kit: Kit, recipes: readonly MarkedRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Allergens");
  put(sheet, 0, 0, "Allergen grid, frozen puddings (check again when a brand changes)");
  putRow(sheet, 2, 0, ["Pudding", ...GRID.map(([heading]) => heading), "Servers to know"]);
  recipes.forEach(({ made, flags }, index) => {
    const row = 3 + index;
    put(sheet, row, 0, made.title);
    const allergens = made.flagged ? labelWords(made, "allergen").join(", ") : "";
    GRID.forEach(([heading, of], at) => {
      const nut = heading === "Tree nuts" ? /tree nuts \((.*?)\)/.exec(allergens)?.[1] : undefined;
      const words = nut === undefined ? "YES" : `YES: ${nut}`;
      if (of.test(allergens)) flags.push(put(sheet, row, 1 + at, words));
    });
    const cautions = cautionsOf(made, OWN).join("; ");
    if (cautions !== "") flags.push(put(sheet, row, 1 + GRID.length, cautions));
  });
  note(kit, sheet, 4 + recipes.length, 0, "Copy on the wall by the hatch and in the office.");
}

/** One batch in kilograms, and what to order for all of them. */
function order(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, batches: Spot): MarkedRecipe {
  const list = listed(
    sheet,
    made,
    { row: batches.row + 1, column: 0 },
    {
      heads: ["One batch (kg)", "Item", "To order (kg)"],
      ...{ name: 1, amount: 0 },
      cells: (name, grams) => [shown(inUnit(grams, "kg"), "0.000"), name],
    },
  );
  const { heads, names, amounts, end } = list;
  const wanted = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [batches] },
    content: (spot) => `=${a1(spot)}*${fixed(batches)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts, "0.000");
  put(sheet, end, 1, "batch weight");
  sumOf(kit, sheet, { row: end, column: 2 }, wanted, "0.0");
  return markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: wanted, unit: "kg", amountLabel: heads[0]!, total },
  });
}

/** One pudding in kilograms, the order for the fortnight beside it; gives the recipe and the next row. */
function pudding(kit: Kit, sheet: CorpusSheet, top: number, nth: number) {
  return (made: MadeRecipe, freezer: readonly [Spot, number]) => {
    putRow(sheet, top, 0, [`Pudding ${nth}`, made.title]);
    const batches = putRow(sheet, top + 1, 0, [
      "Batches this fortnight",
      kit.random.whole(2, 6),
    ])[1]!;
    const recipe = order(kit, sheet, made, batches);
    facts(sheet, recipe, { row: top + 2, column: 4 }, freezer);
    return { recipe, next: recipe.total!.row + 3 };
  };
}

/** What is said of a pudding, right of it. */
function facts(
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  place: { row: number; column: number },
  [temperature, temperatureC]: readonly [Spot, number],
): void {
  const next = say(sheet, recipe, place, [
    { label: "First ice at (°C)", states: "freezing point", as: "formula", format: "0.0" },
    {
      label: "Ice in the pudding in our freezer (% of the pudding)",
      ...{ states: "ice of mix", as: "formula", temperature, temperatureC, format: "0" },
    },
    { label: "Sugars in the pudding (%)", states: "sugar share", as: "typed" },
  ]);
  nameTarget(sheet, recipe, { row: next, column: place.column, label: "How it should be" });
}

/** Three puddings of the fortnight in kilograms, and the grid that the law asks for. */
function fortnight(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Fortnight");
  put(sheet, 0, 0, "Frozen puddings, fortnight from the 9th");
  const temperatureC = -kit.random.whole(16, 20);
  const freezer = given(kit, sheet, [1, 0], ["Chest freezer", "°C", temperatureC]);
  let top = 3;
  const recipes = forChildren(kit, 3).map((each, index) => {
    const made = called(about(each, 6000), { sugar: "caster sugar" });
    const { recipe, next } = pudding(kit, sheet, top, index + 1)(made, [freezer, temperatureC]);
    top = next;
    return recipe;
  });
  note(kit, sheet, top, 0, "Deliveries Monday and Thursday before 8.");
  grid(kit, recipes);
}

/** The puddings of a fortnight and their allergens in a grid. */
export const allergenGrids: readonly Layout[] = [
  { name: "school dinners, fortnight's order and allergen grid", language: "en", build: fortnight },
];
