import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { listed } from "../newcomers/words";
import { withLines, type MadeRecipe } from "../recipes";
import { declare, ofSpirits } from "./words";

const QUARTERS = ["", "¼", "½", "¾"];
const STEPS = [
  ["cup", 4],
  ["tbsp", 2],
  ["tsp", 4],
] as const;

function gramsIn(name: string, quantity: number, unit: string): number | null {
  const grams = callFunction("GRAMS", name, quantity, unit)[0]?.[0];
  return typeof grams === "number" ? grams : null;
}

interface Measured {
  readonly words: string;
  readonly grams: number;
}

/** As the cook measures it: cups and spoons where they fit, the scales else. */
function measured(name: string, grams: number): Measured {
  for (const [unit, steps] of STEPS) {
    const one = gramsIn(name, 1, unit);
    if (one === null) continue;
    const quantity = Math.round((grams / one) * steps) / steps;
    if (quantity * steps < 1) continue;
    const [whole, part] = [Math.floor(quantity), QUARTERS[4 * (quantity % 1)]!];
    const plural = unit === "cup" && quantity > 1 ? "cups" : unit;
    const words = `${whole === 0 ? "" : whole}${part} ${plural}`;
    return { words, grams: Math.max(1, Math.round(gramsIn(name, quantity, unit)!)) };
  }
  return { words: "on the scales", grams };
}

function inCups(made: MadeRecipe): { made: MadeRecipe; words: readonly string[] } {
  const measures = made.lines.map(({ en, grams }) => measured(en, grams));
  const lines = made.lines.map((each, index) => ({ ...each, grams: measures[index]!.grams }));
  return { made: { ...withLines(made, lines), target: null }, words: measures.map((m) => m.words) };
}

const TIMES = ["Easter", "Ben's birthday", "first hot day", "barbecue", "last of August"];
const VERDICTS = [
  "too hard to scoop",
  "just right",
  "a bit icy",
  "gone in minutes",
  "soft at once",
];

/** How it came out each time, beside the recipe. */
function diary(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  const heads = putRow(sheet, 2, 5, ["Made for", "Freezer (°C)", "In the freezer (h)", "Verdict"]);
  const rows = TIMES.map((time, index) =>
    putRow(sheet, 3 + index, 5, [
      ...[time, shown(-random.whole(31, 43) / 2, "0.0"), random.whole(4, 20)],
      random.pick(VERDICTS),
    ]),
  );
  marked.numberColumns.push({
    ...{ spots: columnOf(rows, 1), heading: heads[1]!, total: null, kind: "temperature" },
  });
  const all: Spot[] = columnOf(rows, 1);
  const mean = `=AVERAGE(${a1(all[0]!)}:${a1(all.at(-1)!)})`;
  putRow(sheet, 3 + TIMES.length, 5, ["on average", shown(mean, "0.0")]);
}

/** Cups in the first column, grams in the last, a diary beside. */
function cups(kit: Kit): void {
  const { marked } = kit;
  const { made, words } = inCups(kit.make(1)[0]!);
  const sheet = addSheet(marked.book, "Our favourite");
  put(sheet, 0, 0, `${made.title}, the way we make it`);
  const list = listed(
    sheet,
    made,
    { row: 2, column: 0 },
    {
      heads: ["How much", "Of what", "That weighs (g)"],
      cells: (name, grams, index) => [words[index], name, grams],
      ...{ name: 1, amount: 2 },
    },
  );
  const { heads, names, amounts, end } = list;
  put(sheet, end, 1, "In the bowl");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts);
  diary(kit, sheet);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", amountLabel: heads[2]!, total },
  });
  const next = say(sheet, recipe, { row: Math.max(end, 9) + 2, column: 1 }, [
    { label: "Begins to freeze (°C)", states: "freezing point", as: "formula", format: "0.0" },
    { label: "All the water in it (g)", states: "water", as: "formula", format: "0" },
    { label: "Sugars in it (% by weight)", states: "sugar share", as: "typed" },
    {
      label: "Water turned to ice at −18 °C (%)",
      ...{ states: "ice of water", as: "typed", temperatureC: -18, decimals: 0 },
    },
    ...ofSpirits(made, [{ label: "Alcohol (g)", states: "alcohol", as: "typed", decimals: 1 }]),
  ]);
  const after = declare(sheet, recipe, { row: next + 1, column: 1 }, "Mind the guests, it has");
  note(kit, sheet, after + 1, 1, "US cups, levelled with a knife; fruit cut small.");
}

/** A home cook. */
export const homeCook: readonly Layout[] = [
  { name: "home cook, cups and how it turned out", language: "en", build: cups },
];
