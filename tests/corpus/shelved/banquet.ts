import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { putList } from "./lists";
import { tableAt, thermometers, worked } from "./words";

const VOICE: Voice = {
  lead: "ALLERGENS:",
  honey: "HONEY: no babies under 12 months.",
  alcohol: "ALCOHOL: no children, no pregnant guests, no drivers.",
  nuts: "WHOLE NUTS: choking hazard, no under-5s.",
  egg: "RAW YOLK: take to 71 °C, or use the pasteurised carton.",
};

const ROSTER = [
  ["Section", "Early", "Late", "Hours"],
  ["Ices", "KP", "BR", 15.5],
  ["Plating", "LM", "KP", 14],
  ["Wash", "TS", "TS", 11],
] as const;

const SAID: readonly Said[] = [
  { label: "starts freezing, °C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "solids in solution, g for 10", states: "dissolved", as: "typed", decimals: 0 },
  { label: "water, g for 10", states: "water", as: "formula", format: "0" },
];

interface Order {
  readonly covers: Spot;
  readonly cabinet: Spot;
}

/** What is asked of tonight, top right. */
function order(kit: Kit, sheet: CorpusSheet): Order {
  // What is counted has no unit that could be forgotten.
  const guests = kit.random.pick([80, 120, 140, 180]);
  const [, covers] = putRow(sheet, 1, 5, ["Covers tonight (guests)", guests]) as [Spot, Spot];
  const [label, cabinet] = putRow(sheet, 2, 5, ["Plating freezer (°C)", -15]) as [Spot, Spot];
  kit.marked.inputs.push({ label, value: cabinet, bare: "Plating freezer" });
  return { covers, cabinet };
}

/** One course: tonight's grams left, the name in the middle, the ten covers right. */
function course(kit: Kit, index: number): void {
  const title = ["Pre-dessert", "Dessert"][index]!;
  const sheet = addSheet(kit.marked.book, title);
  const made = called(kit.make(1)[0]!, { sugar: "caster sugar" });
  put(sheet, 0, 0, `${title}: ${made.title}`);
  const { covers, cabinet } = order(kit, sheet);
  const list = putList(sheet, made, {
    ...{ row: 3, column: 0, name: 1, amount: 2 },
    heads: ["Tonight (g)", "Item", "10 covers (g)"],
    cells: (item, grams) => [undefined, item, grams],
  });
  const { amounts, names, heads, end } = list;
  const tonight = amounts.map((spot) =>
    put(sheet, spot.row, 0, shown(`=${a1(spot)}/10*${fixed(covers)}`, "#,##0")),
  );
  worked(kit, heads[0]!, tonight, [covers]);
  sumOf(kit, sheet, { row: end, column: 0 }, tonight, "#,##0");
  put(sheet, end, 1, "in the tub");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: tonight, total, amountLabel: heads[2]!, unit: "g" },
  });
  const frozen: Said = {
    ...{ label: "water frozen when plated, %", states: "ice of water", as: "formula" },
    ...{ format: "0", temperature: cabinet, temperatureC: -15 },
  };
  const next = say(sheet, recipe, { row: 5, column: 5 }, [...SAID, frozen]);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "chef wants" });
  tellIn(sheet, recipe, { row: end + 2, column: 0 }, VOICE);
}

/** Two courses of a banquet, the roster and the fridges. */
function banquet(kit: Kit): void {
  course(kit, 0);
  course(kit, 1);
  const sheet = addSheet(kit.marked.book, "Team and fridges");
  put(sheet, 0, 0, "Ballroom, Saturday");
  const rows = tableAt(sheet, { row: 2, column: 0 }, ROSTER);
  put(sheet, 6, 0, "Hours to pay");
  sumOf(kit, sheet, { row: 6, column: 3 }, columnOf(rows.slice(1), 3));
  thermometers(
    kit,
    sheet,
    { row: 2, column: 6 },
    {
      heads: ["Freezer check", "before service (°C)", "after service (°C)"],
      lines: ["walk-in", "plating", "under the pass"],
      ...{ from: -21, to: -14 },
    },
  );
  note(kit, sheet, 9, 0, "Spare spoons are in the dry store, second shelf.");
}

/** A hotel that does banquets. */
export const banquets: readonly Layout[] = [
  { name: "hotel banquet, grams for ten covers and for tonight", language: "en", build: banquet },
];
