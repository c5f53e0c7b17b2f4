import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { absolute, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { ofAlcohol } from "../strollers/words";
import { VOICES } from "./voices";
import { below, iceOn, readings } from "./words";

interface Handout {
  readonly name: string;
  readonly recipe: MarkedRecipe;
}

const STEPS = [
  "Weigh everything before you start; zero the scale for each bowl.",
  "Stir the dry things together, then into the wet.",
  "Chill the mix in the fridge overnight.",
  "Churn, or freeze flat and scrape with a fork every half hour.",
  "Let it soften on the counter before serving.",
];

/** What is said of a mix at the temperature of the freezer in the room. */
const said = (made: MadeRecipe, temperature: Spot, temperatureC: number): Said[] => [
  { label: "First ice forms at (°C)", states: "freezing point", as: "typed", decimals: 1 },
  { label: "that is below water by (K)", states: "depression", as: "formula" },
  { label: "Total water (g)", states: "water", as: "typed", decimals: 0 },
  { label: "Solids that dissolve (g)", states: "dissolved", as: "formula", format: "0" },
  {
    label: "Part of that water frozen in our freezer (%)",
    ...{ states: "ice of water", as: "formula", format: "0", temperature, temperatureC },
  },
  ...ofAlcohol(made, "Ethanol in the bowl (g)"),
];

/** A recipe as it is handed out, for one bowl and for tonight's. */
function handout(kit: Kit, made: MadeRecipe, index: number): Handout {
  const name = `Hand-out ${index + 4}`;
  const sheet = addSheet(kit.marked.book, name);
  putRow(sheet, 0, 0, [
    `Hand-out ${index + 4}`,
    undefined,
    undefined,
    "Frozen sweets, Tuesday group",
  ]);
  put(sheet, 1, 0, made.title);
  const factor = putRow(sheet, 3, 0, ["Bowls tonight", kit.random.pick([2, 3, 4])])[1]!;
  const temperatureC = kit.random.pick([-16, -17, -18]);
  const words = { label: "Our freezer (°C)", bare: "Our freezer", value: temperatureC };
  const temperature = input(kit, sheet, { row: 4, column: 0 }, words);
  const { recipe, end } = iceOn(kit, sheet, made, {
    ...{ row: 6, column: 0, columns: ["name", "amount", "scaled"], unit: "g", factor, gap: 1 },
    headings: { name: "Into the bowl", amount: "1 bowl (g)", scaled: "Tonight (g)" },
    ...{ total: "All of it", said: said(made, temperature, temperatureC), voice: VOICES.binder },
    target: "Aim for",
  });
  const steps = STEPS.map((step, at) => `${at + 1}  ${step}`);
  below(sheet, { row: 6, column: 4 }, ["How", ...steps]);
  note(kit, sheet, end + 1, 0, "Your own notes:");
  return { name, recipe };
}

/** The binder's first page: what is in it, and the freezer's log. */
function contents(kit: Kit, sheet: CorpusSheet, handouts: readonly Handout[]): void {
  put(sheet, 0, 0, "Binder: ices and sorbets");
  const heads = putRow(sheet, 2, 0, [
    ...["Page", "Recipe", "One bowl makes (g)", "Freezing point (°C)", "Given in"],
  ]);
  const rows = handouts.map(({ name, recipe }, index) => {
    const row = 3 + index;
    const link = `='${name}'!${a1(recipe.total!)}`;
    const term = ["spring", "autumn", "winter"][index % 3];
    const cells = putRow(sheet, row, 0, [
      name,
      recipe.made.title,
      shown(link, "0"),
      undefined,
      term,
    ]);
    const lines = `'${name}'!${span(recipe.names)},'${name}'!${span(recipe.amounts)}`;
    const plan = { states: "freezing point", as: "formula", format: "0.0" } as const;
    resultAt(sheet, recipe, heads[3]!, { row, column: 3 }, plan, () => lines);
    return cells;
  });
  const end = 3 + rows.length;
  put(sheet, end, 1, "One bowl of each");
  sumOf(kit, sheet, { row: end, column: 2 }, columnOf(rows, 2), "0");
  const log = putRow(sheet, end + 3, 1, ["Freezer log", "Read (°C)"]);
  below(sheet, { row: end + 4, column: 1 }, ["before class", "after filling", "next morning"]);
  readings(kit, sheet, log[1]!, { count: 3, from: -19, to: -14 });
  note(kit, sheet, end + 8, 0, "Print on yellow paper, hole-punched. Bring spare aprons.");
}

const FRUIT = [
  ["quinces, stewed at home", 14, 4],
  ["mulberries off the tree", 9, 2],
  ["gooseberries, cooked down", 18, 3],
] as const;

/** What own fruit holds in 100 g, and a bowl of it. */
function ownFruit(kit: Kit, sheet: CorpusSheet): void {
  const { random, marked } = kit;
  put(sheet, 0, 0, "Fruit from the garden, g in 100 g, sugars by refractometer");
  const heads = putRow(sheet, 2, 0, ["name", "sugars", "water", "inert", "allergens"]);
  const rows = FRUIT.map(([fruit, usual, inert], index) => {
    const sugars = usual + random.whole(0, 5);
    return putRow(sheet, 3 + index, 0, [fruit, sugars, 100 - sugars - inert, inert, "none"]);
  });
  for (const [name, sugars, water, , allergens] of rows) {
    marked.ownLines.push({ name: name!, water: water!, sugars: sugars!, allergens: allergens! });
  }
  const own = absolute(span([heads[0]!, ...rows.flat()]));
  putRow(sheet, 2, 6, ["Garden sorbet", "g"]);
  const lines = [...FRUIT.map(([fruit]) => fruit), "white sugar", "tap water"];
  const list = lines.map((item, index) =>
    putRow(sheet, 3 + index, 6, [item, index < 3 ? 10 * random.whole(12, 25) : 80 + 10 * index]),
  );
  const amounts = columnOf(list, 1);
  put(sheet, 8, 6, "All of it");
  sumOf(kit, sheet, { row: 8, column: 7 }, amounts);
  const call = `=RIME.FREEZINGPOINT(${span(columnOf(list, 0))},${span(amounts)},${own})`;
  putRow(sheet, 9, 6, ["First ice forms at (°C)", shown(call, "0.0")]);
}

/** A course binder, one recipe on each page. */
function binder(kit: Kit): void {
  const first = addSheet(kit.marked.book, "Contents");
  const words = { sugar: "white sugar", water: "tap water", honey: "runny honey" };
  const list = kit.make(3).map((made, index) => handout(kit, called(made, words), index));
  contents(kit, first, list);
  ownFruit(kit, addSheet(kit.marked.book, "Own fruit"));
}

/** Hand-outs of someone who gives courses. */
export const handouts: readonly Layout[] = [
  { name: "course binder, a hand-out for each recipe", language: "en", build: binder },
];
