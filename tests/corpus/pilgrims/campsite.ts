import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { byHand, inHundred, ofAlcohol, perKilo, warnAt } from "./words";

const HEADS = [
  ...["Put in (g)", "What", "Water in 100 g of it (g)", "Water it brings (g)"],
  ...["Bag or bottle cost (£)", "Bag or bottle holds (g)", "Used up (£)"],
];

/** The lines of one lolly with their water and their money. */
function worked(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number) {
  const list = listed(
    sheet,
    made,
    { row: top, column: 0 },
    {
      heads: HEADS,
      cells: (name, grams, index) => {
        const holds = kit.random.pick([500, 1000, 2000]);
        const cost = Number(((perKilo(kit, made.lines[index]!.en) * holds) / 1000).toFixed(2));
        const wet = shown(inHundred(name, "water"), "0.0");
        return [grams, name, wet, undefined, shown(cost, "0.00"), holds];
      },
      ...{ name: 1, amount: 0 },
    },
  );
  const { heads, amounts, end } = list;
  const at = (spot: Spot, column: number) => a1({ ...spot, column });
  const water = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.0" },
    content: (spot) => `=${a1(spot)}*${at(spot, 2)}/100`,
  });
  const used = beside(kit, heads[6]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${at(spot, 4)}/${at(spot, 5)}*${a1(spot)}`,
  });
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "altogether");
  const cost = sumOf(kit, sheet, { row: end, column: 6 }, used, "0.00");
  const { names } = list;
  const lines = { names, amounts, unit: "g", amountLabel: heads[0]!, total } as const;
  const recipe = markRecipe(kit, made, lines);
  const allWater = sumOf(kit, sheet, { row: end, column: 3 }, water, "0");
  byHand(recipe, "water", heads[3]!, allWater);
  return { recipe, total, cost, end };
}

const KNOWN: readonly Said[] = [
  { label: "Freezing point (°C)", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "Of its water frozen in our chest at −18 °C (%)",
    ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  },
  { label: "Sugar in the lolly mix (%)", states: "sugar share", as: "typed" },
];

interface Shop {
  readonly mould: Spot;
  readonly stick: Spot;
}

/** One lolly from its title to its warnings; gives the next free row. */
function lolly(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, shop: Shop): number {
  put(sheet, top, 0, made.title);
  const { recipe, total, cost, end } = worked(kit, sheet, made, top + 1);
  const line = (step: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, end + step, 4, [label, undefined, shown(formula, format)])[2]!;
  const count = line(1, "Lollies we get", `=${a1(total)}/${fixed(shop.mould)}`, "0");
  const one = `=${a1(cost)}/${a1(count)}+${fixed(shop.stick)}`;
  const each = line(2, "One lolly costs us (£)", one, "0.00");
  const asked = kit.random.whole(12, 24) / 10;
  const price = putRow(sheet, end + 3, 4, ["We ask for (£)", undefined, shown(asked, "0.00")])[2]!;
  line(4, "Stays in the till (£)", `=${a1(price)}-${a1(each)}`, "0.00");
  const said = [...KNOWN, ...ofAlcohol(made, { label: "Pure alcohol in it (g)" })];
  const next = say(sheet, recipe, { row: end + 2, column: 1 }, said);
  nameTarget(sheet, recipe, { row: next, column: 1, label: "We want it" });
  return warnAt(sheet, recipe, { row: next + 1, column: 1 }, "Chalk on the board, contains") + 2;
}

/** Three lollies under one another, water and money by plain formulas. */
function campsite(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Lollies");
  put(sheet, 0, 0, "Campsite shop, home-made lollies, what they cost us");
  const place = (row: number) => ({ row, column: 0 });
  const mould = input(kit, sheet, place(1), {
    ...{ label: "One mould takes (g)", bare: "One mould takes", value: random.pick([65, 80, 95]) },
  });
  const stick = input(kit, sheet, place(2), {
    ...{ label: "Stick and bag (£)", bare: "Stick and bag", value: 0.06, format: "0.00" },
  });
  let row = 4;
  for (const made of kit.make(3)) {
    const ours = called(made, { sugar: "granulated sugar", water: "tap water" });
    row = lolly(kit, sheet, ours, row, { mould, stick });
  }
  note(kit, sheet, row, 0, "Sticks come from the cash and carry, 500 at a time.");
}

/** A shop on a campsite. */
export const campsites: readonly Layout[] = [
  { name: "campsite shop, lollies under one another", language: "en", build: campsite },
];
