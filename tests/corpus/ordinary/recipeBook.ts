import { a1, addSheet, put, putRow, shown, span } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { pricesOf, readings } from "./words";

const VOICE: Voice = {
  lead: "ALLERGENS:",
  honey: "HONEY, not under 12 months.",
  alcohol: "ALCOHOL, no sale to under 18s, not for pregnant women, not before driving.",
  nuts: "WHOLE NUTS, choking hazard under 5 years.",
  egg: "RAW EGG YOLK, heat to 71 °C.",
};

const ANSWERS: readonly Said[] = [
  { label: "FP (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "FP below water's by (K)", states: "depression", as: "formula" },
  { label: "Sugars (% of mix)", states: "sugar share", as: "typed", decimals: 1 },
  {
    label: "Ice at −16 °C (% of mix)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

interface Priced {
  readonly name: string;
  readonly paid: number;
  readonly size: number;
}

/** What was paid at the wholesaler's, worked out per kilogram; gives the table that is looked up. */
function priceList(kit: Kit, mades: readonly MadeRecipe[]): string {
  const sheet = addSheet(kit.marked.book, "Prices");
  const priceOf = pricesOf(kit);
  const list = itemsOf(mades).map((name): Priced => {
    const made = mades.find(({ names }) => names.includes(name))!;
    const size = kit.random.pick([1, 2, 5, 10]);
    return { name, size, paid: priceOf(made, made.names.indexOf(name)) * size };
  });
  const heads = putRow(sheet, 0, 0, ["Item", "Per kg (£)", "Paid (£)", "Pack (kg)"]);
  const rows = list.map(({ name, paid, size }, index) =>
    putRow(sheet, 1 + index, 0, [name, undefined, shown(Number(paid.toFixed(2)), "0.00"), size]),
  );
  const perKilo = rows.map(([, spot, paid, size]) =>
    put(sheet, spot!.row, 1, shown(`=${a1(paid!)}/${a1(size!)}`, "0.00")),
  );
  kit.marked.formulaColumns.push({ spots: perKilo, heading: heads[1]!, fixed: [] });
  note(kit, sheet, rows.length + 2, 0, "Wholesaler raises prices in January and after harvest");
  return `Prices!${absolute(span([...columnOf(rows, 0), ...perKilo]))}`;
}

/** A page of the book: answers over the list, costs by the price list. */
function recipePage(kit: Kit, made: MadeRecipe, index: number, prices: string): void {
  const sheet = addSheet(kit.marked.book, `R${index + 1}`);
  putRow(sheet, 0, 0, ["Name", made.title]);
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 8, column: 0 },
    {
      heads: ["Ingredient", "Amount", "Unit", "Cost (£)"],
      cells: (item, grams) => [item, grams, "g"],
    },
  );
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*VLOOKUP(${a1({ ...spot, column: 0 })},${prices},2,FALSE)`,
  });
  putRow(sheet, end + 1, 0, ["TOTAL"]);
  const total = sumOf(kit, sheet, { row: end + 1, column: 1 }, amounts);
  put(sheet, end + 1, 2, "g");
  sumOf(kit, sheet, { row: end + 1, column: 3 }, costs, "0.00");
  const cells = { names, amounts, unitCells: columnOf(rows, 2), total, amountLabel: heads[1]! };
  const recipe = markRecipe(kit, made, { ...cells, unit: "g" });
  const next = say(sheet, recipe, { row: 1, column: 0 }, ANSWERS);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Style" });
  tellIn(sheet, recipe, { row: end + 3, column: 0 }, VOICE);
  note(kit, sheet, end + 5, 0, "Weigh, blend, rest overnight in the fridge, churn, tub, label.");
  note(kit, sheet, end + 6, 0, `Last made: week ${kit.random.whole(18, 36)}`);
}

/** Prices first, then a page for each recipe, then the van. */
function recipeBook(kit: Kit): void {
  const words = { sugar: "granulated sugar", "skim milk powder": "skimmed milk powder" };
  const mades = kit.make(3).map((made) => called(made, words));
  const prices = priceList(kit, mades);
  mades.forEach((made, index) => recipePage(kit, made, index, prices));
  const sheet = addSheet(kit.marked.book, "Van");
  readings(
    kit,
    sheet,
    { row: 0, column: 0 },
    {
      heads: ["Day", "Leaving (°C)", "Back home (°C)"],
      labels: ["Fri", "Sat", "Sun", "Mon (bank holiday)"],
      ranges: [
        [-22, -19],
        [-18, -14],
      ],
    },
  );
}

/** An ice cream van. */
export const recipeBooks: readonly Layout[] = [
  { name: "ice cream van, price list and a page a recipe", language: "en", build: recipeBook },
];
