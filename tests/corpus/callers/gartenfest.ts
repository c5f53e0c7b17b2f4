import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { withLines, type MadeRecipe } from "../recipes";
import { called, columnOf, stillMet } from "../kitchens/hand";
import { desk, down, linesOn } from "./desk";

/** How one measures something at home. */
interface Measure {
  readonly count: number;
  readonly word: string;
  /** What one of it weighs. */
  readonly each: number;
}

const CUP_ML = 150;

const WAYS: readonly (readonly [of: RegExp, word: string, unit: string, size: number])[] = [
  [/^(water|brewed coffee|coconut milk|whole milk|cream|orange juice)/, "Tasse", "mL", CUP_ML],
  [/^(salt|citric)/, "TL", "tsp", 1],
  [
    /^(sugar|sucrose|dextrose|fructose|honey|cocoa|glucose|skim|inulin|lemon|lime)/,
    "EL",
    "tbsp",
    1,
  ],
];

/** The nearest quarter cup or half spoon; the scale where there is no measure. */
function measureFor(en: string, grams: number): Measure {
  const way = WAYS.find(([of]) => of.test(en));
  const one = way === undefined ? null : callFunction("GRAMS", en, way[3], way[2])[0]![0];
  if (typeof one !== "number") return { count: grams, word: "g", each: 1 };
  const each = Number(one.toFixed(1));
  const steps = way![1] === "EL" ? 2 : 4;
  return { count: Math.max(1, Math.round((steps * grams) / each)) / steps, word: way![1], each };
}

/** The recipe as its measures make it. */
function byMeasure(given: MadeRecipe): readonly [MadeRecipe, readonly Measure[]] {
  const measures = given.lines.map(({ en, grams }) => measureFor(en, grams));
  const lines = given.lines.map((each, index) => {
    const { count, each: one } = measures[index]!;
    return { ...each, grams: count * one };
  });
  return [called(stillMet(withLines(given, lines)), { Zucker: "Haushaltszucker" }), measures];
}

const KNOWN: readonly Said[] = [
  { label: "Erste Eiskristalle bei (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "Wasser, auch aus Obst und Milch (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Zucker insgesamt (Gewichts-%)", states: "sugar share", as: "typed" },
  { label: "Gelöstes in der Schüssel (g)", states: "dissolved", as: "formula", format: "0" },
];

/** A recipe in cups and spoons, with what each weighs. */
function measuredOut(kit: Kit, sheet: CorpusSheet, given: MadeRecipe, top: number): MarkedRecipe {
  const [made, measures] = byMeasure(given);
  put(sheet, top, 0, made.title);
  const heads = ["Zutat", "Anzahl", "Maß", "1 Maß wiegt (g)", "Macht (g)"];
  const cells = (index: number) => {
    const { count, word, each } = measures[index]!;
    return [made.names[index], shown(count, "0.##"), word, shown(each, "0.0"), 0];
  };
  const plan = { heads, cells, name: 0, amount: 4, sum: "In der Schüssel", format: "0" };
  const list = desk(kit, sheet, made, { row: top + 1, column: 0, ...plan });
  const [counts, weights] = [1, 3].map((at) => columnOf(list.rows, at)) as [Spot[], Spot[]];
  down(kit, sheet, counts, {
    ...{ heading: list.heads[4]!, format: "0.0" },
    formula: (cell, index) => `=${cell}*${a1(weights[index]!)}`,
  });
  return markRecipe(kit, made, { ...linesOn(list), unit: "g" });
}

/** A recipe and what is known of it; gives the next free row. */
function card(kit: Kit, sheet: CorpusSheet, given: MadeRecipe, top: number, cold: Cold): number {
  const recipe = measuredOut(kit, sheet, given, top);
  let next = say(sheet, recipe, { row: recipe.total!.row + 1, column: 0 }, [
    ...KNOWN,
    {
      ...{ label: "Vom Wasser gefroren in unserem Fach (%)", states: "ice of water" },
      ...{ as: "formula", format: "0", ...cold },
    },
  ]);
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "So soll es werden" });
  return tell(kit, sheet, recipe, { row: next, column: 0, as: "sentence" }) + 1;
}

interface Cold {
  readonly temperature: Spot;
  readonly temperatureC: number;
}

/** Two ices for a summer party at home. */
function party(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Gartenfest");
  put(sheet, 0, 0, "Eis für das Gartenfest, fast ohne Waage");
  putRow(sheet, 1, 0, ["Unsere Tasse fasst (ml)", CUP_ML]);
  const temperatureC = random.pick([-16, -17, -19]);
  const words = { label: "Unser Gefrierfach (°C)", bare: "Unser Gefrierfach" };
  const temperature = input(kit, sheet, { row: 2, column: 0 }, { ...words, value: temperatureC });
  let top = 4;
  for (const made of kit.make(2)) {
    top = card(kit, sheet, made, top, { temperature, temperatureC });
  }
  note(kit, sheet, top, 0, "EL und TL gestrichen, Obst und Nüsse bitte doch wiegen.");
}

/** Sheets of a home cook. */
export const feste: readonly Layout[] = [
  { name: "Gartenfest, Tassen und Löffel", language: "de", build: party },
];
