import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { hundred } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { degrees, table } from "./words";

const VOICE: Voice = {
  lead: "Sign on the counter: contains",
  honey: "Made with honey, do not give it to babies under 12 months.",
  alcohol: "Contains alcohol: wristband 18+ only, not if pregnant, not before driving home.",
  nuts: "Whole nuts in it: under-fives can choke.",
  egg: "Raw egg yolk: heat the mix to 71 °C or use pasteurised.",
};

/** What is worked out of it, the ice at the temperature of the chest. */
const saidOf = (chest: Spot, temperatureC: number): readonly Said[] => [
  { label: "Sets from", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Water in 100 g", inCell: "g", states: "water", as: "typed", decimals: 1 },
  { label: "Dissolved in 100 g", inCell: "g", states: "dissolved", as: "typed", decimals: 1 },
  {
    ...{ label: "Water turned to ice in the chest", inCell: "%", format: "0" },
    ...{ states: "ice of water", as: "formula", temperature: chest, temperatureC },
  },
];

interface Stall {
  readonly bucket: Spot;
  readonly chest: Spot;
  readonly chestC: number;
}

/** The recipe in per cent, and what one bucket takes of it. */
function bucketOf(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, stall: Stall): MarkedRecipe {
  const { bucket, chest, chestC } = stall;
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 6, column: 1 },
    {
      heads: ["Per bucket (g)", "Stuff", "Per cent"],
      cells: (name, percent) => [undefined, name, shown(percent, "0.0")],
      ...{ name: 1, amount: 2 },
    },
  );
  const grams = beside(kit, heads[0]!, amounts, {
    ...{ sheet, format: "0", fixed: [bucket] },
    content: (spot) => `=${fixed(bucket)}*1000*${a1(spot)}/100`,
  });
  sumOf(kit, sheet, { row: end, column: 1 }, grams, "0");
  put(sheet, end, 2, "all");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts, "0.0");
  kit.marked.numberColumns.push({ spots: amounts, heading: heads[2]!, total, kind: "per cent" });
  const cells = { names, amounts, alsoAmounts: grams, unit: "%", total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[2]! });
  const next = say(sheet, recipe, { row: 6, column: 5 }, saidOf(chest, chestC));
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Sold as" });
  tellIn(sheet, recipe, { row: end + 1, column: 1 }, VOICE);
  return recipe;
}

/** Four days of festival: what was mixed, sold and thrown away. */
function days(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { random, marked } = kit;
  const { heads, rows } = table(
    sheet,
    { row, column: 1 },
    ["Day", "Headliner at", "Shift", "Cups out", "Cups back broken", "Noon, shade (°C)", "Sold"],
    ["Thursday", "Friday", "Saturday", "Sunday"].map((day, index) => [
      ...[day, `${20 + (index % 3)}:30`, random.pick(["Mo + Kit", "Ash + Jo", "all"])],
      ...[random.whole(120, 400), random.whole(0, 9), degrees(kit, 19, 31)],
    ]),
  );
  const sold = rows.map(([, , , out, broken]) =>
    put(sheet, out!.row, 7, `=${a1(out!)}-${a1(broken!)}`),
  );
  marked.formulaColumns.push({ spots: sold, heading: heads[6]!, fixed: [] });
  const warm = { spots: columnOf(rows, 5), heading: heads[5]!, total: null };
  marked.numberColumns.push({ ...warm, kind: "temperature" });
  put(sheet, row + 5, 1, "Weekend");
  [columnOf(rows, 3), columnOf(rows, 4), sold].forEach((spots) =>
    sumOf(kit, sheet, { row: row + 5, column: spots[0]!.column }, spots),
  );
}

/** A stall at a festival: one bucket after the other of the same thing. */
function festival(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Field B");
  const made = hundred(called(kit.make(1)[0]!, { sugar: "white sugar", water: "tap water" }));
  put(sheet, 0, 1, `ICE TENT FIELD B: ${made.title}`);
  const place = (row: number) => ({ row, column: 1 });
  const size = { label: "Bucket holds (kg)", bare: "Bucket holds" };
  const bucket = input(kit, sheet, place(2), { ...size, value: kit.random.pick([6, 8, 10]) });
  const chestC = kit.random.pick([-12, -14, -15]);
  const cold = { label: "Chest set to (°C)", bare: "Chest set to" };
  const chest = input(kit, sheet, place(3), { ...cold, value: chestC });
  putRow(sheet, 2, 5, ["Tokens for a cup", 2]);
  putRow(sheet, 3, 5, ["A token is", shown(1.5, "£0.00")]);
  const recipe = bucketOf(kit, sheet, made, { bucket, chest, chestC });
  const row = recipe.total!.row + 4;
  days(kit, sheet, row);
  note(kit, sheet, row + 7, 1, "Generator refuel 6 am and 4 pm, somebody stays with the chest.");
}

/** Sheets of a stall at a festival. */
export const festivals: readonly Layout[] = [
  { name: "festival ice tent, buckets by per cent", language: "en", build: festival },
];
