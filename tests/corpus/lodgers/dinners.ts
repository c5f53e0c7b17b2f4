import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { priceFor } from "../guests/prices";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed, type Listed } from "../newcomers/words";
import { about, forChildren } from "../passing/words";
import type { MadeRecipe } from "../recipes";
import { allergenGrids } from "./dinnerGrid";
import { given, warnIn, type Cautions } from "./words";

const OWN: Cautions = {
  honey: "Contains honey, do not serve to babies under 12 months.",
  alcohol: "Contains alcohol: staff functions only, never for pupils or in pregnancy.",
  nuts: "Whole nuts are a choking hazard, not for under 5s.",
  egg: "Raw egg yolk: heat the mix to 71 °C or buy pasteurised.",
};

const HEADS = [
  ...["Commodity", "Pack (g)", "Pack price (£)", "Price per kg (£)"],
  ...["Recipe for 50 (g)", "Cost for 50 (£)", "Weigh out for today (g)"],
];

interface Day {
  readonly meals: Spot;
  readonly trolley: Spot;
  readonly temperatureC: number;
}

/** Today's numbers at the top. */
function today(kit: Kit, sheet: CorpusSheet): Day {
  const { random } = kit;
  const meals = putRow(sheet, 2, 0, ["Meals booked", 5 * random.whole(36, 80)])[1]!;
  const temperatureC = -random.whole(15, 19);
  const words = ["Trolley freezer", "°C", temperatureC] as const;
  return { meals, trolley: given(kit, sheet, [3, 0], words), temperatureC };
}

/** Prices by the pack, costs and today's weights beside the lines. */
function worked(kit: Kit, list: Listed, meals: Spot): { total: Spot; cost: Spot; today: Spot[] } {
  const { sheet, heads, amounts, end } = list;
  const at = (spot: Spot, column: number): string => a1({ ...spot, column });
  const add = (head: number, format: string, content: (spot: Spot) => string, cells?: Spot[]) =>
    beside(kit, heads[head]!, amounts, { sheet, format, content, ...(cells && { fixed: cells }) });
  add(3, "0.00", (spot) => `=${at(spot, 2)}/${at(spot, 1)}*1000`);
  const costs = add(5, "0.00", (spot) => `=${a1(spot)}*${at(spot, 3)}/1000`);
  const today = add(6, "0", (spot) => `=${a1(spot)}*${fixed(meals)}/50`, [meals]);
  put(sheet, end, 0, "TOTAL");
  const total = sumOf(kit, sheet, { row: end, column: 4 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, costs, "0.00");
  sumOf(kit, sheet, { row: end, column: 6 }, today, "0");
  return { total, cost, today };
}

/** What one child gets and how the mix behaves. */
function portions(sheet: CorpusSheet, recipe: MarkedRecipe, row: number, cost: Spot, day: Day) {
  const { trolley: temperature, temperatureC } = day;
  putRow(sheet, row, 0, ["Portion weight (g)", shown(`=${a1(recipe.total!)}/50`, "0")]);
  putRow(sheet, row + 1, 0, ["Food cost per portion (£)", shown(`=${a1(cost)}/50`, "0.000")]);
  const next = say(sheet, recipe, { row: row + 3, column: 0 }, [
    { label: "Mix starts freezing (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Water, recipe for 50 (g)", states: "water", as: "formula", format: "0" },
    { label: "Sugars (% by weight)", states: "sugar share", as: "typed" },
    {
      label: "Frozen part of the water in the trolley freezer (%)",
      ...{ states: "ice of water", as: "formula", temperature, temperatureC, format: "0" },
    },
    { label: "Dissolved solids, recipe for 50 (g)", states: "dissolved", as: "typed", decimals: 0 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Texture wanted" });
  return next + 2;
}

/** What is bought by the pack, and what fifty take of it. */
function bought({ random }: Kit, sheet: CorpusSheet, made: MadeRecipe): Listed {
  return listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      ...{ heads: HEADS, amount: 4 },
      cells: (name, grams) => {
        const pack = random.pick([500, 1000, 2500, 5000]);
        const price = Math.round(priceFor(random, name) * pack) / 1000;
        return [name, pack, shown(Math.round(100 * price) / 100, "0.00"), undefined, grams];
      },
    },
  );
}

/** A pudding costed by the pack for fifty, weighed out for the meals booked. */
function costing(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Pudding costing");
  const made = called(about(forChildren(kit, 1)[0]!, 3000), {
    sugar: "granulated sugar",
    "skim milk powder": "skimmed milk powder",
  });
  put(sheet, 0, 0, `${made.title}, menu week 2 (Thursday)`);
  const day = today(kit, sheet);
  const list = bought(kit, sheet, made);
  const { total, cost, today: alsoAmounts } = worked(kit, list, day.meals);
  const { names, amounts, heads, end } = list;
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[4]!, total },
  });
  const next = portions(sheet, recipe, end + 2, cost, day);
  const free = warnIn(sheet, recipe, { row: next, column: 0 }, ["Allergens present:", OWN]);
  note(kit, sheet, free + 1, 0, "Book the cook's assistant for 7.30 on freezing days.");
}

/** A school-dinner and catering manager. */
export const dinners: readonly Layout[] = [
  { name: "school dinners, pudding costed by the pack", language: "en", build: costing },
  ...allergenGrids,
];
