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
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { kilos } from "../layouts/marking";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { temperatures } from "../strollers/words";

const VOICE: Voice = {
  lead: "Allergens on line:",
  honey: "Honey used: pack to state unsuitable under 12 months.",
  alcohol: "Alcohol used: pack to state not for children, pregnancy or drivers.",
  nuts: "Whole nuts used: pack to state choking hazard, under 5 years.",
  egg: "Raw egg yolk: pasteurise at 71 °C or draw pasteurised yolk.",
};

const HEADS = [
  ...["Line", "Lot no.", "Raw material", "10 kg formula (kg)", "This run (kg)", "Weighed by"],
];

/** The formula for ten kilograms and what the run needs of it. */
function mixSheet(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): MarkedRecipe {
  const { random } = kit;
  const run = input(
    kit,
    sheet,
    { row: 3, column: 2 },
    { label: "Run size (kg)", bare: "Run size", value: random.pick([40, 60, 80, 120]) },
  );
  const lot = () => `${random.whole(21, 39)}-${random.whole(100, 999)}`;
  const list = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: HEADS,
      cells: (item, grams, index) => [
        ...[10 * (index + 1), lot(), item, shown(inUnit(grams, "kg"), "0.000")],
        ...[undefined, random.pick(["RT", "JB", "MO"])],
      ],
      ...{ name: 2, amount: 3 },
    },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end + 1, column: 3 }, amounts, "0.000");
  put(sheet, end + 1, 2, "Charge");
  const alsoAmounts = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [run, total] },
    content: (spot) => `=${a1(spot)}*${fixed(run)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end + 1, column: 4 }, alsoAmounts, "0.00");
  const cells = { names, amounts, alsoAmounts, total, unit: "kg", amountLabel: heads[3]! } as const;
  const recipe = markRecipe(kit, made, cells);
  tellIn(sheet, recipe, { row: end + 3, column: 0 }, VOICE);
  note(kit, sheet, end + 4, 0, "Bags are opened on the grey table, never over the kettle.");
  return recipe;
}

const SPECS: readonly (readonly [string, ResultPlan])[] = [
  ["Onset of freezing, °C", { states: "freezing point", as: "formula", format: "0.00" }],
  ["Depression, K", { states: "depression", as: "typed" }],
  [
    "Water turned to ice at the draw, −6 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -6, decimals: 0 },
  ],
  [
    "Same after hardening, −22 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -22, decimals: 0 },
  ],
  ["Water per 10 kg formula, g", { states: "water", as: "typed", decimals: 0 }],
  ["Sugars, g per 100 g water", { states: "sugar per 100 g water", as: "formula", format: "0.0" }],
];

/** What the mix is by calculation, on the sheet where the run is written down. */
function specs(sheet: CorpusSheet, recipe: MarkedRecipe, home: string): void {
  const lines = `'${home}'!${span(recipe.names)},'${home}'!${span(recipe.amounts)}`;
  putRow(sheet, 2, 7, ["By calculation", "Value"]);
  let row = 3;
  for (const [words, plan] of SPECS) {
    const label = { sheet: sheet.name, row, column: 7 };
    if (!resultAt(sheet, recipe, label, { row, column: 8 }, plan, () => lines)) continue;
    put(sheet, row, 7, words);
    row += 1;
  }
  nameTarget(sheet, recipe, { row: row + 1, column: 7, label: "Release as" });
}

const TIMES = ["06:10", "06:40", "07:10", "07:40", "08:10", "08:40"];

const READ = [
  "Clock",
  "Holding tube (°C)",
  "Ageing tank (°C)",
  "Barrel draw (°C)",
  "Air added (%)",
];

/** The half-hourly readings of the line. */
function readings(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  const heads = putRow(sheet, 2, 0, [...READ, "Initials"]);
  const rows = TIMES.map((time, index) => {
    const [hold, aged] = [random.whole(832, 852), random.whole(24, 42)];
    const drawn = -random.whole(56, 64);
    const values = [hold, aged, drawn].map((tenths) => shown(tenths / 10, "0.0"));
    const last = [random.whole(34, 42), random.pick(["RT", "JB"])];
    return putRow(sheet, 3 + index, 0, [time, ...values, ...last]);
  });
  [1, 2, 3].forEach((at) => temperatures(kit, heads[at]!, columnOf(rows, at)));
}

const CARTONS = ["120 ml cups", "500 ml tubs", "2.5 l trays"];

/** What came off the line. */
function packed(kit: Kit, sheet: CorpusSheet): void {
  putRow(sheet, 12, 0, ["Packed as", "Cartons", "Seconds"]);
  const rows = CARTONS.map((word, index) =>
    putRow(sheet, 13 + index, 0, [word, kit.random.whole(8, 60), kit.random.whole(0, 3)]),
  );
  put(sheet, 16, 0, "Off the line");
  const total = (at: number): Spot =>
    sumOf(kit, sheet, { row: 16, column: at }, columnOf(rows, at));
  total(1);
  total(2);
}

/** A run in a small plant: what was weighed, and how the line ran. */
function batchRecord(kit: Kit): void {
  const own = { "skim milk powder": "SMP", water: "drinking water", salt: "table salt" };
  const made = called(kilos(kit.make(1)[0]!, 10), own);
  const mix = addSheet(kit.marked.book, "Mix");
  put(mix, 0, 0, "Batch record, page 1 of 2");
  putRow(mix, 1, 0, ["Product", undefined, made.title]);
  putRow(mix, 2, 0, ["Run no.", undefined, `R${kit.random.whole(210, 480)}`]);
  const recipe = mixSheet(kit, mix, made);
  const line = addSheet(kit.marked.book, "Line");
  put(line, 0, 0, "Batch record, page 2 of 2: readings every half hour");
  readings(kit, line);
  specs(line, recipe, "Mix");
  packed(kit, line);
  note(kit, line, 18, 0, "Rinse water runs clear before the next flavour is let in.");
}

/** A small plant. */
export const batchRecords: readonly Layout[] = [
  { name: "small plant, batch record in two pages", language: "en", build: batchRecord },
];
