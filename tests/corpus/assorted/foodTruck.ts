import { a1, addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { down } from "../lodgers/words";
import { beside } from "../newcomers/words";
import { itemsOf, upTo } from "../strollers/words";
import { aside, readings } from "./words";

const VOICE: Voice = {
  lead: "Board: has",
  honey: "Honey, no under-ones (12 months).",
  alcohol: "Boozy: alcohol, over 18s only, not if pregnant, not if driving.",
  nuts: "Whole nuts, under-fives can choke.",
  egg: "Raw egg yolk: cook to 71 °C or buy pasteurised.",
};

const OWN = {
  sugar: "white sugar",
  "whole milk": "full-fat milk",
  strawberries: "strawberries, fresh",
  "skim milk powder": "skimmed milk powder",
  honey: "runny honey",
};

const FACTS: readonly Fact[] = [
  ["Water in the bucket, g", { states: "water", as: "typed", decimals: 0 }],
  ["Begins to freeze, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  [
    "Water turned to ice in the hatch freezer at −14 °C, %",
    { states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  ],
  ["Sugars, g to 100 g water", { states: "sugar per 100 g water", as: "typed", decimals: 0 }],
];

const TOP = 4;

/** What all tubs need of each item, and what the lock-up holds after. */
function needs(kit: Kit, sheet: CorpusSheet, items: readonly Spot[], last: number): void {
  const heads = putRow(sheet, TOP - 1, last + 2, [
    "For the lot (kg)",
    "In lock-up (kg)",
    "Left (kg)",
  ]);
  const needed = beside(kit, heads[0]!, items, {
    ...{ sheet, format: "0.000" },
    content: (spot) => `=SUM(${a1({ ...spot, column: 2 })}:${a1({ ...spot, column: last })})`,
  });
  needed.forEach(({ row }) => put(sheet, row, last + 3, kit.random.whole(14, 40)));
  beside(kit, heads[2]!, needed, {
    ...{ sheet, format: "0.000" },
    content: (spot) => `=${a1({ ...spot, column: last + 3 })}-${a1(spot)}`,
  });
}

/** Four tubs in columns, kilograms, the unit once beside each item. */
function truck(kit: Kit): void {
  const mades = kit.make(4).map((made) => called(upTo(made, 5000), OWN));
  const sheet = addSheet(kit.marked.book, "Tubs");
  put(sheet, 0, 0, "Saturday market, four tubs for the truck");
  note(kit, sheet, 1, 0, "Churn the palest first so the barrel only gets one rinse.");
  const items = down(sheet, [TOP, 0], itemsOf(mades));
  const amountLabel = putRow(sheet, TOP - 1, 0, ["Into the bucket", "unit"])[0]!;
  items.forEach(({ row }) => put(sheet, row, 1, "kg"));
  const end = TOP + items.length;
  putRow(sheet, end, 0, ["Bucket weighs", "kg"]);
  const under = end + 2 + FACTS.length;
  put(sheet, under, 0, "For");
  put(sheet, under + 1, 0, "Chalk on the board");
  mades.forEach((made, index) => {
    const column = 2 + index;
    put(sheet, TOP - 1, column, made.title);
    const plan = { items, left: 2, unit: "kg", format: "0.000", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    factsDown(sheet, recipe, FACTS, { row: end + 2, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: under, column });
    tellIn(sheet, recipe, { row: under + 1, column }, VOICE);
  });
  needs(kit, sheet, items, 1 + mades.length);
  hatch(kit, sheet, under + 3);
}

/** What the thermometer in the hatch said last Saturday, and who serves next. */
function hatch(kit: Kit, sheet: CorpusSheet, row: number): void {
  const hours = ["10:00", "11:30", "13:00", "14:30", "16:00"];
  const heads = aside(
    sheet,
    { row, column: 0 },
    ["Last Saturday", "Hatch freezer °C", "Outside °C"],
    hours.map((hour) => [hour]),
  );
  readings(kit, sheet, heads[1]!, { count: 5, from: -16, to: -12 });
  readings(kit, sheet, heads[2]!, { count: 5, from: 17, to: 29, by: 2 });
  aside(
    sheet,
    { row, column: 5 },
    ["On the truck", "till", "scoops"],
    [
      ...[
        ["morning", "Bea", "Rory"],
        ["afternoon", "Rory", "Bea"],
      ],
    ],
  );
}

/** Somebody who sells from a van. */
export const foodTrucks: readonly Layout[] = [
  { name: "market truck, four tubs in kilograms and the lock-up", language: "en", build: truck },
];
