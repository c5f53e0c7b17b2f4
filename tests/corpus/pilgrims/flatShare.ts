import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import { beside, listed } from "../newcomers/words";
import { withLines, type MadeRecipe } from "../recipes";
import { ofAlcohol, readings, warnAt } from "./words";

const SPOONS = [
  ["cup", 4],
  ["tbsp", 2],
  ["tsp", 4],
] as const;

interface Poured {
  readonly quantity: number;
  readonly unit: string;
  readonly grams: number;
}

const gramsOf = (name: string, quantity: number, unit: string): number | null => {
  const grams = callFunction("GRAMS", name, quantity, unit)[0]?.[0];
  return typeof grams === "number" ? grams : null;
};

/** The largest measure of which it takes at least a quarter; grams where there is none. */
function poured(name: string, grams: number): Poured {
  for (const [unit, parts] of SPOONS) {
    const one = gramsOf(name, 1, unit);
    const quantity = one === null ? 0 : Math.round((grams / one) * parts) / parts;
    const weight = quantity > 0 ? gramsOf(name, quantity, unit) : null;
    if (weight !== null) return { quantity, unit, grams: weight };
  }
  return { quantity: grams, unit: "g", grams };
}

const answersFor = (made: MadeRecipe): readonly Said[] => [
  { label: "Starts to freeze at (°C)", states: "freezing point", as: "formula", format: "0.0" },
  { label: "Water in the jug (g)", states: "water", as: "formula", format: "0" },
  { label: "Sugars in the jug (% of its weight)", states: "sugar share", as: "formula" },
  {
    label: "Ice in it at −18 °C (% of its weight)",
    ...{ states: "ice of mix", as: "typed", temperatureC: -18, decimals: 0 },
  },
  ...ofAlcohol(made, { label: "Alcohol in the jug (g)" }),
];

const WHO = ["first go", "with less lemon", "for the barbecue", "after the party", "Sunday"];
const HOW = ["solid, had to wait", "spoonable", "slushy", "icy at the edge", "lovely"];

/** What became of it each time. */
function goes(kit: Kit, sheet: CorpusSheet, top: number): void {
  const { random } = kit;
  const heads = putRow(sheet, top, 0, [
    ...["Which go", "Hours in", "Freezer drawer (°C)", "After taking out (min)", "Verdict"],
  ]);
  const rows = WHO.map((who, index) =>
    putRow(sheet, top + 1 + index, 0, [
      ...[who, random.whole(4, 16), shown(-random.whole(32, 42) / 2, "0.0")],
      ...[5 * random.whole(1, 5), random.pick(HOW)],
    ]),
  );
  readings(kit, heads[2]!, rows, 2);
  const drawer = columnOf(rows, 2);
  const mean = `=AVERAGE(${a1(drawer[0]!)}:${a1(drawer.at(-1)!)})`;
  putRow(sheet, top + 6, 0, ["Mean", undefined, shown(mean, "0.0")]);
}

/** A jug in cups and spoons, weighed by a formula, shared out between the people of the flat. */
function flatShare(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Jug");
  const first = kit.make(1)[0]!;
  const measures = first.names.map((name, index) => poured(name, first.grams[index]!));
  const lines = first.lines.map((each, index) => ({ ...each, grams: measures[index]!.grams }));
  const made = { ...withLines(first, lines), target: null };
  put(sheet, 0, 0, `${made.title} by the jug`);
  const people = putRow(sheet, 1, 0, ["People tonight", kit.random.whole(3, 6)])[1]!;
  const list = listed(
    sheet,
    made,
    { row: 3, column: 0 },
    {
      heads: ["Qty", "Measure", "Ingredient", "Grams", "Grams each"],
      cells: (name, _, index) => [measures[index]!.quantity, measures[index]!.unit, name],
      ...{ name: 2, amount: 3 },
    },
  );
  const { heads, rows, names, end } = list;
  const at = (spot: Spot, column: number) => a1({ ...spot, column });
  const amounts = beside(kit, heads[3]!, columnOf(rows, 0), {
    ...{ sheet, format: "0" },
    content: (spot) => `=RIME.GRAMS(${at(spot, 2)},${a1(spot)},${at(spot, 1)})`,
  });
  const alsoAmounts = beside(kit, heads[4]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [people] },
    content: (spot) => `=${a1(spot)}/${fixed(people)}`,
  });
  put(sheet, end, 2, "The whole jug");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts, "0");
  sumOf(kit, sheet, { row: end, column: 4 }, alsoAmounts, "0");
  const marks = { names, amounts, alsoAmounts, unit: "g", total, amountLabel: heads[3]! } as const;
  const recipe = markRecipe(kit, made, marks);
  const next = say(sheet, recipe, { row: end + 2, column: 2 }, answersFor(made));
  const after = warnAt(sheet, recipe, { row: next + 1, column: 0 }, "On the freezer door: has");
  goes(kit, sheet, after + 1);
  note(kit, sheet, after + 9, 0, "Cup = the blue measuring cup, spoons levelled.");
}

/** People who share a flat and a freezer. */
export const flatShares: readonly Layout[] = [
  { name: "shared flat, a jug by cups and spoons", language: "en", build: flatShare },
];
