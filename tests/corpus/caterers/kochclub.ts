import {
  a1,
  addSheet,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute } from "../layouts/parts";
import { input } from "../page";
import { formulaColumn, perKilo, readings } from "../pilgrims/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf, upTo } from "../strollers/words";
import { alongRow, tellIn, type Voice } from "./words";

const VOICE: Voice = {
  lead: "drin:",
  honey: "Honig, nichts für Babys unter 12 Monaten.",
  alcohol: "Alkohol, nicht für Kinder, Schwangere und alle, die noch fahren.",
  nuts: "Ganze Nüsse, Kinder unter 5 Jahren könnten daran ersticken.",
  egg: "Rohes Eigelb, bitte bis 71 °C erhitzen oder pasteurisiertes nehmen.",
};

const PLANS: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula", format: "0.0" },
  { states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
  { states: "water", as: "typed", decimals: 0 },
];

const AFTER = [
  ...["alles (kg)", "Gefrierpunkt (°C)", "Wasser gefroren bei −18 °C (%)", "Wasser darin (g)"],
  ...[
    "kostet (€)",
    "Portionen",
    "je Portion (€)",
    "Truhe abends (°C)",
    "gedacht als",
    "Bitte sagen",
  ],
];

interface Table {
  readonly items: readonly Spot[];
  readonly prices: readonly Spot[];
  readonly heads: readonly Spot[];
  readonly amountLabel: Spot;
  readonly portion: Spot;
}

/** A recipe in its line; gives the cells that are worked out, and the reading. */
function line(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, row: number, table: Table): Spot[] {
  const { items, prices, heads, amountLabel, portion } = table;
  put(sheet, row, 0, made.title);
  const recipe = alongRow(kit, sheet, made, row, {
    items,
    unit: "kg",
    format: "0.000",
    amountLabel,
  });
  const left = recipe.total!.column;
  PLANS.forEach((plan, index) => {
    const place = { row, column: left + 1 + index };
    resultAt(sheet, recipe, heads[1 + index]!, place, plan, () => recipe.lines);
  });
  const money = `=SUMPRODUCT(${absolute(span(prices))},${span(recipe.all)})`;
  const cost = put(sheet, row, left + 4, shown(money, "0.00"));
  const count = `=${a1(recipe.total!)}*1000/${fixed(portion)}`;
  const portions = put(sheet, row, left + 5, shown(count, "0.0"));
  const each = put(sheet, row, left + 6, shown(`=${a1(cost)}/${a1(portions)}`, "0.00"));
  const chest = put(sheet, row, left + 7, shown(-kit.random.whole(31, 42) / 2, "0.0"));
  nameTarget(sheet, recipe, { row, column: left + 8 });
  tellIn(sheet, recipe, { row, column: left + 9 }, VOICE);
  return [cost, portions, each, chest];
}

/** What each thing costs, in the row under its name. */
function priceRow(
  kit: Kit,
  sheet: CorpusSheet,
  mades: readonly MadeRecipe[],
  items: readonly Spot[],
) {
  const english = new Map(
    mades.flatMap(({ lines, names }) => lines.map(({ en }, at) => [names[at]!, en] as const)),
  );
  put(sheet, 4, 0, "€ je kg");
  return itemsOf(mades).map((name, index) => {
    const price = shown(perKilo(kit, english.get(name)!), "0.00");
    return put(sheet, 4, items[index]!.column, price);
  });
}

/** One recipe a line in kilograms, prices over the columns. */
function kochclub(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Eis am Freitag");
  const amountLabel = put(sheet, 0, 0, "Kochclub, Eisrezepte, alle Mengen in kg");
  const words = { label: "Portion (g)", bare: "Portion", value: random.pick([80, 100, 120]) };
  const portion = input(kit, sheet, { row: 1, column: 0 }, words);
  const mades = kit.make(5).map((made) => called(upTo(made, 2000), { Wasser: "Leitungswasser" }));
  const names = itemsOf(mades);
  put(sheet, 3, 0, "Rezept");
  const items = putRow(sheet, 3, 1, names);
  const heads = putRow(sheet, 3, 1 + names.length, AFTER);
  const prices = priceRow(kit, sheet, mades, items);
  const table = { items, prices, heads, amountLabel, portion };
  const rows = mades.map((made, index) => line(kit, sheet, made, 5 + index, table));
  [[], [portion], []].forEach((cells, at) => {
    formulaColumn(kit, heads[4 + at]!, rows, at, cells);
  });
  readings(kit, heads[7]!, rows, 3);
  const end = 5 + rows.length;
  put(sheet, end, 0, "Kasse");
  const costs = columnOf(rows, 0);
  const spot = put(sheet, end, costs[0]!.column, shown(`=SUM(${span(costs)})`, "0.00"));
  marked.sums.push({ spot, parts: costs });
  note(kit, sheet, end + 2, 0, "Wer einkauft, bringt bitte den Bon mit.");
}

/** A club that cooks on Fridays. */
export const kochclubs: readonly Layout[] = [
  { name: "Kochclub, ein Rezept je Zeile mit Kosten je Portion", language: "de", build: kochclub },
];
