import { a1, addSheet, calledFrom, fixed, put, putRow, shown } from "../book";
import type { CorpusSheet, Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { namesOf } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { tellAt, told } from "./words";

/** Water is free, sugar cheap, nuts and spirits dear. */
function poundsFor({ random }: Kit, name: string): number {
  if (name === "water") return 0;
  if (/sugar|salt|milk|juice|cream|banana|coffee|puree/.test(name))
    return random.whole(80, 420) / 100;
  return random.whole(450, 1900) / 100;
}

/** What every ingredient cost, on the sheet that goes along to the shop. */
function shopping(kit: Kit, names: readonly string[]): Map<string, Spot> {
  const sheet = addSheet(kit.marked.book, "Shop");
  put(sheet, 0, 0, "Bought for the class, per kilo");
  putRow(sheet, 1, 0, ["£ per kg", "what", "where", "got it?"]);
  const prices = names.map((name, index) => {
    const pounds = poundsFor(kit, name);
    const where = name === "water" ? "tap" : kit.random.pick(["market", "corner shop", "mill"]);
    const tick = kit.random.pick(["yes", undefined]);
    const cells = [shown(pounds, "0.00"), name, where, tick];
    return [name, putRow(sheet, 2 + index, 0, cells)[0]!] as const;
  });
  note(kit, sheet, 4 + names.length, 0, "Keep the receipts for Marion.");
  return new Map(prices);
}

interface Table {
  readonly prices: ReadonlyMap<string, Spot>;
  readonly temperature: Spot;
  readonly temperatureC: number;
  readonly persons: Spot;
}

/** What is said of each, beside its list. */
const SAID: readonly Said[] = [
  { label: "Freezing starts (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "which is lower than water by (K)", states: "depression", as: "formula" },
  {
    ...{ label: "Sugars, % of the whole", states: "sugar share" },
    ...{ as: "typed", decimals: 1 },
  },
  {
    ...{ label: "Sugars for 100 g of water (g)", states: "sugar per 100 g water" },
    ...{ as: "formula", format: "0.0" },
  },
];

/** A list with its shares and costs, and beside it what is said of it. */
function ice(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, top: number, table: Table): number {
  const { prices, temperature, temperatureC, persons } = table;
  put(sheet, top, 0, made.title.toUpperCase());
  const list = listed(
    sheet,
    made,
    { row: top + 1, column: 0 },
    {
      heads: ["grams", "of", "share", "costs £"],
      cells: (name, grams) => [grams, name],
      name: 1,
      amount: 0,
    },
  );
  const { heads, names, amounts, end } = list;
  const total = sumOf(kit, sheet, { row: end, column: 0 }, amounts);
  put(sheet, end, 1, "altogether");
  const shares = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0%", fixed: [total] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}`,
  });
  sumOf(kit, sheet, { row: end, column: 2 }, shares, "0.0%");
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot, index) =>
      `=${a1(spot)}/1000*${calledFrom(spot, prices.get(made.names[index]!)!)}`,
  });
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const recipe: MarkedRecipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[0]!, total, alsoAmounts: shares },
  });
  const next = say(sheet, recipe, { row: top + 2, column: 5 }, [
    ...SAID,
    {
      ...{ label: "Water frozen at the box's temperature (%)", states: "ice of water" },
      ...{ as: "formula", format: "0", temperature, temperatureC },
    },
  ]);
  const each = shown(`=${a1(cost)}/${fixed(persons)}`, "0.00");
  const below = Math.max(next, end);
  putRow(sheet, below, 5, ["Each person owes (£)", each]);
  nameTarget(sheet, recipe, { row: below + 1, column: 5, label: "Aim" });
  tellAt(sheet, recipe, { row: end + 1, column: 0 }, told(made, "Tell people:"));
  return below + 3;
}

/** Two ices one below the other, to taste side by side. */
function compare(kit: Kit): void {
  const words = { sugar: "caster sugar", "lemon juice": "fresh lemon juice" };
  const mades = kit.make(2).map((made) => called(made, words));
  const sheet = addSheet(kit.marked.book, "Taste both");
  put(sheet, 0, 0, "Village hall, Thursdays 7 pm: two ices, why is one of them softer?");
  const temperatureC = kit.random.pick([-11, -14, -17]);
  const temperature = input(
    kit,
    sheet,
    { row: 1, column: 0 },
    {
      ...{ label: "Ice box (°C)", bare: "Ice box", value: temperatureC },
    },
  );
  const persons = putRow(sheet, 2, 0, ["People coming", kit.random.whole(7, 14)])[1]!;
  const prices = shopping(kit, namesOf(mades));
  const table = { prices, temperature, temperatureC, persons };
  const end = mades.reduce((top, made) => ice(kit, sheet, made, top, table) + 1, 4);
  note(kit, sheet, end, 0, "Write down which you would order again before looking at the numbers.");
}

/** An evening class in a village hall. */
export const twoIces: readonly Layout[] = [
  { name: "village hall class, two ices and the shop", language: "en", build: compare },
];
