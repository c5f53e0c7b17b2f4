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
import { formulas } from "../layouts/marking";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import { resultAt, type ResultPlan } from "../results";
import { declare, priceOf, table } from "./words";
import type { MadeRecipe } from "../recipes";

const LINES = "Shopping lines";
const HEADS = ["Evening", "Ice", "Ingredient", "Grams", "$ a kilo", "Cost $", "Per student (g)"];
const NIGHTS = ["3 Feb", "10 Feb", "17 Feb", "24 Feb"];

interface Evening {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** One evening's lines, the evening and the ice said again in each. */
function evening(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  [row, at]: readonly [row: number, at: number],
  students: Spot,
): Evening {
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row, column: 0 },
    {
      heads: HEADS,
      cells: (item, grams, index) => [at + 1, made.title, item, grams, priceOf(made, index)],
      ...{ name: 2, amount: 3 },
    },
  );
  const beside = (column: number, format: string, of: (amount: Spot) => string, cells: Spot[]) =>
    formulas(
      kit,
      heads[column]!,
      amounts.map((spot) => shown(`=${of(spot)}`, format)),
      { sheet, at: [row + 1, column], fixed: cells },
    );
  const price = (spot: Spot) => `${a1(spot)}/1000*${a1({ ...spot, column: 4 })}`;
  const costs = beside(5, "0.00", price, []);
  const shares = beside(6, "0.0", (spot) => `${a1(spot)}/${fixed(students)}`, [students]);
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts);
  put(sheet, end, 2, "bowl");
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, costs, "0.00");
  sumOf(kit, sheet, { row: end, column: 6 }, shares, "0.0");
  const cells = { names, amounts, alsoAmounts: shares, amountLabel: heads[3]!, total };
  return { recipe: markRecipe(kit, made, { ...cells, unit: "g" }), cost };
}

const SAID: readonly (readonly [string, ResultPlan])[] = [
  ["Starts freezing (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Degrees below water (K)", { states: "depression", as: "typed", decimals: 2 }],
  ["All the water in it (g)", { states: "water", as: "formula", format: "0" }],
  [
    "Ice in it at −12 °C (% of the mix)",
    { states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  ],
];

/** The plan of the course: an evening a line, its numbers read from the other sheet. */
function programme(kit: Kit, sheet: CorpusSheet, evenings: readonly Evening[]): void {
  put(sheet, 0, 0, "Ices at home, four Tuesday evenings from 19:00 to 21:30, room 6");
  const heads = putRow(sheet, 2, 0, [
    ...["Date", "We make", "Bowl (g)", "Bowl ($)", ...SAID.map(([head]) => head)],
    ...["Aim", "Tell everybody before tasting"],
  ]);
  const rows = evenings.map(({ recipe, cost }, index) => {
    const row = 3 + index;
    const there = (spot: Spot) => `'${LINES}'!${a1(spot)}`;
    const lines = `'${LINES}'!${span(recipe.names)},'${LINES}'!${span(recipe.amounts)}`;
    const bowl = [shown(`=${there(recipe.total!)}`, "0"), shown(`=${there(cost)}`, "0.00")];
    const cells = putRow(sheet, row, 0, [NIGHTS[index], recipe.made.title, ...bowl]);
    SAID.forEach(([, plan], at) =>
      resultAt(sheet, recipe, heads[4 + at]!, { row, column: 4 + at }, plan, () => lines),
    );
    nameTarget(sheet, recipe, { row, column: 8 });
    declare(sheet, recipe, { row, column: 9 }, "Contains");
    return cells[3]!;
  });
  put(sheet, 8, 1, "Ingredients for the course");
  sumOf(kit, sheet, { row: 8, column: 3 }, rows, "0.00");
  table(sheet, { row: 10, column: 0 }, [
    ["Fee", 95, "$ a person, all evenings"],
    ["Deposit", 20, "$, by 20 January"],
    ["Room", 30, "$ an evening"],
  ]);
  note(kit, sheet, 14, 0, "Second course in October if at least eight sign up.");
}

/** A long list for the shopping and a plan for the door. */
function evenings(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, LINES);
  const enrolled = ["Students enrolled", kit.random.whole(8, 14)];
  const students = putRow(sheet, 0, 2, enrolled)[1]!;
  const names = { sugar: "granulated sugar", "lemon juice": "lemon juice, fresh" };
  let row = 2;
  const list = kit.make(4).map((given, index) => {
    const made = called(given, names);
    const each = evening(kit, sheet, made, [row, index], students);
    row += made.names.length + 3;
    return each;
  });
  programme(kit, addSheet(kit.marked.book, "Programme"), list);
}

/** An evening course for grown-ups. */
export const eveningCourses: readonly Layout[] = [
  {
    name: "evening course, one long shopping list and a programme",
    language: "en",
    build: evenings,
  },
];
