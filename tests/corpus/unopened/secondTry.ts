import { a1, addSheet, put, putRow, shown } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, perKilogram } from "../kitchens/hand";
import { again } from "../layouts/marking";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { ENGLISH, thermometer } from "./words";

const VOICE: Voice = {
  ...ENGLISH,
  lead: "mention",
  nuts: "Whole nuts in it, a choking risk: no kids under 5.",
};

const FACTS: readonly Fact[] = [
  ["starts to freeze (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["lower than plain water by (K)", { states: "depression", as: "formula", format: "0.0" }],
  [
    "% of the water frozen, my freezer at −19 °C",
    { states: "ice of water", as: "typed", temperatureC: -19, decimals: 0 },
  ],
  ["sugars, g to 100 g water", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
];

const OWN = { water: "tap water", sugar: "caster sugar", mango: "mango pulp" };

/** A flavour with two tries beside each other. */
function tries(kit: Kit, made: MadeRecipe, name: string): void {
  const sheet = addSheet(kit.marked.book, name);
  const second = again(kit, sound(kit, made));
  const list = [made, { ...second, flagged: made.flagged }].map((each) =>
    called(perKilogram(each), OWN),
  );
  put(sheet, 0, 0, made.title);
  const label = putRow(sheet, 2, 0, ["grams of", "Try 1", "Try 2", "more or less"])[0]!;
  const items = itemsOf(list).map((item, index) => put(sheet, 3 + index, 0, item));
  const end = 3 + items.length;
  put(sheet, end, 0, "weighs in all");
  put(sheet, end + 7, 0, "hoping for");
  put(sheet, end + 8, 0, "before sharing");
  list.forEach((each, at) => {
    const plan = { items, left: 1, unit: "g", format: "0", amountLabel: label } as const;
    const recipe = downColumn(kit, sheet, each, at, plan);
    factsDown(sheet, recipe, FACTS, { row: end + 2, column: 1 + at, labels: 0, items });
    nameTarget(sheet, recipe, { row: end + 7, column: 1 + at });
    tellIn(sheet, recipe, { row: end + 8, column: 1 + at }, VOICE);
  });
  const spots = items.map(({ row }) => {
    const at = (column: number) => a1({ sheet: name, row, column });
    return put(sheet, row, 3, shown(`=${at(2)}-${at(1)}`, "+0;-0;0"));
  });
  kit.marked.formulaColumns.push({ spots, heading: { sheet: name, row: 2, column: 3 }, fixed: [] });
  putRow(sheet, end + 10, 0, ["Verdict", ...["icy at the edge", "better"]]);
  note(kit, sheet, end + 11, 0, "Churned 25 minutes both times, bowl from the big freezer.");
}

/** Three flavours, two tries each, and what the freezer does overnight. */
function secondTry(kit: Kit): void {
  kit.make(3).forEach((made, index) => tries(kit, made, ["One", "Two", "Three"][index]!));
  const sheet = addSheet(kit.marked.book, "My freezer");
  thermometer(
    kit,
    sheet,
    { row: 0, column: 0 },
    {
      heads: ["Clock", "Drawer (°C)", "Door shelf (°C)"],
      lines: ["22:00", "00:00", "02:00", "04:00", "06:00"],
      from: [
        [-21, -18],
        [-18, -14],
      ],
    },
  );
  note(kit, sheet, 7, 0, "It defrosts itself around three in the morning.");
}

/** A home cook who tries everything twice. */
export const secondTries: readonly Layout[] = [
  { name: "home cook, two tries of each flavour", language: "en", build: secondTry },
];
