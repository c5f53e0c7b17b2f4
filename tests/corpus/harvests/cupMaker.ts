import { a1, addSheet, put, putRow, shown, span, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { upTo } from "../strollers/words";
import { goodsOf, numbersUnder, priceList, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Lid: contains",
  honey: "Made with honey, not for infants under 12 months.",
  alcohol: "Contains alcohol; not for children, in pregnancy or before driving.",
  nuts: "Whole nuts, a choking hazard for children under 5.",
  egg: "Raw egg yolk in the mix: cook to 71 °C unless the yolk came pasteurised.",
};

const SPEC: readonly Said[] = [
  { label: "Freezing point", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "Total water", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "Solids dissolved", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    label: "Water frozen at −20 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -20, decimals: 1 },
  },
];

interface Card {
  readonly recipe: MarkedRecipe;
  readonly name: string;
  readonly total: Spot;
  readonly cost: Spot;
}

/** A recipe's own sheet, its prices fetched from the list. */
function card(kit: Kit, made: MadeRecipe, lookup: string, index: number): Card {
  const name = `Recipe ${index + 1}`;
  const sheet = addSheet(kit.marked.book, name);
  putRow(sheet, 1, 1, ["Made by us", made.title]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column: 1 },
    {
      heads: ["Weight (g)", "Ingredient", "Per kilo (€)", "Line (€)"],
      cells: (item, grams) => [grams, item],
      ...{ name: 1, amount: 0 },
    },
  );
  const prices = beside(kit, heads[2]!, names, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=VLOOKUP(${a1(spot)},${lookup},4,FALSE)`,
  });
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, at) => `=${a1(spot)}/1000*${a1(prices[at]!)}`,
  });
  const total = sumOf(kit, sheet, { row: end + 1, column: 1 }, amounts);
  put(sheet, end + 1, 2, "in the vat");
  const cost = sumOf(kit, sheet, { row: end + 1, column: 4 }, costs, "0.00");
  const cells = { names, amounts, unit: "g", amountLabel: heads[0]!, total } as const;
  const recipe = markRecipe(kit, made, cells);
  put(sheet, 3, 7, "Specification");
  const next = say(sheet, recipe, { row: 4, column: 7 }, SPEC);
  nameTarget(sheet, recipe, { row: next, column: 7, label: "Should be" });
  tellIn(sheet, recipe, { row: end + 3, column: 1 }, VOICE);
  return { recipe, name, total, cost };
}

/** A line for each recipe. */
function overview(kit: Kit, cards: readonly Card[]): void {
  const sheet = addSheet(kit.marked.book, "All ices");
  const heads = putRow(sheet, 0, 0, [
    ...["Sheet", "Ice", "Vat (g)", "Vat (€)", "One cup of 75 g (€)", "Depression (K)"],
  ]);
  const costs = cards.map(({ recipe, name, total, cost }, index) => {
    const row = 1 + index;
    putRow(sheet, row, 0, [name, recipe.made.title, `='${name}'!${a1(total)}`]);
    const vat = put(sheet, row, 3, shown(`='${name}'!${a1(cost)}`, "0.00"));
    const call = `'${name}'!${span(recipe.names)},'${name}'!${span(recipe.amounts)}`;
    const plan = { states: "depression", as: "formula" } as const;
    resultAt(sheet, recipe, heads[5]!, { row, column: 5 }, plan, () => call);
    return vat;
  });
  beside(kit, heads[4]!, costs, {
    ...{ sheet, format: "0.000" },
    content: (spot) => `=${a1(spot)}/${a1({ ...spot, column: 2 })}*75`,
  });
  put(sheet, 1 + cards.length, 1, "All vats");
  sumOf(kit, sheet, { row: 1 + cards.length, column: 3 }, costs, "0.00");
  note(kit, sheet, 3 + cards.length, 0, "Cups, lids and spoons are in the other file.");
}

/** The room in which the cups harden, read through a day. */
function room(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Hardening room");
  const hours = ["8:00", "9:30", "11:00", "13:00", "14:30"];
  const [top, bottom] = [readings(kit, 5, [-30, -26]), readings(kit, 5, [-31, -27])];
  const { heads, columns } = table(
    sheet,
    { row: 0, column: 0 },
    ["Read at", "Top rack (°C)", "Bottom rack (°C)", "Trays in"],
    hours.map((hour, index) => [hour, top[index], bottom[index], kit.random.whole(6, 14)]),
  );
  for (const at of [1, 2]) numbersUnder(kit, heads[at]!, columns[at]!, "temperature");
}

/** Price list first, then the recipes, then all in one place. */
function cups(kit: Kit): void {
  const words = { salt: "sea salt", "cream 35 % fat": "cream 35 %" };
  const mades = kit.make(3).map((made) => called(upTo(made, 5000), words));
  const sheet = addSheet(kit.marked.book, "Prices");
  put(sheet, 0, 0, "What we pay, delivery included");
  const heads = ["Item", "Pack (kg)", "Pack costs (€)", "€ per kg"];
  const { lookup, end } = priceList(kit, sheet, { row: 2, column: 0 }, heads, goodsOf(mades));
  note(kit, sheet, end + 1, 0, "Updated whenever an invoice is different.");
  overview(
    kit,
    mades.map((made, index) => card(kit, made, lookup, index)),
  );
  room(kit);
}

/** A small maker of ices in cups. */
export const cupMakers: readonly Layout[] = [
  { name: "ices in cups, price list and a sheet for each recipe", language: "en", build: cups },
];
