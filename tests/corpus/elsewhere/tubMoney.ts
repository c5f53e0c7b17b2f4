import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { say, sumOf, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { ifAlcoholic, inEnglish, ownList, pricePerKilo, type OwnList } from "./words";

const saidOf = (made: MadeRecipe): readonly Said[] => [
  { label: "starts freezing at (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "all the water (g)", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "ice in the tub at −16 °C (%)", states: "ice of mix", as: "typed" },
    ...{ temperatureC: -16, decimals: 0 },
  },
  { label: "sugars, g to 100 g of water", states: "sugar per 100 g water", as: "typed" },
  ...ifAlcoholic(made, { label: "pure alcohol (g)", states: "alcohol", as: "typed", decimals: 1 }),
];

/** What goes into the pan and what it costs. */
function pan(kit: Kit, sheet: CorpusSheet, made: MadeRecipe): OwnList & { readonly cost: Spot } {
  const list = ownList(
    kit,
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["goes in", "g", "£ a kilo", "£ in this pan"],
      cells: (item, grams, index) => [
        ...[item, grams, shown(pricePerKilo(kit, made, index), "0.00")],
      ],
      ...{ name: 0, amount: 1, unit: "g", total: "one pan" },
    },
  );
  const costs = beside(kit, list.heads[3]!, list.amounts, {
    ...{ sheet, format: "0.000" },
    content: (spot) => `=${a1(spot)}/1000*${a1({ ...spot, column: 2 })}`,
  });
  return { ...list, cost: sumOf(kit, sheet, { row: list.end, column: 3 }, costs, "0.00") };
}

const EXTRAS: readonly (readonly [string, number, number])[] = [
  ["pitch for the day", 18, 30],
  ["petrol", 6, 14],
  ["dry cups and spoons", 4, 9],
  ["card reader", 2, 5],
];

/** The stall's day at the right: what it costs, and how cold the box stayed. */
function day(kit: Kit, sheet: CorpusSheet): Spot {
  const { random } = kit;
  put(sheet, 3, 5, "Saturday, whatever I sell");
  const paid = EXTRAS.map(([what, from, to], index) => {
    put(sheet, 4 + index, 5, what);
    return put(sheet, 4 + index, 6, shown(random.whole(2 * from, 2 * to) / 2, "0.00"));
  });
  put(sheet, 8, 5, "before the first tub (£)");
  const total = sumOf(kit, sheet, { row: 8, column: 6 }, paid, "0.00");
  const [, heading] = putRow(sheet, 10, 5, ["cool box", "°C"]);
  const hours = ["9:30", "11", "12:30", "2 pm", "3:30"].map((hour, index) =>
    putRow(sheet, 11 + index, 5, [hour, -random.whole(30, 38) / 2]),
  );
  temperatures(kit, heading!, columnOf(hours, 1));
  return total;
}

/** What a tub has to cost. */
function tubs(kit: Kit): void {
  const made = called(kit.make(1)[0]!, { sugar: "caster sugar" });
  const sheet = addSheet(kit.marked.book, "Sheet1");
  put(sheet, 0, 0, `${made.title}: what must I charge?`);
  const words = { label: "a tub is filled with (g)", bare: "a tub is filled with" };
  const value = kit.random.pick([80, 100, 120]);
  const fill = input(kit, sheet, { row: 1, column: 0 }, { ...words, value });
  const list = pan(kit, sheet, made);
  const standing = day(kit, sheet);
  const { end, recipe, total, cost } = list;
  const line = (row: number, label: string, formula: string, format: string): Spot =>
    putRow(sheet, row, 0, [label, shown(formula, format)])[1]!;
  const number = line(end + 2, "tubs in a pan", `=${a1(total)}/${fixed(fill)}`, "0.0");
  const inside = line(end + 3, "contents of a tub (£)", `=${a1(cost)}/${a1(number)}`, "0.00");
  const sold = putRow(sheet, end + 4, 0, ["tubs sold on a good day", 60])[1]!;
  line(end + 5, "with the day on top (£)", `=${a1(inside)}+${a1(standing)}/${a1(sold)}`, "0.00");
  const next = say(sheet, recipe, { row: end + 7, column: 0 }, saidOf(made));
  nameTarget(sheet, recipe, { row: next, column: 0, label: "meant as" });
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, inEnglish("Contains:"));
  note(kit, sheet, next + 3, 0, "ask Aunt Jo for the second cool box");
}

/** A stall on Saturdays. */
export const tubMoney: readonly Layout[] = [
  { name: "Saturday stall, what a tub must cost", language: "en", build: tubs },
];
