import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { kilos } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside } from "../newcomers/words";
import { textAt } from "../mutation";
import { input } from "../page";
import { marking } from "./marking";
import { priceFor } from "./prices";
import { costsOf } from "./words";

const HANDOUT = "Week 4 handout";

const METHOD = [
  "1. Chill the bowl and the beaters.",
  "2. Warm about a third of the liquid and stir the sugars in until clear.",
  "3. Add the rest, cover, into the fridge until next to nothing steams.",
  "4. Shallow tray, lid on, top shelf of the freezer.",
  "5. Fork it through every half hour, three times.",
];

/** What a pair weighs out, the method at the right. */
function recipeOf(kit: Kit, sheet: CorpusSheet, alsoAmounts: readonly Spot[]): MarkedRecipe {
  const made = called(kilos(kit.make(1)[0]!, 0.6), {
    sugar: "granulated sugar",
    salt: "table salt",
  });
  put(sheet, 0, 0, "Frozen desserts at home: Tuesdays 7.15 pm");
  put(sheet, 1, 0, `Week 4: ${made.title}`);
  const heads = putRow(sheet, 3, 0, ["Weigh out, per pair (g)", "Ingredient", "Tick", "Method"]);
  const rows = made.names.map((name, index) =>
    putRow(sheet, 4 + index, 0, [made.grams[index], name, "☐"]),
  );
  METHOD.forEach((step, index) => put(sheet, 4 + index, 3, step));
  const [amounts, names] = [columnOf(rows, 0), columnOf(rows, 1)];
  const row = 4 + Math.max(rows.length, METHOD.length);
  const total = sumOf(kit, sheet, { row, column: 0 }, amounts);
  put(sheet, row, 1, "in the bowl");
  const amountLabel = heads[0]!;
  return markRecipe(kit, made, { names, amounts, alsoAmounts, unit: "g", amountLabel, total });
}

const SYRUPS = ["for a sorbet", "for an ice lolly", "for brushing a sponge"];

/** The two ways of saying how sweet a syrup is. */
function syrups({ marked, random }: Kit, sheet: CorpusSheet, top: number): void {
  put(sheet, top, 1, "Two ways of saying how sweet a syrup is");
  putRow(sheet, top + 1, 1, [
    ...["Syrup", "Sugar (g)", "Water (g)", "Sugar to 100 g of water (g)"],
    "Sugar in 100 g of syrup (g)",
  ]);
  SYRUPS.forEach((syrup, index) => {
    const [sugarGrams, waterGrams] = [90 + 75 * index + 5 * random.whole(0, 6), 300];
    const [, sugar, water, perWater, share] = putRow(sheet, top + 2 + index, 1, [
      ...[syrup, sugarGrams, waterGrams, Number((sugarGrams / 3).toFixed(1))],
      Number(((100 * sugarGrams) / (sugarGrams + waterGrams)).toFixed(1)),
    ]) as [Spot, Spot, Spot, Spot, Spot];
    marked.strengths.push({ sugar, water, perWater, share });
  });
}

/** What the class needs of everything, on the rows of the handout; gives the amounts. */
function needed(kit: Kit, sheet: CorpusSheet, { names, amounts }: MarkedRecipe, pairs: Spot) {
  const words = { label: "Spare for spills (%)", bare: "Spare for spills", value: 10 };
  const spare = input(kit, sheet, { row: 2, column: 0 }, words);
  const [, heading] = putRow(sheet, 3, 0, ["To get", "Class needs (kg)", "Price (£/kg)"]);
  const lines = names.map((name, index) => {
    const price = priceFor(kit.random, textAt(kit.marked, name));
    put(sheet, 4 + index, 2, shown(price, "0.00"));
    return put(sheet, 4 + index, 0, `='${HANDOUT}'!${a1(name)}`);
  });
  return beside(kit, heading!, lines, {
    ...{ sheet, format: "0.00", fixed: [pairs, spare] },
    content: (_, index) =>
      `='${HANDOUT}'!${a1(amounts[index]!)}*${fixed(pairs)}*(1+${fixed(spare)}/100)/1000`,
  });
}

/** What the teacher buys for all the pairs; gives the amounts. */
function shopping(kit: Kit, recipe: MarkedRecipe): Spot[] {
  const sheet = addSheet(kit.marked.book, "Shopping");
  put(sheet, 0, 0, "Shopping for Tuesday");
  const [, pairs] = putRow(sheet, 1, 0, ["Pairs signed up", kit.random.whole(5, 9)]);
  const needs = needed(kit, sheet, recipe, pairs!);
  const costs = costsOf(kit, put(sheet, 3, 3, "Costs (£)"), needs, { sheet, column: 2 });
  const row = 4 + needs.length;
  put(sheet, row, 0, "Till receipt should be about");
  const sum = sumOf(kit, sheet, { row, column: 3 }, costs, "0.00");
  put(sheet, row + 1, 0, "That is per person (£)");
  put(sheet, row + 1, 3, shown(`=${a1(sum)}/(2*${fixed(pairs!)})`, "0.00"));
  note(kit, sheet, row + 3, 0, "Keep the receipt for the office. Cones are in the cupboard.");
  return needs;
}

const NUMBERS: readonly Said[] = [
  {
    ...{ label: "Starts to freeze at", states: "freezing point", as: "formula" },
    ...{ format: "0.0", inCell: "°C" },
  },
  {
    ...{ label: "Sugars to 100 g of water", states: "sugar per 100 g water", as: "typed" },
    ...{ decimals: 1, inCell: "g" },
  },
  { label: "Sugars in the whole mix", states: "sugar share", as: "typed", inCell: "%" },
  {
    ...{ label: "Share of the water that is ice at −18 °C", states: "ice of water" },
    ...{ as: "typed", temperatureC: -18, decimals: 0, inCell: "%" },
  },
];

/** A handout for the class with the shopping behind it. */
function handout(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, HANDOUT);
  const needs: Spot[] = [];
  const recipe = recipeOf(kit, sheet, needs);
  let row = recipe.total!.row + 2;
  put(sheet, row, 1, "What the numbers say");
  row = say(sheet, recipe, { row: row + 1, column: 1 }, NUMBERS);
  nameTarget(sheet, recipe, { row, column: 1, label: "How we shall serve it" });
  row = tell(kit, sheet, recipe, { row: row + 2, column: 1, as: "sentence" });
  syrups(kit, sheet, row + 1);
  note(
    kit,
    sheet,
    row + 7,
    1,
    "Homework: read the label of a tub from the shop and bring it along.",
  );
  needs.push(...shopping(kit, recipe));
}

/** Sheets of someone who gives an evening class. */
export const evening: readonly Layout[] = [
  { name: "evening class, week 4 handout and shopping", language: "en", build: handout },
  { name: "evening class, marks for own recipes", language: "en", build: marking },
];
