import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { called } from "../kitchens/hand";
import type { MadeRecipe } from "../recipes";
import { ALCOHOL } from "../stock";
import { pounds } from "./prices";
import { desk, down, linesOn, tellBehind } from "./desk";

const SHOPS = ["market", "corner shop", "cash and carry", "farm gate"];

const GUESTS = 2;
const SCOOP = 3;

const HEADS = ["Shop", "£ per kg", "Item", "As tried (g)", "For the table (g)", "Spend (£)"];

interface Costed {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
}

/** Prices first, the recipe as it was tried, then the evening's weights and what they cost. */
function shopping(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, table: readonly Spot[]): Costed {
  const [guests, scoop] = table as [Spot, Spot];
  const price = pounds(kit.random);
  const list = desk(kit, sheet, made, {
    heads: HEADS,
    cells: (index) => [
      made.names[index] === "tap water" ? "tap" : kit.random.pick(SHOPS),
      ...[shown(price(made, index), "0.00"), made.names[index], made.grams[index]],
    ],
    ...{ row: 6, column: 0, name: 2, amount: 3, sum: "Altogether" },
  });
  const { heads, amounts, total, end } = list;
  const needed = down(kit, sheet, amounts, {
    ...{ heading: heads[4]!, end, format: "0", fixed: [guests, scoop, total] },
    formula: (cell) => `=${cell}*${fixed(guests)}*${fixed(scoop)}/${fixed(total)}`,
  });
  const spend = down(kit, sheet, needed, {
    ...{ heading: heads[5]!, format: "0.00" },
    formula: (cell) => `=${cell}/1000*${cell.replace("E", "B")}`,
  });
  const cost = sumOf(kit, sheet, { row: end, column: 5 }, spend, "0.00");
  const lines = { ...linesOn(list), alsoAmounts: needed, unit: "g" } as const;
  return { recipe: markRecipe(kit, made, lines), cost };
}

/** What the course costs a guest; gives the next free row. */
function perGuest(sheet: CorpusSheet, { cost }: Costed, guests: Spot, charge: number): number {
  const line = (step: number, label: string, content: number | string, format: string): Spot => {
    put(sheet, cost.row + step, 2, label);
    return put(sheet, cost.row + step, 5, shown(content, format));
  };
  const ice = line(2, "Ice for each guest (£)", `=${a1(cost)}/${a1(guests)}`, "0.00");
  const garnish = line(3, "Mint and berries for each guest (£)", 0.35, "0.00");
  const both = line(4, "Course for each guest (£)", `=${a1(ice)}+${a1(garnish)}`, "0.00");
  const paid = line(5, "Each guest pays for it (£)", charge, "0.00");
  line(6, "Share of it that is ingredients", `=${a1(both)}/${a1(paid)}`, "0%");
  return cost.row + 8;
}

const FACTS: readonly Said[] = [
  { label: "First ice forms at (°C)", states: "freezing point", as: "formula" },
  { label: "Sugar by weight (%)", states: "sugar share", as: "typed" },
  { label: "Water, fruit and milk included (g)", states: "water", as: "typed", decimals: 0 },
  {
    label: "Ice in the scoop at −14 °C (% of its weight)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  },
];

const STRONG: Said = {
  ...{ label: "Alcohol in the batch as tried (g)", states: "alcohol", as: "typed", decimals: 1 },
};

/** What the ice course of a supper club costs. */
function supper(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Ice course");
  const made = called(kit.make(1)[0]!, { water: "tap water", sugar: "caster sugar" });
  put(sheet, 0, 0, "Supper club in the barn, third course");
  put(sheet, 1, 0, made.title);
  const guests = putRow(sheet, GUESTS, 0, ["Guests", random.whole(9, 16) * 2])[1]!;
  const words = { label: "Scoop on the plate (g)", bare: "Scoop on the plate" };
  const value = random.pick([55, 65, 75]);
  const scoop = input(kit, sheet, { row: SCOOP, column: 0 }, { ...words, value });
  const costed = shopping(kit, sheet, made, [guests, scoop]);
  const next = perGuest(sheet, costed, guests, random.whole(8, 14) / 2);
  const isStrong = made.lines.some(({ caution }) => caution === ALCOHOL.caution);
  const facts = isStrong ? [...FACTS, STRONG] : FACTS;
  const told = say(sheet, costed.recipe, { row: 6, column: 7 }, facts);
  nameTarget(sheet, costed.recipe, { row: told, column: 7, label: "I want it" });
  const free = tellBehind(sheet, costed.recipe, { row: next, column: 0 }, "On the menu: has");
  note(kit, sheet, free + 1, 0, "Plates in the freezer from six.");
}

/** Costing of a cook. */
export const suppers: readonly Layout[] = [
  { name: "supper club, what the ice course costs a guest", language: "en", build: supper },
];
