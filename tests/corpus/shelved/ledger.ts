import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { upTo } from "../strollers/words";
import { usualPrice } from "../unseen/shared";
import { putList } from "./lists";
import { readings, worked } from "./words";

const VOICE: Voice = {
  lead: "Pack must say: contains",
  honey: "Honey, unsuitable for infants under 12 months.",
  alcohol: "Contains alcohol, adults only, not when pregnant or driving.",
  nuts: "Whole nuts, choking hazard for children under 5.",
  egg: "Raw egg yolk, heated to 71 °C or bought pasteurised.",
};

const LEDGER = ["Batch", "Weighed", "kg", "$/kg", "$", "Lot no.", "By"];

const BOARD = [
  ...["Batch", "Flavor", "Out (kg)", "Materials ($)", "Per kg ($)", "Draw temp. (°C)"],
  ...["FP (°C)", "ΔT (K)", "Ice, % of mix, −18 °C", "Alcohol (g)", "Style", "Pack text"],
];

interface Batch {
  readonly code: string;
  readonly recipe: MarkedRecipe;
  readonly costs: readonly Spot[];
}

/** A batch's lines in the ledger: no title and no sum, the code says whose they are. */
function enter(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  plan: { readonly code: string; readonly row: number },
) {
  const { random } = kit;
  const price = (at: number) => Number(usualPrice(random, made.lines[at]!.en).toFixed(2));
  const list = putList(sheet, made, {
    ...{ row: plan.row, column: 0, name: 1, amount: 2 },
    cells: (item, grams, at) => [
      ...[plan.code, item, shown(inUnit(grams, "kg"), "0.000"), shown(price(at), "0.00")],
      ...[undefined, `${random.pick(["A", "C", "F"])}${random.whole(1000, 9999)}`],
      random.pick(["dj", "ro"]),
    ],
  });
  const costs = list.amounts.map((spot) =>
    put(sheet, spot.row, 4, shown(`=${a1(spot)}*${a1({ ...spot, column: 3 })}`, "0.00")),
  );
  return { ...list, costs };
}

const PLANS: readonly (readonly [column: number, plan: ResultPlan])[] = [
  [6, { states: "freezing point", as: "formula", format: "0.0" }],
  [7, { states: "depression", as: "typed" }],
  [8, { states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 }],
];

/** A batch's line of the board. */
function boardLine(
  kit: Kit,
  sheet: CorpusSheet,
  batch: Batch,
  row: number,
  heads: readonly Spot[],
) {
  const { code, recipe, costs } = batch;
  const there = (spots: readonly Spot[]) => `Ledger!${span(spots)}`;
  const [, , kilos, money] = putRow(sheet, row, 0, [
    ...[code, recipe.made.title, shown(`=SUM(${there(recipe.amounts)})`, "0.000")],
    shown(`=SUM(${there(costs)})`, "0.00"),
  ]) as [Spot, Spot, Spot, Spot];
  const each = put(sheet, row, 4, shown(`=${a1(money)}/${a1(kilos)}`, "0.00"));
  const draw = put(sheet, row, 5, shown(-kit.random.whole(51, 69) / 10, "0.0"));
  const lines = `${there(recipe.names)},${there(recipe.amounts)}`;
  const alcohol: ResultPlan = { states: "alcohol", as: "typed", decimals: 0 };
  const hasSpirit = /vodka/.test(recipe.made.names.join());
  for (const [column, plan] of hasSpirit ? [...PLANS, [9, alcohol] as const] : PLANS) {
    resultAt(sheet, recipe, heads[column]!, { row, column }, plan, () => lines);
  }
  if (recipe.made.target !== null) recipe.targets.push(put(sheet, row, 10, recipe.made.target));
  tellIn(sheet, recipe, { row, column: 11 }, VOICE);
  return [kilos, money, each, draw] as const;
}

/** One long ledger of all that was weighed; the board with a line for each batch. */
function production(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Ledger");
  const heads = putRow(sheet, 0, 0, LEDGER);
  let row = 1;
  const batches = kit.make(4).map((given, at): Batch => {
    const made = called(upTo(given, 9000), { sugar: "granulated sugar", water: "tap water" });
    const code = `30${at + 1}-${"ABCD"[at]!}`;
    const { names, amounts, costs, end } = enter(kit, sheet, made, { code, row });
    row = end;
    const recipe = markRecipe(kit, made, { names, amounts, amountLabel: heads[2]!, unit: "kg" });
    return { code, recipe, costs };
  });
  worked(
    kit,
    heads[4]!,
    batches.flatMap(({ costs }) => costs),
  );
  const board = addSheet(kit.marked.book, "Board");
  const tops = putRow(board, 1, 0, BOARD);
  const lines = batches.map((batch, at) => boardLine(kit, board, batch, 2 + at, tops));
  worked(
    kit,
    tops[4]!,
    lines.map(([, , each]) => each),
  );
  readings(
    kit,
    tops[5]!,
    lines.map(([, , , draw]) => draw),
  );
  put(board, 7, 1, "Month to date");
  sumOf(
    kit,
    board,
    { row: 7, column: 2 },
    lines.map(([kilos]) => kilos),
    "0.000",
  );
  sumOf(
    kit,
    board,
    { row: 7, column: 3 },
    lines.map(([, money]) => money),
    "0.00",
  );
  note(kit, board, 9, 1, "Labels for the new tubs arrive on the 14th.");
}

/** A small maker who writes down every weighing. */
export const ledgers: readonly Layout[] = [
  { name: "small maker, weighing ledger and batch board", language: "en", build: production },
];
