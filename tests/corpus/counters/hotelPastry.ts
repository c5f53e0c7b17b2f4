import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { fact, shopping } from "./words";

const VOICE: Voice = {
  lead: "Allergens on the menu card:",
  honey: "With honey, so never for infants under 12 months.",
  alcohol: "Alcohol in it: not for children, pregnant guests or drivers.",
  nuts: "Whole nuts are a choking risk below the age of five.",
  egg: "Raw yolks: cook the mix to 71 °C or order pasteurised.",
};

const WORDS = {
  ...{ sugar: "caster sugar", "lemon juice": "lemon juice, strained", honey: "clear honey" },
  ...{ strawberries: "strawberries, hulled", raspberries: "frozen raspberries" },
};

const SAID: readonly Said[] = [
  { label: "Freezing point, °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Water in batch, g", states: "water", as: "formula", format: "0" },
  {
    label: "Water frozen at −14 °C, %",
    ...{ states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  },
  { label: "Sugars per 100 g water, g", states: "sugar per 100 g water", as: "typed", decimals: 1 },
];

const isCold = (en: string): boolean => /milk$|cream|yogurt|yolk|juice|berries|peach/.test(en);

/** What the stores charge the kitchen; gives the range to look it up in. */
function stores(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): string {
  put(sheet, 0, 0, "Stores issue prices, pastry section");
  putRow(sheet, 2, 0, ["Item", "£ per kg", "Shelf"]);
  const rows = shopping(kit, mades).map(({ name, en, price }, index) =>
    putRow(sheet, 3 + index, 0, [name, shown(price, "0.00"), isCold(en) ? "walk-in" : "dry store"]),
  );
  note(kit, sheet, 4 + rows.length, 0, "Stores send a new sheet on the first of the month.");
  return `Stores!${absolute(span(rows.flat().filter(({ column }) => column < 2)))}`;
}

/** From the batch to the coupe that goes out; gives the next free row. */
function perCoupe(kit: Kit, sheet: CorpusSheet, row: number, total: Spot, cost: Spot): number {
  const portion = input(
    kit,
    sheet,
    { row, column: 0 },
    { label: "Portion, g", bare: "Portion", value: kit.random.pick([80, 95, 110]) },
  );
  const at = (step: number) => ({ row: row + step, column: 0 });
  const count = fact(sheet, at(1), "Portions from a batch", `=${a1(total)}/${a1(portion)}`, "0.0");
  fact(sheet, at(2), "Food cost per portion, £", `=${a1(cost)}/${a1(count)}`, "0.00");
  return row + 4;
}

/** One ice on a sheet of its own. */
function coupe(kit: Kit, made: MadeRecipe, code: string, prices: string): void {
  const sheet = addSheet(kit.marked.book, code);
  putRow(sheet, 0, 0, [`${code}  ${made.title}`]);
  const heads = ["Ingredient", "Batch, g", "Issue price, £/kg", "Cost, £"];
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    { heads, cells: (name, grams) => [name, grams] },
  );
  const { amounts, names, end } = list;
  beside(kit, list.heads[2]!, names, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=VLOOKUP(${a1(spot)},${prices},2,FALSE)`,
  });
  const costs = beside(kit, list.heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 2 })}`,
  });
  put(sheet, end, 0, "Batch total");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const lines = { names, amounts, total, unit: "g", amountLabel: list.heads[1]! } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = perCoupe(kit, sheet, end + 2, total, cost);
  const said = [...SAID, ...ofAlcohol(made, "Pure alcohol in batch, g")];
  const after = say(sheet, recipe, { row: next, column: 0 }, said);
  nameTarget(sheet, recipe, { row: after, column: 0, label: "Texture wanted" });
  tellIn(sheet, recipe, { row: after + 2, column: 0 }, VOICE);
}

/** Three ices of a hotel, priced by what the stores charge. */
function hotelPastry(kit: Kit): void {
  const mades = kit.make(3).map((made) => called(upTo(made, 3000), WORDS));
  const stock = addSheet(kit.marked.book, "Stores");
  const prices = stores(kit, stock, mades);
  mades.forEach((made, index) => coupe(kit, made, `Coupe ${index + 1}`, prices));
}

/** A hotel's pastry kitchen. */
export const hotelPastries: readonly Layout[] = [
  { name: "hotel pastry section, coupes at stores prices", language: "en", build: hotelPastry },
];
