import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { itemsOf } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { table } from "./words";

const OWN = {
  sugar: "granulated sugar",
  "whole milk": "full-fat milk",
  "cream 35 % fat": "whipping cream 35 %",
  "skim milk powder": "skimmed milk powder",
};

const VOICE: Voice = {
  lead: "Contains",
  honey: "Honey in it: unsuitable for infants under 12 months.",
  alcohol: "Alcohol in it: no sale to under-18s; not if pregnant or driving.",
  nuts: "Whole nuts: may choke children under 5.",
  egg: "Raw egg yolk: pasteurised only, or hold the mix at 71 °C.",
};

/** Everything that is bought: the pack, what was paid for it, and what a kilogram comes to. */
function priceSheet(kit: Kit, mades: readonly MadeRecipe[]): string {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Bought in");
  put(sheet, 0, 0, "Wholesale, paid in spring");
  const lines = mades.flatMap(({ lines: all }) => all);
  const names = mades.flatMap((made) => made.names);
  const rows = itemsOf(mades).map((item) => {
    const pack = random.pick([1, 2.5, 5, 12.5, 25]);
    const price = usualPrice(random, lines[names.indexOf(item)]!.en);
    return [item, pack, shown(Number((pack * price).toFixed(2)), "0.00")];
  });
  const list = table(
    sheet,
    { row: 2, column: 0 },
    ["Item", "Pack (kg)", "Pack price (£)", "£ per kg"],
    rows,
  );
  beside(kit, list.heads[3]!, columnOf(list.rows, 1), {
    ...{ sheet, format: "0.00" },
    content: (pack) => `=${a1({ ...pack, column: 2 })}/${a1(pack)}`,
  });
  const [first, last] = [list.rows[0]![0]!, { ...list.rows.at(-1)![0]!, column: 3 }];
  return `'Bought in'!${absolute(span([first, last]))}`;
}

interface Section {
  readonly recipe: MarkedRecipe;
  readonly cost: Spot;
  readonly end: number;
}

/** One flavour of the costings page. */
function section(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, at: [number, string]): Section {
  const [row, prices] = at;
  put(sheet, row, 0, made.title.toUpperCase());
  const list = listed(
    sheet,
    made,
    { row: row + 1, column: 0 },
    {
      heads: ["Ingredients", "Batch, g", "£/kg", "£ in batch"],
      cells: (name, grams) => [name, grams],
    },
  );
  const { heads, names, amounts, end } = list;
  beside(kit, heads[2]!, names, {
    ...{ sheet, format: "0.00" },
    content: (name) => `=VLOOKUP(${a1(name)},${prices},4,FALSE)`,
  });
  const costs = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.00" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 2 })}`,
  });
  put(sheet, end, 0, "Batch");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  const cost = sumOf(kit, sheet, { row: end, column: 3 }, costs, "0.00");
  const cells = { names, amounts, amountLabel: heads[1]!, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 1, column: 0 }, [
    { label: "of which water (g)", states: "water", as: "formula", format: "0" },
    { label: "of which dissolved (g)", states: "dissolved", as: "typed", decimals: 0 },
  ]);
  return { recipe, cost, end: tellIn(sheet, recipe, { row: next, column: 0 }, VOICE) + 1 };
}

const HEADS = [
  ...["Flavour", "Batch (g)", "Batch (£)", "£ per 100 g"],
  ...["Freezing point (°C)", "Ice, % of the mix at −14 °C", "Aim"],
];

/** A line on the front page. */
function frontLine(sheet: CorpusSheet, row: number, { recipe, cost }: Section): Spot[] {
  const { made, total, names, amounts } = recipe;
  const from = (spot: Spot) => `Costings!${a1(spot)}`;
  const cells = putRow(sheet, row, 0, [
    ...[made.title, shown(`=${from(total!)}`, "0"), shown(`=${from(cost)}`, "0.00")],
    shown(`=C${row + 1}/B${row + 1}*100`, "0.00"),
  ]);
  const lines = () => `Costings!${span(names)},Costings!${span(amounts)}`;
  const heading = (column: number) => ({ sheet: sheet.name, row: 2, column });
  const point = { states: "freezing point", as: "formula", format: "0.0" } as const;
  resultAt(sheet, recipe, heading(4), { row, column: 4 }, point, lines);
  const ice = { states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 } as const;
  resultAt(sheet, recipe, heading(5), { row, column: 5 }, ice);
  nameTarget(sheet, recipe, { row, column: 6 });
  return cells;
}

/** The front page, the flavours below each other, and the prices. */
function shop(kit: Kit): void {
  const front = addSheet(kit.marked.book, "Front page");
  const sheet = addSheet(kit.marked.book, "Costings");
  const mades = kit.make(3).map((made) => called(made, OWN));
  const prices = priceSheet(kit, mades);
  put(sheet, 0, 0, "What each batch costs us");
  let row = 2;
  const sections = mades.map((made) => {
    const each = section(kit, sheet, made, [row, prices]);
    row = each.end + 1;
    return each;
  });
  put(front, 0, 0, "Scoop shop: costs at a glance");
  const heads = putRow(front, 2, 0, HEADS);
  const rows = sections.map((each, index) => frontLine(front, 3 + index, each));
  kit.marked.formulaColumns.push({ spots: columnOf(rows, 3), heading: heads[3]!, fixed: [] });
  put(front, 6, 0, "All three");
  sumOf(kit, front, { row: 6, column: 1 }, columnOf(rows, 1), "0");
  sumOf(kit, front, { row: 6, column: 2 }, columnOf(rows, 2), "0.00");
  note(kit, front, 8, 0, "Labour and rent are in the accountant's file.");
}

/** A scoop shop's costing book. */
export const scoopShops: readonly Layout[] = [
  { name: "scoop shop, costs at a glance before the sections", language: "en", build: shop },
];
