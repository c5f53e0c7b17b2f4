import { addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Fact } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { again } from "../layouts/marking";
import { sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import {
  degrees,
  inEnglish,
  inRow,
  readings,
  sayAlong,
  smallTable,
  type InGrid,
} from "../sidings/words";

const VOICE = inEnglish("Has");

const OWN = { sugar: "granulated sugar", "lemon juice": "fresh lemon juice", water: "tap water" };

const FACTS: readonly Fact[] = [
  ["starts freezing (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  [
    "% of its water frozen at −13 °C",
    { states: "ice of water", as: "typed", temperatureC: -13, decimals: 0 },
  ],
];

const DAYS = ["Tue 4/6", "Wed 5/6", "Thu 6/6", "Fri 7/6", "Sat 8/6", "Sun 9/6", "Sun 9/6"];

/** Seven batches of three flavours. */
function batches(kit: Kit): readonly MadeRecipe[] {
  const [one, two, three] = kit.make(3) as [MadeRecipe, MadeRecipe, MadeRecipe];
  const more = [one, three, two, one].map((made) => again(kit, made));
  return [one, two, three, ...more].map((made) => called(made, OWN));
}

/** The line of one batch. */
function batch(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  at: number,
  plan: { readonly items: readonly Spot[]; readonly heads: readonly Spot[] },
): InGrid {
  const { items, heads } = plan;
  const row = 4 + at;
  putRow(sheet, row, 0, [DAYS[at], made.title]);
  const amountLabel = { sheet: sheet.name, row: 2, column: 2 };
  const sumColumn = heads[0]!.column;
  const grid = inRow(kit, sheet, made, { items, row, sumColumn, unit: "g", amountLabel });
  sayAlong(sheet, grid, FACTS, { row, column: sumColumn + 1 }, heads.slice(1));
  nameTarget(sheet, grid.recipe, { row, column: sumColumn + 3 });
  put(sheet, row, sumColumn + 4, degrees(kit, -15, -11));
  tellIn(sheet, grid.recipe, { row, column: sumColumn + 5 }, VOICE);
  return grid;
}

/** When the counter is open. */
function hours(sheet: CorpusSheet, row: number): void {
  smallTable(
    sheet,
    { row, column: 0 },
    ["Open", "from", "until"],
    [
      ["Tue to Fri", "12.00", "18.30"],
      ["Sat, Sun", "11.00", "20.00"],
      ["Monday", "closed"],
    ],
  );
}

/** A line for every batch, the ingredients across. */
function build(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "June");
  put(sheet, 0, 0, "Batches made for the counter, June");
  const mades = batches(kit);
  const names = itemsOf(mades);
  putRow(sheet, 2, 2, ["what went in, grams"]);
  putRow(sheet, 3, 0, ["Day", "Flavour"]);
  const items = putRow(sheet, 3, 2, names);
  const heads = putRow(sheet, 3, 2 + names.length, [
    ...["all in (g)", ...FACTS.map(([words]) => words), "goes out as"],
    ...["case at 1 pm (°C)", "say to customers"],
  ]);
  const plan = { items, heads };
  const grids = mades.map((made, at) => batch(kit, sheet, made, at, plan));
  const end = 4 + mades.length;
  put(sheet, end, 1, "week's use");
  names.forEach((_, at) => {
    const parts = columnOf(
      grids.map(({ all }) => all),
      at,
    );
    sumOf(kit, sheet, { row: end, column: 2 + at }, parts);
  });
  const totals = grids.map(({ recipe }) => recipe.total!);
  sumOf(kit, sheet, { row: end, column: heads[0]!.column }, totals);
  const column = heads[4]!.column;
  readings(
    kit,
    heads[4]!,
    totals.map((spot) => ({ ...spot, column })),
  );
  hours(sheet, end + 3);
  note(kit, sheet, end + 2, 4, "Case was defrosted on Monday, door seal is on order.");
}

/** A shop that writes down every batch. */
export const counterLogs: readonly Layout[] = [
  { name: "ice cream counter, a line for each batch of the week", language: "en", build },
];
