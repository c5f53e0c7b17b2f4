import { a1, addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { down } from "../lodgers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, largestFirst } from "../kitchens/hand";
import { sumOf } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { itemsOf, temperatures } from "../strollers/words";
import { halfDegrees, table } from "./words";

const VOICE: Voice = {
  lead: "Allergens:",
  honey: "honey - not under 12 months",
  alcohol: "alcohol - adults only, no pregnancy, no driving",
  nuts: "whole nuts - choking hazard under 5",
  egg: "raw egg yolk - heat to 71 °C or buy pasteurised",
};

const FACTS: readonly Fact[] = [
  ["Freezing pt, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Water, g in 100 g", { states: "water", as: "formula", format: "0.0" }],
  ["Dissolved, g in 100 g", { states: "dissolved", as: "typed", decimals: 1 }],
  [
    "Frozen part of the water at −18 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
  [
    "Ice in the pop at −18 °C, %",
    { states: "ice of mix", as: "formula", temperatureC: -18, format: "0" },
  ],
];

/** The freezer, as a cell that the formulas read. */
function cabinet(kit: Kit, sheet: CorpusSheet): Spot {
  const [label, value] = putRow(sheet, 1, 0, ["Chest freezer, °C", -18]);
  kit.marked.inputs.push({ label: label!, value: value!, bare: "Chest freezer" });
  return value!;
}

const MOULDS = [
  ["round top", 26, 75],
  ["slab", 40, 58],
  ["mini", 24, 38],
] as const;

/** Moulds and sticks, right of the recipes. */
function moulds(kit: Kit, sheet: CorpusSheet, column: number): void {
  const list = table(
    sheet,
    { row: 3, column },
    ["Mould", "Places", "Fill each (g)", "One tray (g)"],
    MOULDS,
  );
  beside(kit, list.heads[3]!, columnOf(list.rows, 1), {
    ...{ sheet, format: "0" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: column + 2 })}`,
  });
  const at = { row: list.end + 1, column };
  const boxes = [114, 93].map((length) => [`${length} mm`, 500 * kit.random.whole(1, 9)]);
  const sticks = table(sheet, at, ["Sticks", "Left in the box"], boxes);
  put(sheet, sticks.end, column, "Sticks in all");
  const parts = columnOf(sticks.rows, 1);
  sumOf(kit, sheet, { row: sticks.end, column: column + 1 }, parts);
  const rows = ["Mon", "Wed", "Fri"].map((day) => [day, halfDegrees(kit, -21, -16)]);
  const log = table(sheet, { row: sticks.end + 2, column }, ["Checked", "Freezer read, °C"], rows);
  temperatures(kit, log.heads[1]!, columnOf(log.rows, 1));
}

/** Flavours in columns, all of them in per cent. */
function pops(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Pops");
  put(sheet, 0, 0, "Ice pops, house formulas");
  const temperature = cabinet(kit, sheet);
  const own = { sugar: "white sugar", "lemon juice": "fresh lemon juice" };
  const mades = kit.make(4).map((made) => called(largestFirst(made), own));
  const amountLabel = put(sheet, 3, 0, "% by weight");
  mades.forEach(({ title }, index) => put(sheet, 3, 1 + index, title));
  const items = down(sheet, [4, 0], itemsOf(mades));
  const end = 4 + items.length;
  put(sheet, end, 0, "adds up to");
  const facts = FACTS.map(([words, plan]): Fact =>
    plan.as === "formula" && plan.states.startsWith("ice")
      ? [words, { ...plan, temperature }]
      : [words, plan],
  );
  putRow(sheet, end + 1 + facts.length, 0, ["Type"]);
  putRow(sheet, end + 2 + facts.length, 0, ["On the sleeve"]);
  mades.forEach((made, index) => {
    const plan = { items, left: 1, unit: "%", format: "0.0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    const column = 1 + index;
    factsDown(sheet, recipe, facts, { row: end + 1, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 1 + facts.length, column });
    tellIn(sheet, recipe, { row: end + 2 + facts.length, column }, VOICE);
  });
  moulds(kit, sheet, 6);
  note(kit, sheet, end + 4 + facts.length, 0, "Dip the moulds in warm water, count to eight.");
}

/** Somebody who makes pops at home and sells them. */
export const popColumns: readonly Layout[] = [
  { name: "ice pops, four formulas in per cent beside the moulds", language: "en", build: pops },
];
