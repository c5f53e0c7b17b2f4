import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { costOfKilo, isBoozy, pair, sayAll, suited } from "./words";

const HEADS = [
  "Weigh out (g)",
  "What goes in",
  "Pack holds (g)",
  "Pack costs (£)",
  "Cost here (£)",
];
const PACKS = [500, 1000, 1000, 2500];

const SAID: readonly Said[] = [
  { label: "Starts to freeze at (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water in the tub (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "Ice in the tub at −12 °C (% of the whole mix)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  },
  { label: "Sugars (% of the mix)", states: "sugar share", as: "typed" },
];

/** What a scoop comes to, right of the list. */
function scoops(kit: Kit, sheet: CorpusSheet, tub: Spot, money: Spot): void {
  const words = { label: "Scoop (g)", bare: "Scoop", value: kit.random.pick([55, 60, 70]) };
  const scoop = input(kit, sheet, { row: 2, column: 6 }, words);
  const count = pair(sheet, 3, 6, "Scoops in the tub", shown(`=${a1(tub)}/${a1(scoop)}`, "0.0"));
  const each = pair(
    sheet,
    4,
    6,
    "A scoop costs us (£)",
    shown(`=${a1(money)}/${a1(count)}`, "0.00"),
  );
  const residents = pair(sheet, 5, 6, "Residents having some", kit.random.whole(8, 22));
  const all = `=${a1(each)}*${a1(residents)}`;
  pair(sheet, 6, 6, "All of them together (£)", shown(all, "0.00"));
}

/** A recipe's lines with what their packs cost; the tub's cost is taken to the scoops. */
function lines(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const plan = {
    ...{ heads: HEADS, name: 1, amount: 0 },
    cells: (name: string, grams: number, index: number) => {
      const pack = name === "water" ? 1000 : kit.random.pick(PACKS);
      const price = (costOfKilo(kit, made.lines[index]!.en) * pack) / 1000;
      return [grams, name, pack, shown(Math.max(0.01, Number(price.toFixed(2))), "0.00")];
    },
  };
  const { heads, rows, names, amounts, end } = listed(sheet, made, { row: 2, column: 0 }, plan);
  const money = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(rows[index]![3]!)}/${a1(rows[index]![2]!)}*${a1(spot)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "Whole tub");
  scoops(kit, sheet, total, sumOf(kit, sheet, { row: end, column: 4 }, money, "0.00"));
  return markRecipe(kit, made, { names, amounts, unit: "g", amountLabel: heads[0]!, total });
}

/** One afternoon of the trolley. */
function afternoon(kit: Kit, sheet: CorpusSheet, given: MadeRecipe): void {
  const made = called(given, { sugar: "granulated sugar", "whole milk": "full-fat milk" });
  put(sheet, 0, 0, `${made.title} for the tea trolley`);
  const recipe = lines(kit, sheet, made);
  sayAll(
    kit,
    sheet,
    recipe,
    { row: 9, column: 6 },
    {
      ...{ said: SAID, target: "How it should eat", lead: "Tell the nurse in charge:" },
      tellAt: { row: recipe.total!.row + 2, column: 0 },
      note: "Let it stand ten minutes before it goes round, some like it soft.",
    },
  );
}

const WEEK = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** What the freezer showed, morning and evening. */
function freezerBook({ marked, random }: Kit): void {
  const sheet = addSheet(marked.book, "Freezer book");
  const heads = putRow(sheet, 0, 0, ["Day", "Morning (°C)", "Evening (°C)", "Initials"]);
  const rows = WEEK.map((day, index) => {
    const read = () => shown(-random.whole(34, 42) / 2, "0.0");
    return putRow(sheet, 1 + index, 0, [day, read(), read(), random.pick(["JT", "MB", "AK"])]);
  });
  for (const column of [1, 2]) {
    const spots = rows.map((cells) => cells[column]!);
    marked.numberColumns.push({ spots, heading: heads[column]!, total: null, kind: "temperature" });
    const warmest = `=MAX(${a1(spots[0]!)}:${a1(spots.at(-1)!)})`;
    put(sheet, 9, column, shown(warmest, "0.0"));
  }
  put(sheet, 9, 0, "Warmest (°C)");
}

/** Two afternoons, costed, and the freezer's book. */
function careHome(kit: Kit): void {
  const [first, second] = suited(kit, 2, (made) => !isBoozy(made));
  afternoon(kit, addSheet(kit.marked.book, "Wednesday"), first!);
  afternoon(kit, addSheet(kit.marked.book, "Sunday"), second!);
  freezerBook(kit);
}

/** The kitchen of a care home. */
export const careHomes: readonly Layout[] = [
  { name: "care home, tea trolley costed by the pack", language: "en", build: careHome },
];
