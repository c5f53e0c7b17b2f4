import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { alongRow, tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { absolute, sumOf } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { itemsOf, temperatures } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { banner, beyond, OURS } from "./words";

const FIRST = 3;

const ASKED: readonly (readonly [string, ResultPlan])[] = [
  ["fp °C", { states: "freezing point", as: "formula", format: "0.00" }],
  ["water g", { states: "water", as: "formula", format: "0" }],
  ["solids dissolved g", { states: "dissolved", as: "typed", decimals: 0 }],
  [
    "ice at −12 °C, % of the mix",
    { states: "ice of mix", as: "typed", temperatureC: -12, decimals: 0 },
  ],
];

const OTHERS = ["materials £", "last core °C", "texture we want", "tell the customer"];

interface Register {
  readonly sheet: CorpusSheet;
  readonly items: readonly Spot[];
  readonly amountLabel: Spot;
  readonly heads: readonly Spot[];
  readonly prices: readonly Spot[];
}

/** One mix in its row; gives what it costs and how cold it was last. */
function entry(kit: Kit, made: MadeRecipe, index: number, register: Register) {
  const { sheet, items, amountLabel, heads, prices } = register;
  const row = FIRST + index;
  putRow(sheet, row, 0, [`R${101 + index}`, made.title]);
  const recipe = alongRow(kit, sheet, made, row, { items, unit: "g", format: "0", amountLabel });
  ASKED.forEach(([, plan], at) => {
    const heading = heads[at + 1]!;
    resultAt(sheet, recipe, heading, beyond(heading, 1 + index, 0), plan, () => recipe.lines);
  });
  const [cost, core, texture, label] = heads.slice(-4).map(({ column }) => column);
  const paid = `=SUMPRODUCT(${span(recipe.all)},${absolute(span(prices))})/1000`;
  const costs = put(sheet, row, cost!, shown(paid, "0.00"));
  const read = put(sheet, row, core!, shown(-kit.random.whole(120, 180) / 10, "0.0"));
  nameTarget(sheet, recipe, { row, column: texture! });
  tellIn(sheet, recipe, { row, column: label! }, OURS);
  return [costs, read, ...recipe.all];
}

/** What a kilogram of each material costs, below the mixes. */
function priceRow(
  kit: Kit,
  sheet: CorpusSheet,
  mades: readonly MadeRecipe[],
  items: readonly Spot[],
): Spot[] {
  const row = FIRST + mades.length + 2;
  put(sheet, row, 1, "paid, £ per kg");
  const english = new Map(
    mades.flatMap(({ names, lines }) => names.map((name, at) => [name, lines[at]!.en] as const)),
  );
  return itemsOf(mades).map((name, index) => {
    const price = usualPrice(kit.random, english.get(name) ?? name);
    return put(sheet, row, items[index]!.column, shown(price, "0.00"));
  });
}

/** Six mixes, a row each; a column for each material. */
function mixRegister(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Register");
  const own = { sugar: "fine sugar", "whole milk": "whole milk 3.5 %", water: "drinking water" };
  const mades = kit.make(6).map((made) => called(perKilogram(made), own));
  const names = itemsOf(mades);
  const last = 1 + names.length;
  put(sheet, 0, 0, "Mix register, upstairs kitchen");
  const amountLabel = banner(sheet, 1, [2, last], "raw materials, g for a kilogram of mix");
  putRow(sheet, 2, 0, ["ref", "mix"]);
  const items = putRow(sheet, 2, 2, names);
  const heads = putRow(sheet, 2, last + 1, ["sum g", ...ASKED.map(([words]) => words), ...OTHERS]);
  banner(sheet, 1, [last + 2, last + 1 + ASKED.length], "worked out");
  const prices = priceRow(kit, sheet, mades, items);
  const register = { sheet, items, amountLabel, heads, prices };
  const rows = mades.map((made, index) => entry(kit, made, index, register));
  const heading = heads[5]!;
  kit.marked.formulaColumns.push({ spots: columnOf(rows, 0), heading, fixed: [] });
  temperatures(kit, heads[6]!, columnOf(rows, 1));
  const below = FIRST + mades.length;
  put(sheet, below, 1, "a kilo of each takes");
  items.forEach(({ column }, at) =>
    sumOf(kit, sheet, { row: below, column }, columnOf(rows, 2 + at), "0"),
  );
  note(kit, sheet, below + 4, 0, "Blank is nought. Ask before you add a column.");
}

/** Somebody who keeps every mix in one table. */
export const mixRegisters: readonly Layout[] = [
  { name: "mix register, a column for every raw material", language: "en", build: mixRegister },
];
