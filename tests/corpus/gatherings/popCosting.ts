import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { absolute, say, sumOf } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { input } from "../page";
import { makeRecipe, type MadeRecipe } from "../recipes";
import { ALCOHOL, line, type StockRecipe } from "../stock";
import { ofAlcohol } from "../strollers/words";
import { pricesOf, weighed } from "./words";

const VOICE: Voice = {
  lead: "Sticker: contains",
  honey: "Sticker: honey, never for babies under 12 months.",
  alcohol: "Sticker: alcohol, 18 and over, not if pregnant or driving.",
  nuts: "Sticker: whole nuts, choking hazard under 5 years.",
  egg: "Sticker: raw egg yolk, so pasteurised yolk or heated to 71 °C.",
};

const WINE = {
  ...ALCOHOL,
  allergen: { en: "sulphites", de: "Sulfite" },
};

const POPS: readonly StockRecipe[] = [
  {
    ...{ en: "Gin and lime pop", de: "Gin-Limette am Stiel" },
    lines: [
      ...[line("water", "Wasser", 480), line("sugar", "Zucker", 150)],
      ...[line("lime juice", "Limettensaft", 90), line("gin 40 %", "Gin 40 %", 55, ALCOHOL)],
    ],
  },
  {
    ...{ en: "Peach and white wine pop", de: "Pfirsich-Wein am Stiel" },
    lines: [
      ...[line("peach", "Pfirsich", 380), line("white wine", "Weißwein", 150, WINE)],
      ...[line("water", "Wasser", 150), line("sugar", "Zucker", 120)],
    ],
  },
];

/** What was bought, and what a kilogram of it comes to; gives the block that is looked up. */
function bought(kit: Kit, mades: readonly MadeRecipe[]): string {
  const sheet = addSheet(kit.marked.book, "Receipts");
  put(sheet, 0, 0, "What we paid, from the receipts in the tin");
  const heads = putRow(sheet, 2, 0, ["Bought", "Paid £", "Holds kg", "£ a kg", "Where"]);
  const rows = [...pricesOf(kit, mades)].map(([item, price], index) => {
    const holds = kit.random.pick([0.5, 1, 1.5, 3]);
    const paid = Number((price * holds).toFixed(2));
    const shop =
      item === "water" ? "tap" : kit.random.pick(["market", "wholesaler", "corner shop"]);
    return putRow(sheet, 3 + index, 0, [item, shown(paid, "0.00"), holds, undefined, shop]);
  });
  beside(
    kit,
    heads[3]!,
    rows.map(([item]) => item!),
    {
      ...{ sheet, format: "0.00" },
      content: (spot) => `=${a1({ ...spot, column: 1 })}/${a1({ ...spot, column: 2 })}`,
    },
  );
  return `Receipts!${absolute(span([rows[0]![0]!, rows.at(-1)![3]!]))}`;
}

/** From the batch to the stick; under the list. */
function perStick(kit: Kit, sheet: CorpusSheet, total: Spot, cost: Spot, row: number): void {
  const line = (step: number, label: string, content: ReturnType<typeof shown>): Spot =>
    putRow(sheet, row + step, 0, [label, content])[1]!;
  const words = { label: "Mix in a mould, g", bare: "Mix in a mould", value: 80 };
  const stick = input(kit, sheet, { row, column: 0 }, words);
  const wood = line(1, "Stick and sleeve, £", shown(0.09, "0.00"));
  const sticks = line(2, "Sticks", shown(`=${a1(total)}/${a1(stick)}`, "0.0"));
  line(3, "Each, £", shown(`=${a1(cost)}/${a1(sticks)}+${a1(wood)}`, "0.00"));
}

/** One pop on its page. */
function pop(kit: Kit, made: MadeRecipe, index: number, block: string): void {
  const sheet = addSheet(kit.marked.book, `Pop ${index + 1}`);
  putRow(sheet, 0, 0, [made.title, undefined, undefined, "mixed the night before"]);
  const { recipe, heads, names, amounts, end } = weighed(
    kit,
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["Goes in", "Grams", "£ a kg", "£"],
      cells: (name, grams) => [name, grams],
      ...{ name: 0, amount: 1, unit: "g", total: "Jug" },
    },
  );
  const prices = beside(kit, heads[2]!, names, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=VLOOKUP(${a1(spot)},${block},4,FALSE)`,
  });
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, at) => `=${a1(spot)}/1000*${a1(prices[at]!)}`,
  });
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  perStick(kit, sheet, recipe.total!, cost, end + 2);
  const next = say(sheet, recipe, { row: 3, column: 5 }, [
    ...ofAlcohol(made, "Pure alcohol in the jug", "g"),
    { label: "Starts to freeze", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Down from water by", inCell: "K", states: "depression", as: "formula" },
    {
      label: "Water, juice and wine counted",
      inCell: "g",
      states: "water",
      as: "formula",
      format: "0",
    },
    {
      ...{ label: "Part of the water frozen at −20 °C", inCell: "%", states: "ice of water" },
      ...{ as: "typed", temperatureC: -20, decimals: 0 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "We want" });
  tellIn(sheet, recipe, { row: end + 7, column: 0 }, VOICE);
}

const DRINKS = [
  ["gin", 40],
  ["white wine", 12],
  ["elderflower liqueur", 20],
] as const;

/** How much alcohol the bottles bring, by mass. */
function bottles(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Bottles");
  put(sheet, 0, 0, "Alcohol by mass from the strength on the bottle");
  const heads = putRow(sheet, 2, 0, [
    "Bottle",
    "Strength, % vol",
    "Used last month, g",
    "Pure alcohol, g",
  ]);
  const rows = DRINKS.map(([name, strength], index) => {
    const [, abv, grams] = putRow(sheet, 3 + index, 0, [
      name,
      strength,
      kit.random.whole(12, 60) * 5,
    ]);
    const content = `=${a1(grams!)}*RIME.ABVTOMASSFRACTION(${a1(abv!)})`;
    return { abv: abv!, grams: grams!, alcohol: put(sheet, 3 + index, 3, shown(content, "0.0")) };
  });
  kit.marked.alcohols.push(...rows);
  const spots = rows.map(({ alcohol }) => alcohol);
  kit.marked.formulaColumns.push({ spots, heading: heads[3]!, fixed: [] });
  sumOf(kit, sheet, { row: 6, column: 3 }, spots, "0.0");
  put(sheet, 6, 0, "All bottles");
  note(kit, sheet, 8, 0, "The liqueur is only for brushing on; it goes in no mix.");
}

/** Pops for a summer market, what they cost and how strong they are. */
function popCosting(kit: Kit): void {
  const own = POPS.map((each) => makeRecipe(kit.random, "en", each));
  const mades = [...kit.make(2), ...own];
  const block = bought(kit, mades);
  mades.forEach((made, index) => pop(kit, made, index, block));
  bottles(kit);
}

/** Costings of pops. */
export const popCostings: readonly Layout[] = [
  { name: "market pops, receipts and cost of a stick", language: "en", build: popCosting },
];
