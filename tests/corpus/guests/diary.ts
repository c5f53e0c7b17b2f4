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
import { nameTarget, note, type Kit } from "../kit";
import { columnOf, perKilogram } from "../kitchens/hand";
import { absolute, say, sumOf } from "../layouts/parts";
import { List } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside } from "../newcomers/words";
import { massOf, type MadeRecipe } from "../recipes";
import { tellAt, times } from "./words";

/** The mixes that go to market, one below the other in kilograms, what they are like beside them. */
function mixes(kit: Kit): MarkedRecipe[] {
  const sheet = addSheet(kit.marked.book, "Mixes");
  let top = 0;
  return kit.make(3).map((made) => {
    put(sheet, top, 1, made.title);
    const { recipe, totalRow } = new List(kit, sheet, times(perKilogram(made), 4), {
      ...{ top: top + 1, left: 0, columns: ["amount", "name", "remark"], unit: "kg" },
      headings: { amount: "kg", name: "Mix in this order", remark: "mind" },
      ...{ format: "0.000", total: "one batch" },
    });
    let next = say(sheet, recipe, { row: top + 1, column: 4 }, [
      { label: "Freezing pt °C", states: "freezing point", as: "formula", format: "0.0" },
      { label: "Solids dissolved g", states: "dissolved", as: "typed", decimals: 0 },
      {
        ...{ label: "Ice at −18 °C, % of water", states: "ice of water", as: "typed" },
        ...{ temperatureC: -18, decimals: 0 },
      },
    ]);
    nameTarget(sheet, recipe, { row: next++, column: 4, label: "Eats like" });
    tellAt(sheet, recipe, { row: next, column: 4 }, "On the board: contains");
    top = Math.max(totalRow, next) + 3;
    return recipe;
  });
}

/** What one batch weighs, mix by mix; gives the block to look up in. */
function weights(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): string {
  putRow(sheet, 2, 0, ["Mix", "a batch, kg"]);
  const rows = recipes.map(({ made, total }, index) =>
    putRow(sheet, 3 + index, 0, [made.title, shown(`=Mixes!${a1(total!)}`, "0.000")]),
  );
  return absolute(span(rows.flat()));
}

const DAYS: readonly (readonly [string, string])[] = [
  ["Sat 4 July", "harbour"],
  ["Sun 5 July", "harbour"],
  ["Sat 11 July", "old square"],
  ["Wed 15 July", "night market"],
  ["Sat 18 July", "old square"],
  ["Sat 25 July", "village fete"],
];

const HEADS = [
  ...["Day", "Where", "Mix", "Batches", "Mix made, kg", "Tubs filled", "Tubs sold"],
  ...["Brought home", "Takings, £", "Van freezer, °C"],
];

/** The days as a table that can be sorted. */
function asTable(sheet: CorpusSheet): void {
  const range = { top: 8, left: 0, bottom: 8 + DAYS.length, right: HEADS.length - 1 };
  sheet.tables.push({ name: "MarketDays", range, columns: HEADS, hasTotals: false });
}

/** What was taken along, day by day, and how cold the van was. */
function takenAlong({ random, marked }: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]) {
  const rows = DAYS.map(([day, where], index) => {
    const [batches, mix] = [random.whole(2, 5), random.pick(mades)];
    const filled = Math.floor((batches * massOf(mix)) / 95);
    const cells = putRow(sheet, 9 + index, 0, [day, where, mix.title, batches]);
    const tubs = putRow(sheet, 9 + index, 5, [filled, Math.floor(filled * random.between(0.8, 1))]);
    const cold = shown(-random.whole(34, 42) / 2, "0.0");
    return [...cells, ...tubs, put(sheet, 9 + index, 9, cold)];
  });
  const heading = { sheet: sheet.name, row: 8, column: 9 };
  const spots = columnOf(rows, 6);
  marked.numberColumns.push({ spots, heading, total: null, kind: "temperature" });
  return rows;
}

/** The days, what was made for them and what was sold. */
function days(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[], block: string): void {
  const price = putRow(sheet, 3, 4, ["A tub, £", shown(3.5, "0.00")])[1]!;
  const heads = putRow(sheet, 8, 0, HEADS);
  const rows = takenAlong(kit, sheet, mades);
  const at = (spot: Spot, column: number) => a1({ ...spot, column });
  const worked = (column: number, format: string, content: (spot: Spot) => string, by?: Spot) =>
    beside(kit, heads[column]!, columnOf(rows, 2), {
      ...{ sheet, format, content, fixed: by === undefined ? [] : [by] },
    });
  const weight = (spot: Spot) => `=${at(spot, 3)}*VLOOKUP(${a1(spot)},${block},2,FALSE)`;
  const made = worked(4, "0.0", weight);
  const home = worked(7, "0", (spot) => `=${at(spot, 5)}-${at(spot, 6)}`);
  const takings = worked(8, "0.00", (spot) => `=${at(spot, 6)}*${fixed(price)}`, price);
  put(sheet, 15, 0, "July");
  asTable(sheet);
  const lists = [columnOf(rows, 3), made, columnOf(rows, 4), columnOf(rows, 5), home, takings];
  const formats = ["0", "0.0", "0", "0", "0", "0.00"];
  lists.forEach((parts, index) =>
    sumOf(kit, sheet, { row: 15, column: 3 + index }, parts, formats[index]),
  );
}

/** Days at the market with the mixes behind them. */
export function diary(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "July");
  put(sheet, 0, 0, "Market diary, July");
  const recipes = mixes(kit);
  const block = weights(kit, sheet, recipes);
  days(
    kit,
    sheet,
    recipes.map(({ made }) => made),
    block,
  );
  note(kit, sheet, 17, 0, "Pitch fee is paid for the year. Rain on the 15th, hardly anybody came.");
}
