import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { namesOf } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, ofAlcohol } from "../strollers/words";

const VOICE: Voice = {
  lead: "Allergens -",
  honey: "Has honey: not to be given to infants below 12 months.",
  alcohol: "Has alcohol: not for children, pregnant ladies or those driving.",
  nuts: "Has whole nuts: choking risk, not for below 5 years.",
  egg: "Raw egg yolk: heat up to 71 °C, or only pasteurised yolk.",
};

const OWN = {
  ...{ "whole milk": "full cream milk", water: "filtered water", mango: "mango pulp" },
  ...{ "coconut milk": "coconut milk (tinned)" },
};

const USUAL: readonly (readonly [kind: RegExp, rupees: number])[] = [
  [/water/, 0],
  [/^su/, 46],
  [/milk powder/, 390],
  [/^full cream milk|^banana/, 66],
  [/^cream/, 320],
  [/salt/, 24],
  [/juice|coffee|puree/, 140],
  [/vodka/, 1450],
  [/nuts|pistach/, 1200],
];

/** A round price near what such a thing costs. */
function rateOf({ random }: Kit, name: string): number {
  const usual = USUAL.find(([kind]) => kind.test(name))?.[1] ?? 250;
  return Math.round(usual * random.between(0.9, 1.2));
}

/** What one kilogram costs, in rupees, item by item; water costs nothing. */
function rates(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): Map<string, Spot> {
  put(sheet, 0, 0, "Rate list, market yard");
  putRow(sheet, 2, 0, ["Sr.", "Item", "Rate Rs per kg"]);
  return new Map(
    namesOf(mades).map((name, index) => {
      const rate = rateOf(kit, name);
      const [, , spot] = putRow(sheet, 3 + index, 0, [index + 1, name, shown(rate, "#,##0")]);
      return [name, spot!];
    }),
  );
}

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

const HEADS = ["Sr.", "Particulars", "Qty", "Unit", "Rate (Rs/kg)", "Amount (Rs)"];

/** The lines with rate and amount payable. */
function costed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, list: Map<string, Spot>): Costed {
  const { heads, names, amounts, rows, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: HEADS,
      cells: (name, grams, index) => [
        ...[index + 1, name, grams, "g"],
        shown(`=Rates!${a1(list.get(name)!)}`, "#,##0"),
      ],
      ...{ name: 1, amount: 2 },
    },
  );
  sheet.tables.push({
    name: sheet.name.replace(" ", "_"),
    range: { top: 4, left: 0, bottom: end - 1, right: heads.length - 1 },
    columns: HEADS,
    hasTotals: false,
  });
  const costs = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "#,##0.00" },
    content: (spot) => `=${a1(spot)}*${a1({ ...spot, column: 4 })}/1000`,
  });
  put(sheet, end + 1, 1, "Grand total");
  const total = sumOf(kit, sheet, { row: end + 1, column: 2 }, amounts);
  put(sheet, end + 1, 3, "g");
  const cost = sumOf(kit, sheet, { row: end + 1, column: 5 }, costs, "#,##0.00");
  const unitCells = columnOf(rows, 3);
  const lines = { names, amounts, unitCells, total, unit: "g", amountLabel: heads[2]! } as const;
  return { recipe: markRecipe(kit, made, lines), cost };
}

const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "Freezing pt. (deg C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Water content (g)", states: "water", as: "formula", format: "0" },
  { label: "Sugars as % of mix", states: "sugar share", as: "typed", decimals: 1 },
  ...(isAlcoholic(made) ? ofAlcohol(made, "Alcohol content (g)") : []),
  {
    ...{ label: "Ice as % of mix at −15 deg C", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -15, decimals: 0 },
  },
];

/** One ice: costed, then how many cups come of it and what each costs. */
function ice(kit: Kit, made: MadeRecipe, index: number, list: Map<string, Spot>): void {
  const sheet = addSheet(kit.marked.book, `Item ${index + 1}`);
  put(sheet, 0, 0, `${made.title.toUpperCase()} - COSTING`);
  const words = { label: "One cup (g)", bare: "One cup", value: kit.random.pick([60, 70, 80]) };
  const cup = input(kit, sheet, { row: 2, column: 1 }, words);
  const { recipe, cost } = costed(kit, sheet, made, list);
  const at = recipe.total!.row + 2;
  const cups = `=${a1(recipe.total!)}/${fixed(cup)}`;
  const [, number] = putRow(sheet, at, 1, ["Cups from the lot", shown(cups, "0.0")]);
  const each = `=${a1(cost)}/${a1(number!)}`;
  const [, rupees] = putRow(sheet, at + 1, 1, ["Cost of one cup (Rs)", shown(each, "0.00")]);
  const twice = shown(`=${a1(rupees!)}*2`, "0.00");
  putRow(sheet, at + 2, 1, ["Twice the cost (Rs)", twice]);
  const next = say(sheet, recipe, { row: at + 4, column: 1 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: 1, label: "Style" });
  tellIn(sheet, recipe, { row: next + 1, column: 1 }, VOICE);
}

/** A rate list and two costings that read it. */
function pune(kit: Kit): void {
  const mades = kit.make(2).map((made) => called(made, OWN));
  const sheet = addSheet(kit.marked.book, "Rates");
  const list = rates(kit, sheet, mades);
  mades.forEach((made, index) => ice(kit, made, index, list));
  note(kit, sheet, 6 + list.size, 0, "Rates as per last Monday, bargain again before Holi.");
}

/** A stall that costs its ices. */
export const puneStalls: readonly Layout[] = [
  { name: "stall in Pune, rate list and two costings", language: "en", build: pune },
];
