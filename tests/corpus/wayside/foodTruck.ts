import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { temperatures } from "../strollers/words";
import { lineup, PLAIN } from "./words";

/** Each flavour's list, one right of the other, as parts of one. */
function flavour(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, column: number): MarkedRecipe {
  put(sheet, 1, column, made.title);
  const { recipe, end } = lineup(kit, sheet, made, {
    ...{ row: 2, column, heads: ["parts of 1", "stuff"], name: 1, amount: 0 },
    cells: (name, amount) => [amount, name],
    ...{ unit: "fraction", format: "0.000", total: { label: "<- must say 1" } },
  });
  note(kit, sheet, end + 1, column, "stick blend, rest overnight");
  return recipe;
}

const BOARD: readonly (readonly [string, ResultPlan])[] = [
  ["first ice at (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["drop vs water (K)", { states: "depression", as: "typed", decimals: 2 }],
  [
    "share of water frozen, −16 °C",
    { states: "ice of water", as: "typed", temperatureC: -16, percent: "format" },
  ],
  [
    "share of mix that is ice, −16 °C",
    { states: "ice of mix", as: "typed", temperatureC: -16, percent: "format" },
  ],
  ["sugars, share of mix", { states: "sugar share", as: "typed", percent: "format" }],
];

/** The labels down the page, a flavour in each column. */
function board(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  const top = 3;
  const column = 3;
  put(sheet, 0, 1, "truck board: everything there is to know per flavour");
  const labels = BOARD.map(([words], index) => put(sheet, top + 1 + index, column, words));
  const below = top + 1 + BOARD.length;
  putRow(sheet, below, column, ["sell it as"]);
  put(sheet, below + 1, column, "sign on hatch");
  recipes.forEach((recipe, index) => {
    const at = column + 1 + index;
    put(sheet, top, at, recipe.made.title);
    const lines = () => `lists!${span(recipe.names)},lists!${span(recipe.amounts)}`;
    BOARD.forEach(([, plan], row) => {
      resultAt(sheet, recipe, labels[row]!, { row: labels[row]!.row, column: at }, plan, lines);
    });
    nameTarget(sheet, recipe, { row: below, column: at });
    tellIn(sheet, recipe, { row: below + 1, column: at }, PLAIN);
  });
}

const STOPS = ["school gate", "harbour", "Sat market", "car boot"];

/** Stops, takings and how warm the freezer box got. */
function stops(kit: Kit, sheet: CorpusSheet): void {
  const heads = putRow(sheet, 0, 0, [
    "where",
    "open",
    "box on leaving °C",
    "box back home °C",
    "£",
  ]);
  const rows: Spot[][] = STOPS.map((stop, index) => {
    const [cold, warm] = [kit.random.whole(-42, -38) / 2, kit.random.whole(-35, -29) / 2];
    const taken = shown(kit.random.whole(8000, 32000) / 100, "0.00");
    const hours = ["3–5", "12–8", "9–2", "7–1"][index];
    return putRow(sheet, 1 + index, 0, [
      ...[stop, hours, shown(cold, "0.0"), shown(warm, "0.0"), taken],
    ]);
  });
  for (const column of [2, 3]) temperatures(kit, heads[column]!, columnOf(rows, column));
  const parts = columnOf(rows, 4);
  const spot = put(sheet, 6, 4, shown(`=SUM(${span(parts)})`, "0.00"));
  kit.marked.sums.push({ spot, parts });
  note(kit, sheet, 6, 0, "takings, cash and card together");
}

/** A truck: the stops first, the lists last, the board between them. */
function foodTruck(kit: Kit): void {
  const { book } = kit.marked;
  stops(kit, addSheet(book, "stops"));
  const sheet = addSheet(book, "board");
  const lists = addSheet(book, "lists");
  const own = { sugar: "white sugar", "egg yolk": "egg yolks", water: "tap water" };
  const mades = kit.make(3).map((made) => called(largestFirst(made), own));
  const recipes = mades.map((made, index) => flavour(kit, lists, made, 3 * index));
  board(kit, sheet, recipes);
}

/** Somebody who sells from a truck. */
export const foodTrucks: readonly Layout[] = [
  {
    name: "food truck, parts of one, the board on another sheet",
    language: "en",
    build: foodTruck,
  },
];
