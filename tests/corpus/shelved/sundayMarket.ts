import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import type { MadeRecipe } from "../recipes";
import { upTo } from "../strollers/words";
import { putList } from "./lists";
import { tableAt, thermometers, worked } from "./words";

const VOICE: Voice = {
  lead: "SIGN: contains",
  honey: "Honey, so not for under 12 months.",
  alcohol: "Boozy! The alcohol is not for children, mums-to-be or drivers.",
  nuts: "Whole nuts, choking hazard for under 5s.",
  egg: "Raw yolk, only from pasteurised or heated to 71 °C.",
};

const SAID: readonly Said[] = [
  { label: "FP", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "drop below 0", inCell: "K", states: "depression", as: "typed" },
  { label: "Solids dissolved", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  {
    ...{ label: "Ice share of the mix at −13 °C", inCell: "%" },
    ...{ states: "ice of mix", as: "typed", temperatureC: -13, decimals: 0 },
  },
];

/** A flavour's card: units in a row under the headings, the sum on top of the page. */
function card(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, left: number): MarkedRecipe {
  put(sheet, 1, left, made.title);
  const heads = putRow(sheet, 3, left, ["Ingredient", "Bowl", "Where from"]);
  putRow(sheet, 4, left, [undefined, "g"]);
  const list = putList(sheet, made, {
    ...{ row: 5, column: left, name: 0, amount: 1 },
    cells: (item, grams) => [
      item,
      grams,
      /water/.test(item) ? "tap" : kit.random.pick(["wholesaler", "cash & carry", "corner shop"]),
    ],
  });
  const { names, amounts, end } = list;
  put(sheet, 2, left, "Bowl weighs");
  const total = sumOf(kit, sheet, { row: 2, column: left + 1 }, amounts);
  put(sheet, 2, left + 2, "g");
  const cells = { names, amounts, total, amountLabel: heads[1]!, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  const next = say(sheet, recipe, { row: end + 1, column: left }, SAID);
  nameTarget(sheet, recipe, { row: next, column: left, label: "On the stall" });
  tellIn(sheet, recipe, { row: next + 1, column: left }, VOICE);
  return recipe;
}

/** What went out, what came back, what it brought. */
function takings(kit: Kit, sheet: CorpusSheet, titles: readonly string[]): void {
  put(sheet, 0, 0, "Sunday, harbour car park, pitch 14");
  const [heads, ...rows] = tableAt(sheet, { row: 2, column: 0 }, [
    ["Flavour", "Price (€)", "Tubs out", "Tubs back", "Sold", "Takings (€)"],
    ...titles.map((title) => {
      const out = kit.random.whole(24, 60);
      return [title, shown(kit.random.pick([3, 3.5, 4]), "0.00"), out, kit.random.whole(0, 9)];
    }),
  ]);
  const sold = rows.map(([, , out, back]) => put(sheet, out!.row, 4, `=${a1(out!)}-${a1(back!)}`));
  const money = sold.map((spot) =>
    put(sheet, spot.row, 5, shown(`=${a1(spot)}*${a1({ ...spot, column: 1 })}`, "0.00")),
  );
  const row = 3 + titles.length;
  put(sheet, row, 0, "Day");
  const columns: (readonly Spot[])[] = [columnOf(rows, 2), columnOf(rows, 3), sold];
  columns.forEach((parts, at) => sumOf(kit, sheet, { row, column: 2 + at }, parts));
  const all = sumOf(kit, sheet, { row, column: 5 }, money, "0.00");
  const [, pitch] = putRow(sheet, row + 2, 4, ["Pitch fee (€)", shown(38, "0.00")]);
  putRow(sheet, row + 3, 4, ["In the tin (€)", shown(`=${a1(all)}-${a1(pitch!)}`, "0.00")]);
  worked(kit, heads![4]!, sold);
  worked(kit, heads![5]!, money);
}

/** A market day: takings in front, cards of three flavours behind, cool boxes last. */
function market(kit: Kit): void {
  const own = { sugar: "granulated sugar", water: "cold water" };
  const mades = kit.make(3).map((made) => called(upTo(made, 3000), own));
  takings(
    kit,
    addSheet(kit.marked.book, "Sunday"),
    mades.map(({ title }) => title),
  );
  const sheet = addSheet(kit.marked.book, "Bowls");
  mades.forEach((made, at) => card(kit, sheet, made, 4 * at));
  const boxes = addSheet(kit.marked.book, "Boxes");
  thermometers(
    kit,
    boxes,
    { row: 1, column: 1 },
    {
      heads: ["Cool box", "packed °C", "10:00 °C", "14:00 °C"],
      lines: ["blue", "grey", "the old one"],
      ...{ from: -19, to: -11 },
    },
  );
  note(kit, boxes, 6, 1, "The old one leaks at the hinge, put dry ice in it.");
}

/** A seller at markets. */
export const sundayMarkets: readonly Layout[] = [
  { name: "Sunday market, takings and bowls", language: "en", build: market },
];
