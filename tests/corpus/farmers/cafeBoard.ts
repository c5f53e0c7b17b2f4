import {
  a1,
  addSheet,
  calledFrom,
  fixed,
  put,
  putRow,
  shown,
  span,
  type CorpusSheet,
  type Spot,
} from "../book";
import { allergensOf, cautionsIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { input } from "../page";
import { beside } from "../newcomers/words";
import { resultAt, type ResultPlan } from "../results";
import { parted, table } from "./words";

const VOICE: Voice = {
  lead: "",
  honey: "Honey, no under-ones (12 months).",
  alcohol: "Alcohol: over 18s, not if pregnant or driving.",
  nuts: "Whole nuts, choking risk under 5 years.",
  egg: "Raw yolk, so custard to 71 °C or pasteurised yolk.",
};

const OWN = { sugar: "caster sugar", "cocoa powder": "cocoa", "brewed coffee": "filter coffee" };

/** All mixes in one long list, the flavour only at the first line of each. */
function longList(kit: Kit, sheet: CorpusSheet, mades: readonly MadeRecipe[]): MarkedRecipe[] {
  const heads = putRow(sheet, 0, 0, ["Flavour", "Goes in", "Gms", "Tub gms", "Bin no."]);
  let row = 1;
  return mades.map((made) => {
    put(sheet, row, 0, made.title);
    const lines = made.names.map((name, index) =>
      putRow(sheet, row++, 1, [name, made.grams[index], undefined, kit.random.whole(1, 28)]),
    );
    row += 1;
    const [names, amounts] = [0, 1].map((at) => lines.map((cells) => cells[at]!));
    const place = { row: amounts![0]!.row, column: 3 };
    const total = sumOf(kit, sheet, place, amounts!);
    const cells = { names: names!, amounts: amounts!, total, unit: "g" } as const;
    return markRecipe(kit, made, { ...cells, amountLabel: heads[2]! });
  });
}

const HEADS = [
  ...["On the board", "Single £", "Double £", "Tub weighs g", "Allergens", "Say at the till"],
  ...[
    "Freezes °C",
    "Depr. K",
    "Frozen water at −14 °C, %",
    "Mix that is ice at −14 °C, %",
    "Comes out as",
    "Scoops in it",
  ],
];

const PLANS: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula", format: "0.0" },
  { states: "depression", as: "formula" },
  { states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  { states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
];

/** A flavour's line on the board; gives the cell of its tub's weight. */
function boardLine(
  kit: Kit,
  sheet: CorpusSheet,
  recipe: MarkedRecipe,
  row: number,
  heads: readonly Spot[],
): Spot {
  const { made, names, amounts, total, flags } = recipe;
  const single = kit.random.whole(5, 7) / 2;
  const money = [single, single + 1.5].map((pounds) => shown(pounds, "0.00"));
  putRow(sheet, row, 0, [made.title, ...money]);
  const spot = put(sheet, row, 3, `=${calledFrom({ ...heads[0]!, row }, total!)}`);
  if (made.flagged) {
    const allergens = allergensOf(made);
    flags.push(put(sheet, row, 4, allergens === "" ? "none of the 14" : allergens));
    const cautions = cautionsIn(made, VOICE);
    if (cautions !== "") flags.push(put(sheet, row, 5, cautions));
  }
  const lines = `Mixes!${span(names)},Mixes!${span(amounts)}`;
  PLANS.forEach((plan, index) =>
    resultAt(sheet, recipe, heads[6 + index]!, { row, column: 6 + index }, plan, () => lines),
  );
  nameTarget(sheet, recipe, { row, column: 10 });
  return spot;
}

const HOURS = [
  ["Mon", "closed"],
  ["Tue to Fri", "10 to 4"],
  ["Sat", "9 to 5"],
  ["Sun", "10 to 3"],
];

/** The board first, the mixes behind it. */
function cafeBoard(kit: Kit): void {
  const board = addSheet(kit.marked.book, "Board");
  const mixes = addSheet(kit.marked.book, "Mixes");
  const mades = kit.make(4).map((made) => called(made, OWN));
  const recipes = longList(kit, mixes, mades);
  put(board, 0, 0, "Ice cream board, season 2");
  const heads = putRow(board, 2, 0, HEADS);
  const tubs = recipes.map((recipe, index) => boardLine(kit, board, recipe, 3 + index, heads));
  const end = 3 + tubs.length;
  const words = { label: "A scoop weighs g", bare: "A scoop weighs", value: 65 };
  const scoop = input(kit, board, { row: 1, column: 10 }, words);
  beside(kit, heads[11]!, tubs, {
    ...{ sheet: board, format: "0", fixed: [scoop] },
    content: (tub) => `=${a1(tub)}/${fixed(scoop)}`,
  });
  put(board, end, 0, "four tubs");
  const spot = put(board, end, 3, `=SUM(${span(tubs)})`);
  kit.marked.sums.push({ spot, parts: tubs });
  put(board, end + 2, 0, "Open");
  table(board, { row: end + 3, column: 0 }, HOURS);
  parted(
    kit,
    board,
    { row: end + 2, column: 3 },
    {
      heads: ["Sold by", "% of takings"],
      ...{ labels: ["single", "double", "take-home tub"], total: "all" },
    },
  );
  note(kit, board, end + 8, 0, "Chalk pens are in the drawer under the till, NOT the felt tips.");
}

/** A café's board. */
export const cafeBoards: readonly Layout[] = [
  { name: "Whitby café, board in front of one long list", language: "en", build: cafeBoard },
];
