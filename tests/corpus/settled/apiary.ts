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
import { note, nameTarget, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { madeOf, temperatures, upTo } from "../strollers/words";
import { halfDegrees, pricesOf, table } from "./words";

const OWN = { honey: "runny honey", "whole milk": "fresh whole milk", sugar: "white sugar" };

const VOICE: Voice = {
  lead: "Allergy advice:",
  honey: "Contains honey, not suitable under 12 months.",
  alcohol: "Contains alcohol, adults only; not in pregnancy or before driving.",
  nuts: "Contains whole nuts, choking hazard under 5 years.",
  egg: "Contains raw egg yolk; heated to 71 °C or pasteurised.",
};

interface Batch {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly sheet: string;
}

/** A mix on its own sheet: name, price, weight, unit, cost. */
function mix(kit: Kit, made: MadeRecipe, name: string): Batch {
  const sheet = addSheet(kit.marked.book, name);
  const prices = pricesOf(kit, made);
  putRow(sheet, 0, 0, [made.title, undefined, "churned on", "Thursdays"]);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Goes in", "Price per kg (€)", "Quantity", undefined, "Cost (€)", "Part (%)"],
      cells: (item, grams, index) => [
        ...[item, shown(prices[index]!, "0.00"), shown(inUnit(grams, "kg"), "0.000"), "kg"],
      ],
      ...{ name: 0, amount: 2 },
    },
  );
  // The total stands over the lines.
  put(sheet, 2, 0, "Together");
  const total = sumOf(kit, sheet, { row: 2, column: 2 }, amounts, "0.000");
  put(sheet, 2, 3, "kg");
  const costs = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 1 })}`,
  });
  const cost = sumOf(kit, sheet, { row: 2, column: 4 }, costs, "0.00");
  const alsoAmounts = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [total] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}*100`,
  });
  const cells = { names, amounts, alsoAmounts, total, amountLabel: heads[2]!, unit: "kg" } as const;
  const recipe = markRecipe(kit, made, { ...cells, unitCells: columnOf(rows, 3) });
  nameTarget(sheet, recipe, { row: end + 1, column: 0, label: "Should come out" });
  return { recipe, cost, sheet: name };
}

const LINES = [
  ["Freezing point (°C)", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Depression (K)", { states: "depression", as: "typed", decimals: 2 }],
  ["Sugars (% of the mix)", { states: "sugar share", as: "typed", decimals: 1 }],
  [
    "Water frozen in the chest, −18 °C (%)",
    { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  ],
] as const;

/** Answers and jar labels of all mixes on the last sheet, the mixes beside each other. */
function labels(kit: Kit, batches: readonly Batch[]): void {
  const sheet = addSheet(kit.marked.book, "Jar labels");
  put(sheet, 0, 0, "For the printer, and for anyone who asks");
  const words = ["Batch (kg)", "Cost of a batch (€)", ...LINES.map(([label]) => label)];
  words.forEach((label, index) => put(sheet, 3 + index, 0, label));
  put(sheet, 3 + words.length, 0, "Small print");
  batches.forEach(({ recipe, cost, sheet: from }, index) => {
    const column = 1 + index;
    put(sheet, 2, column, recipe.made.title);
    put(sheet, 3, column, shown(`='${from}'!${a1(recipe.total!)}`, "0.000"));
    put(sheet, 4, column, shown(`='${from}'!${a1(cost)}`, "0.00"));
    const lines = `'${from}'!${span(recipe.names)},'${from}'!${span(recipe.amounts)}`;
    LINES.forEach(([, plan], at) => {
      const label = { sheet: sheet.name, row: 5 + at, column: 0 };
      resultAt(sheet, recipe, label, { row: 5 + at, column }, plan, () => lines);
    });
    tellIn(sheet, recipe, { row: 3 + words.length, column }, VOICE);
  });
  note(kit, sheet, 5 + words.length, 0, "Labels run out faster than jars.");
}

/** The farm shop's chest freezer and what is in it. */
function chest(kit: Kit, sheet: CorpusSheet, row: number): void {
  const weeks = ["week 23", "week 24", "week 25", "week 26"];
  const cells = weeks.map((week) => [
    ...[week, kit.random.whole(6, 40), kit.random.whole(2, 12), halfDegrees(kit, -20, -16)],
  ]);
  const heads = ["Counted", "Jars of ice", "Sticks", "Chest (°C)"];
  const list = table(sheet, { row, column: 0 }, heads, cells);
  temperatures(kit, list.heads[3]!, columnOf(list.rows, 3));
}

/** Two mixes, a sheet each, then what the labels say. */
function apiary(kit: Kit): void {
  const hasHoney = ({ names }: MadeRecipe) => names.includes("honey");
  const mades = madeOf(kit, 2, hasHoney).map((made) => called(upTo(made, 2500), OWN));
  const batches = mades.map((made, index) => mix(kit, made, `Batch ${"AB"[index]}`));
  labels(kit, batches);
  chest(kit, addSheet(kit.marked.book, "Chest"), 0);
}

/** A honey farm that makes ice. */
export const apiaries: readonly Layout[] = [
  { name: "bee farm, two batches and the jar labels", language: "en", build: apiary },
];
