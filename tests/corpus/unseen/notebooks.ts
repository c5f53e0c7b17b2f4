import { callFunction } from "../../../src/worksheet/callFunction";
import { addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say } from "../layouts/parts";
import { input } from "../page";
import { withLines, type MadeRecipe } from "../recipes";
import { called, stillMet } from "../kitchens/hand";
import { lineRows, summed } from "./shared";

const PARTS: Readonly<Record<number, string>> = { 0.25: "1/4", 0.5: "1/2", 0.75: "3/4" };

/** "1 1/2 cups", as one writes it by hand; nothing for none. */
function byHand(quantity: number, unit: string): string[] {
  const [whole, part] = [Math.floor(quantity), PARTS[quantity % 1]];
  const number = [...(whole > 0 ? [String(whole)] : []), ...(part === undefined ? [] : [part])];
  const isMany = unit === "cup" && quantity > 1;
  return number.length === 0 ? [] : [`${number.join(" ")} ${unit}${isMany ? "s" : ""}`];
}

interface Spooned {
  readonly words: string;
  readonly grams: number;
}

const gramsIn = (name: string, unit: string): number => {
  const grams = callFunction("GRAMS", name, 1, unit)[0]?.[0];
  return typeof grams === "number" ? grams : Number.NaN;
};

/** Cups and spoons of something that come near its grams; nothing where it is weighed. */
function spooned(name: string, wanted: number): Spooned | null {
  const [cup, tbsp, tsp] = ["cup", "tbsp", "tsp"].map((unit) => gramsIn(name, unit)) as Three;
  const cups = Math.floor((4 * (wanted + tbsp / 4)) / cup) / 4;
  const spoons = Math.max(0, Math.round((2 * (wanted - cups * cup)) / tbsp) / 2);
  const quarters = Math.round((4 * wanted) / tsp) / 4;
  const ways = [
    [cups * cup + spoons * tbsp, [...byHand(cups, "cup"), ...byHand(spoons, "tbsp")]],
    [quarters * tsp, byHand(quarters, "tsp")],
  ] as const;
  const near = ways.find(([grams]) => Math.abs(grams / wanted - 1) < 0.06);
  return near === undefined ? null : { words: near[1].join(" + "), grams: Math.round(near[0]) };
}

type Three = [number, number, number];

interface Freezer {
  readonly temperature: Spot;
  readonly temperatureC: number;
}

/** A recipe with how much of each line by hand. */
function inSpoons(given: MadeRecipe): readonly [MadeRecipe, (index: number) => string] {
  const measures = given.lines.map(({ en, grams }) => spooned(en, grams));
  const lines = given.lines.map((each, index) => {
    const { grams } = measures[index] ?? each;
    return { ...each, grams };
  });
  const words = { sugar: "white sugar", "cream 35 % fat": "cream 35 %" };
  const made = called(stillMet(withLines(given, lines)), words);
  return [made, (index) => measures[index]?.words ?? "weighed"];
}

/** A recipe as the notebook has it; gives the next free row. */
function pops(kit: Kit, given: MadeRecipe, freezer: Freezer, top: number): number {
  const sheet = kit.marked.book.sheets[0]!;
  const [made, handful] = inSpoons(given);
  put(sheet, top, 0, made.title);
  const heads = putRow(sheet, top + 1, 0, ["How much", "Of what", "On the scale (g)"]);
  const rows = lineRows(sheet, { row: top + 2, column: 0 }, made, (index) => [
    ...[handful(index), made.names[index], made.grams[index]],
  ]);
  const list = summed(kit, sheet, rows, { name: 1, amount: 2, heads, word: "Together" });
  const recipe = markRecipe(kit, made, { ...list, unit: "g" });
  let next = say(sheet, recipe, { row: list.total.row + 1, column: 1 }, [
    { label: "Starts to freeze at (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Water in it, all told (g)", states: "water", as: "formula", format: "0" },
    {
      ...{ label: "Water frozen in our freezer (%)", states: "ice of water", as: "formula" },
      ...{ format: "0", ...freezer },
    },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 1, label: "Should come out as" });
  return tell(kit, sheet, recipe, { row: next, column: 0, as: "sentence" }) + 1;
}

const CAME_OUT = [
  [3, "a bit icy"],
  [4, "just right"],
  [3, "too soft"],
  [5, "kids loved it"],
  [2, "hard as a brick"],
] as const;
const DATES = ["Jun 7", "Jun 14", "Jun 28", "Jul 4", "Jul 19", "Aug 2"];

/** How the batches came out, beside the recipes. */
function cameOut(kit: Kit, sheet: CorpusSheet, titles: readonly string[]): void {
  const { random, marked } = kit;
  put(sheet, 1, 5, "How they came out");
  const heads = putRow(sheet, 2, 5, [
    "When",
    "Which",
    "In the freezer (°C)",
    "Out of 5",
    "Verdict",
  ]);
  const spots = DATES.map((date, index) => {
    const cold = shown(-random.whole(30, 40) / 2, "0.0");
    const [points, verdict] = random.pick(CAME_OUT);
    const line = [date, random.pick(titles), cold, points, verdict];
    return putRow(sheet, 3 + index, 5, line)[2]!;
  });
  marked.numberColumns.push({ spots, heading: heads[2]!, total: null, kind: "temperature" });
}

/** Two recipes of a home cook in cups and spoons, and what became of them. */
function notebook(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Notebook");
  const mades = kit.make(2);
  const temperatureC = random.pick([-16, -17, -18]);
  const words = { label: "Our freezer (°C)", bare: "Our freezer", value: temperatureC };
  const temperature = input(kit, sheet, { row: 0, column: 0 }, words);
  let top = 2;
  for (const made of mades) {
    top = pops(kit, made, { temperature, temperatureC }, top) + 1;
  }
  cameOut(
    kit,
    sheet,
    mades.map(({ title }) => title),
  );
  note(kit, sheet, top, 0, "Cups level, not heaped.");
}

/** What a home cook keeps. */
export const notebooks: readonly Layout[] = [
  { name: "notebook in cups and spoons, how they came out", language: "en", build: notebook },
];
