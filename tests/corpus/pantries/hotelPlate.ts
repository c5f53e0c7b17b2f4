import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { allergensOf, cautionsIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { pricePerKg, table, worked } from "./words";

const VOICE: Voice = {
  lead: "",
  honey: "Honey - never to infants under 12 months",
  alcohol: "Alcohol - never to minors, expectant guests or drivers",
  nuts: "Whole nuts - choking hazard, never to children under 5",
  egg: "Raw egg yolk - heat mix to 71 °C or use pasteurised",
};

const FACTS: readonly Said[] = [
  { label: "Freezing point, °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Depression, K", states: "depression", as: "formula", format: "0.00" },
  { label: "Water in the batch, g", states: "water", as: "typed", decimals: 0 },
  {
    label: "Frozen part of the mix at −18 °C, %",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 1 },
  },
];

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** The lines with the pack each comes in, its price and what the recipe uses of it. */
function packs(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): Costed {
  const { heads, rows, names, amounts, end } = listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["Supplier code", "Commodity", "Pack, g", "Pack, €", "Recipe, g", "Cost, €"],
      cells: (name, grams, index) => {
        const pack = kit.random.pick([500, 1000, 2500, 5000]);
        const price = Number(((pricePerKg(kit, made, index) * pack) / 1000).toFixed(2));
        const code = `P-${kit.random.whole(100, 999)}`;
        return [code, name, pack, shown(price, "0.00"), grams];
      },
      ...{ name: 1, amount: 4 },
    },
  );
  const [sizes, prices] = [columnOf(rows, 2), columnOf(rows, 3)];
  const costs = beside(kit, heads[5]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) => `=${a1(spot)}*${a1(prices[index]!)}/${a1(sizes[index]!)}`,
  });
  put(sheet, end, 1, "Batch");
  const total = sumOf(kit, sheet, { row: end, column: 4 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, costs, "0.00");
  const amountLabel = heads[4]!;
  return { recipe: markRecipe(kit, made, { names, amounts, unit: "g", amountLabel, total }), cost };
}

/** From the batch to the plate on the menu. */
function plate(kit: Kit, sheet: CorpusSheet, { recipe, cost }: Costed, row: number): void {
  const at = (step: number) => ({ row: row + step, column: 0 });
  const weight = { label: "Quenelle on the plate (g)", bare: "Quenelle on the plate", value: 45 };
  const quenelle = input(kit, sheet, at(0), weight);
  const part = { label: "Garnish and sauce (€)", bare: "Garnish and sauce", format: "0.00" };
  const garnish = input(kit, sheet, at(1), { ...part, value: kit.random.whole(60, 150) / 100 });
  const menu = { label: "Menu price net (€)", bare: "Menu price net", format: "0.00" };
  const price = input(kit, sheet, at(2), { ...menu, value: kit.random.whole(14, 22) / 2 });
  const one = `=${a1(cost)}*${a1(quenelle)}/${a1(recipe.total!)}+${a1(garnish)}`;
  const spent = worked(sheet, at(3), ["Food cost a plate (€)", one, "0.00"]);
  worked(sheet, at(4), ["Food cost of the price", `=${a1(spent)}/${a1(price)}`, "0.0%"]);
  worked(sheet, at(5), ["Contribution a plate (€)", `=${a1(price)}-${a1(spent)}`, "0.00"]);
}

/** What the waiters have to know, label above words. */
function briefing(sheet: CorpusSheet, { made, flags }: MarkedRecipe, row: number): void {
  const [allergens, cautions] = [allergensOf(made), cautionsIn(made, VOICE)];
  const lines = [
    ...(allergens === "" ? [] : [["Allergens to announce", allergens]]),
    ...(cautions === "" ? [] : [["Not to everybody", cautions]]),
  ];
  lines.forEach((each, index) => flags.push(...putRow(sheet, row + index, 3, each)));
}

/** A hotel's costing of a plated dessert. */
function hotel(kit: Kit): void {
  const words = { sugar: "caster sugar", honey: "runny honey", pistachios: "pistachio kernels" };
  const made = called(kit.make(1)[0]!, words);
  const sheet = addSheet(kit.marked.book, "Plated 07");
  putRow(sheet, 0, 0, ["Plated dessert 07", made.title]);
  putRow(sheet, 1, 0, ["Outlet", "Garden restaurant", undefined, "Valid", "summer card"]);
  putRow(sheet, 2, 0, ["Costed by", "pastry office", undefined, "Prices excl. VAT"]);
  const costed = packs(kit, sheet, made);
  const { row } = costed.recipe.total!;
  plate(kit, sheet, costed, row + 2);
  const next = say(sheet, costed.recipe, { row: row + 2, column: 3 }, FACTS);
  nameTarget(sheet, costed.recipe, { row: next, column: 3, label: "Texture wanted" });
  briefing(sheet, costed.recipe, next + 1);
  const rows = ["Fri", "Sat", "Sun"].map((day) => {
    return [day, kit.random.whole(42, 90), kit.random.whole(8, 30)];
  });
  table(sheet, { row: row + 10, column: 0 }, ["Sold last week", "Covers", "Plates 07"], rows);
  note(kit, sheet, row + 15, 0, "Glass bowls only, the slate plates warm up too fast.");
}

/** Sheets of a hotel's pastry office. */
export const hotelPlates: readonly Layout[] = [
  { name: "hotel pastry office, plated dessert costing", language: "en", build: hotel },
];
