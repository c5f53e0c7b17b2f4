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
import { quotedSheet } from "../../../src/workbook/quotedSheet";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { resultAt, type ResultPlan } from "../results";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { clock, costsBeside, paid } from "../counters/words";

const VOICE: Voice = {
  lead: "Allergy folder:",
  honey: "honey in it, unsuitable for infants under 12 months.",
  alcohol: "alcohol in it, refuse to children, expectant mothers and drivers.",
  nuts: "whole nuts in it, choking hazard below 5 years.",
  egg: "raw yolk in it, cook to 71 °C or use pasteurised yolk.",
};

const WORDS = {
  ...{ walnuts: "walnut halves", hazelnuts: "roasted hazelnuts", salt: "table salt" },
  ...{ "cream 35 % fat": "cream (35 % fat)", "lime juice": "lime juice, fresh" },
};

const HEADS = ["Per churn", "Grams", "£/kg then", "£/kg now", "£ then", "£ now", "% of cost now"];

/** A churn's list with last year's and this year's prices; the cost now and the recipe. */
function churn(kit: Kit, sheet: CorpusSheet, made: MadeRecipe) {
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: HEADS,
      cells: (name, grams, index) => {
        const now = paid(kit, made.lines[index]!.en);
        const then = Math.round(now * kit.random.between(82, 99)) / 100;
        return [name, grams, shown(then, "0.00"), shown(now, "0.00")];
      },
    },
  );
  const { names, amounts, heads, end } = list;
  put(sheet, end + 1, 0, "Sum");
  const row = end + 1;
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts);
  const then = costsBeside(kit, sheet, heads[4]!, amounts, { column: 2 });
  sumOf(kit, sheet, { row, column: 4 }, then, "0.00");
  const now = costsBeside(kit, sheet, heads[5]!, amounts, { column: 3 });
  const cost = sumOf(kit, sheet, { row, column: 5 }, now, "0.00");
  const shares = beside(kit, heads[6]!, now, {
    ...{ sheet, format: "0.0", fixed: [cost] },
    content: (spot) => `=100*${a1(spot)}/${fixed(cost)}`,
  });
  sumOf(kit, sheet, { row, column: 6 }, shares, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, total, unit: "g", amountLabel: heads[1]! },
  });
  return { recipe, row };
}

const FACTS: readonly (readonly [heading: string, plan: ResultPlan])[] = [
  ["Freezing point, °C", { states: "freezing point", as: "formula", format: "0.0" }],
  ["Depression, K", { states: "depression", as: "formula", format: "0.0" }],
  ["Water, g", { states: "water", as: "typed", decimals: 0 }],
  ["Dissolved, g", { states: "dissolved", as: "typed", decimals: 0 }],
  ["Sugars in mix, %", { states: "sugar share", as: "typed", decimals: 1 }],
];

/** A line for each churn on the sheet of facts. */
function factLine(sheet: CorpusSheet, recipe: MarkedRecipe, row: number, heads: readonly Spot[]) {
  const home = quotedSheet(recipe.names[0]!.sheet);
  const lines = `${home}!${span(recipe.names)},${home}!${span(recipe.amounts)}`;
  put(sheet, row, 0, recipe.made.title);
  FACTS.forEach(([, plan], index) => {
    resultAt(sheet, recipe, heads[1 + index]!, { row, column: 1 + index }, plan, () => lines);
  });
  const served = { states: "ice of water", as: "typed", temperatureC: -12, decimals: 0 } as const;
  const column = 1 + FACTS.length;
  resultAt(sheet, recipe, heads[column]!, { row, column }, served);
  nameTarget(sheet, recipe, { row, column: column + 1 });
  tellIn(sheet, recipe, { row, column: column + 2 }, VOICE);
}

/** When the room is open, which the churns have to last for. */
function hours(sheet: CorpusSheet, row: number): void {
  [
    ["Open", "from", "to", "covers"],
    ["Wed to Fri", clock(10.5), clock(17), 28],
    ["Sat", clock(10), clock(17.5), 46],
    ["Sun", clock(12), clock(16.5), 40],
  ].forEach((cells, index) => putRow(sheet, row + index, 0, cells));
}

/** Three churns, what they cost then and now, and all facts on the last sheet. */
function tearoom(kit: Kit): void {
  const mades = kit.make(3).map((made) => called(upTo(made, 2000), WORDS));
  const recipes = mades.map((made, index) => {
    const sheet = addSheet(kit.marked.book, `Churn ${index + 1}`);
    put(sheet, 0, 0, `${made.title}: what it cost in May last year and what it costs now`);
    const { recipe, row } = churn(kit, sheet, made);
    note(kit, sheet, row + 2, 0, "Old prices are from the dairy's and the grocer's May invoices.");
    return recipe;
  });
  const sheet = addSheet(kit.marked.book, "Facts");
  put(sheet, 0, 0, "All churns");
  const words = FACTS.map(([heading]) => heading);
  const heads = putRow(sheet, 2, 0, [
    ...["Churn", ...words, "Water frozen at −12 °C, %", "Served", "To tell"],
  ]);
  recipes.forEach((recipe, index) => factLine(sheet, recipe, 3 + index, heads));
  hours(sheet, 8);
}

/** A tea room that compares two years. */
export const tearooms: readonly Layout[] = [
  { name: "tea room, churns at last year's prices and now", language: "en", build: tearoom },
];
