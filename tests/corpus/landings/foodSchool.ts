import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { solutionRows } from "../solutionRows";
import { itemsOf, temperatures } from "../strollers/words";

const VOICE: Voice = {
  lead: "contains",
  honey: "honey, not under 12 months of age",
  alcohol: "alcohol, not for children, in pregnancy or before driving",
  nuts: "whole nuts, a choking hazard under 5 years",
  egg: "raw yolk, cook to 71 °C or use pasteurised",
};

const answers = (
  temperature: Spot,
  temperatureC: number,
): readonly (readonly [string, ResultPlan])[] => [
  ["Freezing point calculated (°C)", { states: "freezing point", as: "formula" }],
  ["Water (g)", { states: "water", as: "typed", decimals: 0 }],
  ["Dissolved (g)", { states: "dissolved", as: "formula", format: "0" }],
  [
    "Share of the water frozen, class freezer (%)",
    { states: "ice of water", as: "formula", format: "0", temperature, temperatureC },
  ],
  ["Sugars in the mix (%)", { states: "sugar share", as: "typed", decimals: 1 }],
];

const PAIRS = ["Pair 1", "Pair 2", "Pair 3", "Pair 4", "Pair 5"];

interface Grid {
  readonly items: readonly Spot[];
  readonly amountLabel: Spot;
  readonly said: readonly (readonly [string, ResultPlan])[];
  readonly heads: readonly Spot[];
}

/** What a pair made, along its row; gives the reading at the end of it. */
function pairRow(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, grid: Grid): Spot {
  const { items, amountLabel, said, heads } = grid;
  const recipe = alongRow(kit, sheet, made, row, { items, unit: "g", format: "0", amountLabel });
  said.forEach(([, plan], at) => {
    const place = { row, column: heads[at]!.column };
    resultAt(sheet, recipe, heads[at]!, place, plan, () => recipe.lines);
  });
  const last = heads[said.length]!.column;
  nameTarget(sheet, recipe, { row, column: last });
  tellIn(sheet, recipe, { row, column: last + 1 }, VOICE);
  return put(sheet, row, last + 2, shown(-kit.random.whole(34, 38) / 2, "0.0"));
}

/** Ingredients across, a row for each pair. */
function pairs(kit: Kit, sheet: CorpusSheet): void {
  const words = { sugar: "granulated sugar", water: "tap water" };
  const mades = kit.make(5).map((made) => called(perKilogram(made), words));
  put(sheet, 0, 0, "Frozen desserts, practical 3: each pair makes one kilogram");
  const temperatureC = -18;
  const label = { label: "Class freezer set to (°C)", bare: "Class freezer set to" };
  const temperature = input(kit, sheet, { row: 1, column: 0 }, { ...label, value: temperatureC });
  const amountLabel = put(sheet, 3, 2, "all in grams");
  putRow(sheet, 4, 0, ["Who", "What"]);
  const items = putRow(sheet, 4, 2, itemsOf(mades));
  const after = 2 + items.length;
  put(sheet, 4, after, "All");
  const said = answers(temperature, temperatureC);
  const heads = putRow(sheet, 4, after + 1, [
    ...said.map(([words]) => words),
    ...["Meant to be", "Say before tasting", "In the tub next day (°C)"],
  ]);
  const read = mades.map((made, index) => {
    putRow(sheet, 5 + index, 0, [PAIRS[index], made.title]);
    return pairRow(kit, sheet, made, 5 + index, { items, amountLabel, said, heads });
  });
  temperatures(kit, heads.at(-1)!, read);
  note(kit, sheet, 11, 0, "Weigh twice, sign the sheet, then switch the machine on.");
}

/** What the shop has to send for the practical. */
function order(sheet: CorpusSheet): void {
  putRow(sheet, 12, 0, ["Order for the room", "how many"]);
  const rows = [
    ["1 litre tubs with lids", 10],
    ["spoons, wooden", 40],
    ["probe wipes, packs", 2],
  ];
  rows.forEach((each, index) => putRow(sheet, 13 + index, 0, each));
}

/** The practical and the sums that go with it. */
function foodSchool(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Practical 3");
  pairs(kit, sheet);
  order(sheet);
  const sums = addSheet(kit.marked.book, "Theory 3");
  put(sums, 0, 0, "Before the practical: how far does each solution lower the freezing point?");
  solutionRows(kit, sums, {
    ...{ top: 2, left: 0, constant: "Kf, water (K·kg/mol)" },
    headings: [
      ...(["Solute", "Solute (g)", "Water (g)", "M (g/mol)", "i"] as const),
      ...(["b (mol/kg)", "Lowered by (K)", "Freezes at (°C)"] as const),
    ],
    proviso: (gap) => `Dilute and taken as ideal; none of these is out by more than ${gap} K.`,
  });
}

/** A food school. */
export const foodSchools: readonly Layout[] = [
  { name: "food school, pairs down and ingredients across", language: "en", build: foodSchool },
];
