import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";

const VOICE: Voice = {
  lead: "ALLERGENS:",
  honey: "WARNING: honey, unsuitable for infants under 12 months.",
  alcohol: "WARNING: alcohol, not for children, during pregnancy or before driving.",
  nuts: "WARNING: whole nuts, choking hazard for children under 5 years.",
  egg: "PROCESS: raw egg yolk, pasteurise mix at 71 °C or buy pasteurised yolk.",
};

const FACTS = (temperature: Spot, temperatureC: number): readonly Said[] => [
  { label: "Freezing point", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Water per 100 g mix", inCell: "g", states: "water", as: "formula", format: "0.0" },
  { label: "Dissolved per 100 g mix", inCell: "g", states: "dissolved", as: "typed", decimals: 1 },
  {
    ...{ label: "Ice in mix at draw temperature", inCell: "%", states: "ice of mix" },
    ...{ as: "formula", temperature, temperatureC, format: "0" },
  },
  {
    ...{ label: "Water frozen in store, −20 °C", inCell: "%", states: "ice of water" },
    ...{ as: "typed", temperatureC: -20, decimals: 0 },
  },
];

const word = { sugar: "sugar (granulated)", water: "filtered water", salt: "salt (fine)" };

/** A product: its head, the formula with the kilograms for a run, what follows. */
function product(kit: Kit, made: MadeRecipe, index: number): string {
  const { random } = kit;
  const code = `P${14 + index}`;
  const sheet = addSheet(kit.marked.book, code);
  putRow(sheet, 0, 0, ["Product", made.title, undefined, "Version", random.whole(2, 9)]);
  const run = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{ label: "Run size (kg)", bare: "Run size", value: random.pick([30, 40, 60]) },
    },
  );
  const draw = { label: "Draw temperature (°C)", bare: "Draw temperature" };
  const temperatureC = random.pick([-5, -6]);
  const drawn = input(kit, sheet, { row: 2, column: 0 }, { ...draw, value: temperatureC });
  const list = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["Line", "Raw material", "% w/w", "Run (kg)", "Lot"],
      cells: (item, grams, at) => [at + 1, item, shown(grams, "0.0")],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, names, amounts, end } = list;
  const kilos = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.000", fixed: [run] },
    content: (spot) => `=${a1(spot)}/100*${fixed(run)}`,
  });
  put(sheet, end + 1, 1, "Total");
  const total = sumOf(kit, sheet, { row: end + 1, column: 2 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end + 1, column: 3 }, kilos, "0.000");
  const cells = { names, amounts, alsoAmounts: kilos, total, amountLabel: heads[2]! } as const;
  const recipe = markRecipe(kit, made, { ...cells, unit: "%" });
  const next = say(sheet, recipe, { row: end + 3, column: 1 }, FACTS(drawn, temperatureC));
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Eats as" });
  const last = tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE);
  note(kit, sheet, last + 1, 1, random.pick(["Age overnight.", "Strain before the freezer."]));
  return code;
}

/** What was run, when, and how cold it came out. */
function runs(kit: Kit, sheet: CorpusSheet, codes: readonly string[]): void {
  const { random } = kit;
  put(sheet, 0, 0, "Runs since Easter");
  const heads = putRow(sheet, 2, 0, [
    ...["Week", "Product", "Run (kg)", "Draw read (°C)", "Store next morning (°C)", "By"],
  ]);
  const rows = Array.from({ length: 7 }, (_, index) =>
    putRow(sheet, 3 + index, 0, [
      ...[15 + index, random.pick(codes), random.pick([30, 40, 60])],
      shown(-random.whole(45, 65) / 10, "0.0"),
      shown(-random.whole(38, 44) / 2, "0.0"),
      random.pick(["RT", "MO", "JH"]),
    ]),
  );
  temperatures(kit, heads[3]!, columnOf(rows, 3));
  temperatures(kit, heads[4]!, columnOf(rows, 4));
  put(sheet, 10, 0, "So far");
  sumOf(kit, sheet, { row: 10, column: 2 }, columnOf(rows, 2));
}

/** A sheet for each product and one for the runs. */
function runSheets(kit: Kit): void {
  const mades = kit.make(3).map((made) => called(largestFirst(made), word));
  const codes = mades.map((made, index) => product(kit, made, index));
  runs(kit, addSheet(kit.marked.book, "Runs"), codes);
}

/** A small producer. */
export const runSheetFiles: readonly Layout[] = [
  { name: "small producer, product sheets and runs", language: "en", build: runSheets },
];
