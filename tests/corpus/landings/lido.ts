import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { ofAlcohol, upTo } from "../strollers/words";
import { priceList } from "./words";

const VOICE: Voice = {
  lead: "Card at the hatch: contains",
  honey: "Honey in it, not for babies under 12 months.",
  alcohol: "Alcohol in it: over-18s only, not if pregnant, not before driving.",
  nuts: "Nuts are whole: choking risk for under-5s.",
  egg: "Raw yolk: take the mix to 71 °C, or use the pasteurised ones.",
};

const FACTS: readonly Said[] = [
  { label: "First ice at", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "Water, fruit and milk included",
    inCell: "g",
    states: "water",
    as: "formula",
    format: "0",
  },
  { label: "Dissolved stuff", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Of the water, frozen at −14 °C", inCell: "%" },
    ...{ states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  },
];

interface Tub {
  readonly recipe: MarkedRecipe;
  readonly total: Spot;
  readonly cost: Spot;
}

/** What goes in and what each thing costs, the price looked up. */
function goesIn(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, prices: string): Tub {
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Goes in", "g", "£ a kilo", "£", "Done"],
      cells: (item, grams) => [item, grams],
    },
  );
  const { heads, names, amounts, end } = list;
  beside(kit, heads[2]!, names, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=VLOOKUP(${a1(spot)},${prices},2,FALSE)`,
  });
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 2 })}`,
  });
  put(sheet, end, 0, "All of it");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const lines = { names, amounts, total, amountLabel: heads[1]!, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, lines), total, cost };
}

/** From the tub to the scoop over the counter, right of the list. */
function scoops(kit: Kit, sheet: CorpusSheet, { total, cost }: Tub): void {
  const { random } = kit;
  const at = (row: number) => ({ row, column: 6 });
  const scoop = input(kit, sheet, at(3), {
    ...{ label: "One scoop (g)", bare: "One scoop", value: random.pick([55, 60, 65]) },
  });
  const cone = putRow(sheet, 4, 6, [
    "Cone and napkin (£)",
    shown(random.whole(9, 16) / 100, "0.00"),
  ]);
  const asked = putRow(sheet, 5, 6, [
    "On the board (£)",
    shown(random.pick([1.8, 2, 2.2]), "0.00"),
  ]);
  const count = putRow(sheet, 6, 6, ["Scoops in a tub", shown(`=${a1(total)}/${a1(scoop)}`, "0")]);
  const each = `=${a1(cost)}/${a1(count[1]!)}+${a1(cone[1]!)}`;
  const costs = putRow(sheet, 7, 6, ["Costs us (£)", shown(each, "0.00")]);
  const kept = `=${a1(asked[1]!)}-${a1(costs[1]!)}`;
  putRow(sheet, 8, 6, ["Keeps the lido open (£)", shown(kept, "0.00")]);
}

/** One tub with its price list on the next sheet. */
function lido(kit: Kit): void {
  const [first] = kit.make(1);
  const made = called(upTo(first!, 2500), {
    sugar: "granulated sugar",
    "lemon juice": "fresh lemon juice",
  });
  const sheet = addSheet(kit.marked.book, "Tub");
  const bought = addSheet(kit.marked.book, "What we pay");
  put(bought, 0, 0, "Cash and carry, read off the receipts");
  const prices = priceList(
    kit,
    bought,
    { row: 2, column: 0 },
    {
      ...{ mades: [made], heads: ["What", "£/kg", "Receipt from"] },
      more: () => [`${kit.random.whole(1, 28)} ${kit.random.pick(["April", "May", "June"])}`],
    },
  );
  put(sheet, 0, 0, made.title);
  put(sheet, 1, 0, "One tub for the hatch");
  const tub = goesIn(kit, sheet, made, prices.table);
  scoops(kit, sheet, tub);
  const { recipe, total } = tub;
  const facts = [...FACTS, ...ofAlcohol(made, "Alcohol, pure", "g")];
  const next = say(sheet, recipe, { row: total.row + 2, column: 0 }, facts);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Meant to be" });
  tellIn(sheet, recipe, { row: next + 2, column: 0 }, VOICE);
  note(kit, sheet, next + 4, 0, "Hot weekends: make two, the second goes in the chest freezer.");
}

/** A café at an outdoor pool. */
export const lidos: readonly Layout[] = [
  { name: "lido hatch, one tub and what we pay", language: "en", build: lido },
];
