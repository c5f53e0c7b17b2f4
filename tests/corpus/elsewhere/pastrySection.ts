import { a1, addSheet, fixed, put, putRow, type CorpusSheet, type Spot } from "../book";
import { tellIn } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf, perKilogram } from "../kitchens/hand";
import { say, sumOf, type Said } from "../layouts/parts";
import { beside } from "../newcomers/words";
import { input } from "../page";
import { temperatures } from "../strollers/words";
import { inEnglish, ownList } from "./words";

const saidFor = (served: Spot, temperatureC: number): readonly Said[] => [
  { label: "FP of the mix", inCell: "°C", states: "freezing point", as: "formula" },
  { label: "below water by", inCell: "K", states: "depression", as: "formula" },
  { label: "dissolved solids in the kilo", inCell: "g", states: "dissolved", as: "typed" },
  {
    ...{ label: "water frozen when we plate it", inCell: "%", states: "ice of water" },
    ...{ as: "formula", temperature: served, temperatureC, format: "0" },
  },
];

const STEPS: readonly (readonly [string, number, number])[] = [
  ["into the machine", 4, 4],
  ["drawn", -7, -5],
  ["blast chilled", -24, -19],
  ["drawer, lunch", -15, -12],
  ["drawer, dinner", -15, -12],
];

/** How cold the batch was at each step. */
function coldChain(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { random } = kit;
  const heads = putRow(sheet, row, 6, ["Step", "Core temp. °C", "Checked by"]);
  const rows = STEPS.map(([step, from, to], index) =>
    putRow(sheet, row + 1 + index, 6, [
      ...[step, random.whole(from, to), random.pick(["PS", "KL", "sous"])],
    ]),
  );
  temperatures(kit, heads[1]!, columnOf(rows.slice(1), 1));
}

/** A kilo of mix and the same for tonight's covers. */
function prep(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Ice prep");
  const made = called(perKilogram(kit.make(1)[0]!), { "whole milk": "full-fat milk" });
  put(sheet, 0, 0, `PASTRY / ${made.title.toUpperCase()}`);
  const place = (row: number) => ({ row, column: 0 });
  const plate = input(kit, sheet, place(1), {
    ...{ label: "Plated at (°C)", bare: "Plated at", value: random.pick([-11, -12, -14]) },
  });
  const covers = input(kit, sheet, place(2), {
    ...{ label: "Mix for tonight (kg)", bare: "Mix for tonight", value: random.pick([2.5, 4, 6]) },
  });
  const list = ownList(kit, sheet, made, place(5), {
    heads: ["per kg", undefined, "what", "tonight, g", "weighed ✓"],
    cells: (item, grams) => [grams, "g", item],
    ...{ name: 2, amount: 0, units: 1, unit: "g", total: "all together" },
    also: ({ heads, amounts }) =>
      beside(kit, heads[3]!, amounts, {
        ...{ sheet, format: "0", fixed: [covers] },
        content: (spot) => `=${a1(spot)}*${fixed(covers)}`,
      }),
  });
  const { recipe, end } = list;
  put(sheet, end, 1, "g");
  sumOf(kit, sheet, { row: end, column: 3 }, recipe.alsoAmounts, "0");
  const temperatureC = Number(sheet.cells[plate.row]![plate.column]!.content);
  const next = say(sheet, recipe, { row: 1, column: 6 }, saidFor(plate, temperatureC));
  coldChain(kit, sheet, next + 2);
  const bottom = Math.max(end + 2, next + 10);
  nameTarget(sheet, recipe, { row: bottom, column: 0, label: "texture asked for" });
  tellIn(sheet, recipe, { row: bottom + 1, column: 0 }, inEnglish("Tell the floor – contains"));
  note(kit, sheet, bottom + 3, 0, "label the tub with today's date and your initials");
}

/** The pastry section of a restaurant. */
export const pastrySection: readonly Layout[] = [
  { name: "pastry section, prep sheet by the kilo", language: "en", build: prep },
];
