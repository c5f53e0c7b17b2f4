import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram, strip } from "../kitchens/hand";
import { sumOf, type Said } from "../layouts/parts";
import { inUnit } from "../list";
import { beside } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { temperatures } from "../strollers/words";
import { block, table, voice } from "./words";

const VOICE = voice(
  "ALLERGENS",
  "HONEY: not under 12 months.",
  "ALCOHOL: no children, no pregnancy, no driving after.",
  "WHOLE NUTS: choking, not under 5 years.",
  "RAW YOLK: 71 °C or pasteurised.",
);

const SAID: readonly Said[] = [
  { label: "FP °C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "FP lowered, K", states: "depression", as: "formula", format: "0.00" },
  { label: "Water g", states: "water", as: "typed", decimals: 0 },
  {
    label: "Ice % of mix at −14 °C",
    ...{ states: "ice of mix", as: "typed", temperatureC: -14, decimals: 0 },
  },
];

/** One mix of the week with its strip of values over it; gives the first row under it. */
function mix(kit: Kit, sheet: CorpusSheet, given: MadeRecipe, index: number): number {
  const made = called(perKilogram(given), { sugar: "sugar, white", "whole milk": "milk, whole" });
  const column = 6 * index;
  put(sheet, 2, column, `Mix ${index + 1}`);
  put(sheet, 2, column + 1, made.title);
  const { recipe, end } = block(
    kit,
    sheet,
    made,
    { row: 8, column },
    {
      heads: ["Raw material", "kg", "share"],
      cells: (item, grams) => [item, shown(inUnit(grams, "kg"), "0.000")],
      ...{ name: 0, amount: 1, unit: "kg", format: "0.000", word: "Check weight" },
      also: ({ heads, amounts, end: row }, total) => {
        const shares = beside(kit, heads[2]!, amounts, {
          ...{ sheet, format: "0.0%", fixed: [total!] },
          content: (spot) => `=${a1(spot)}/${fixed(total!)}`,
        });
        sumOf(kit, sheet, { row, column: column + 2 }, shares, "0.0%");
        return shares;
      },
    },
  );
  strip(sheet, recipe, { row: 4, column }, SAID);
  nameTarget(sheet, recipe, { row: 6, column, label: "Texture asked for" });
  return tellIn(sheet, recipe, { row: end + 1, column }, VOICE);
}

/** Marks for theory, and the walk-in as the duty apprentice read it. */
function register(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { random } = kit;
  const names = ["Callum", "Ines", "Precious", "Rhys", "Yusuf"];
  const mark = () => random.whole(11, 20);
  const [heads, ...rows] = table(sheet, { row, column: 0 }, [
    ["Apprentice", "Theory /20", "Bench /20", "out of 40"],
    ...names.map((name) => [name, mark(), mark()]),
  ]);
  beside(kit, heads![3]!, columnOf(rows, 1), {
    ...{ sheet, format: "0" },
    content: (spot) => `=${a1(spot)}+${a1({ ...spot, column: 2 })}`,
  });
  const days = ["Mon", "Tue", "Wed", "Thu", "Fri"];
  const cold = (from: number, to: number) => shown(-random.whole(from, to) / 2, "0.0");
  const [tops, ...readings] = table(sheet, { row, column: 6 }, [
    ["Duty", "Walk-in °C", "Blast °C"],
    ...days.map((day) => [day, cold(37, 42), cold(60, 68)]),
  ]);
  [1, 2].forEach((at) => temperatures(kit, tops![at]!, columnOf(readings, at)));
}

/** Two mixes of the week beside each other, marks and readings under them. */
function apprentices(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Wk 9");
  put(sheet, 0, 0, "Pastry L2, week 9: frozen desserts, 1 kg trial mixes");
  const ends = kit.make(2).map((made, index) => mix(kit, sheet, made, index));
  const row = Math.max(...ends) + 2;
  register(kit, sheet, row);
  putRow(sheet, row + 7, 0, ["Uniform check", "Thu 8.00"]);
  note(kit, sheet, row + 8, 0, "Rhys catches up on the bench test in week 10.");
}

/** A trainer of pastry apprentices. */
export const apprenticeSheets: readonly Layout[] = [
  {
    name: "pastry apprentices, two trial mixes and a register",
    language: "en",
    build: apprentices,
  },
];
