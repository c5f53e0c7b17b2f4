import { addSheet, put, putRow, type CorpusSheet, type Spot } from "../book";
import { downColumn, factsDown, tellIn, type Fact, type Voice } from "../caterers/words";
import { sound } from "../guests/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, stillMet } from "../kitchens/hand";
import { changed, plainOf } from "../lodgers/swaps";
import { down, given } from "../lodgers/words";
import { perHundred, type MadeRecipe } from "../recipes";
import { itemsOf } from "../strollers/words";
import { numbersUnder, readings, table } from "./words";

const VOICE: Voice = {
  lead: "Panel form:",
  honey: "Honey, exclude under 12 months.",
  alcohol: "Alcohol, exclude children, pregnant panellists and drivers.",
  nuts: "Whole nuts, choking hazard under 5 years.",
  egg: "Raw egg yolk, heat to 71 °C or use pasteurised.",
};

const FACTS: readonly Fact[] = [
  ["FP, °C", { states: "freezing point", as: "formula", format: "0.00" }],
  ["FPD, K", { states: "depression", as: "formula" }],
  ["Water, g/100 g", { states: "water", as: "typed", decimals: 1 }],
  ["Sugars, g per 100 g water", { states: "sugar per 100 g water", as: "typed", decimals: 1 }],
  ["Water frozen at −18 °C, %", { states: "ice of water", as: "typed", temperatureC: -18 }],
  ["Water frozen at test temperature, %", { states: "ice of water", as: "formula" }],
];

const DATES = ["3 Feb", "10 Feb", "11 Feb", "24 Feb"];

/** The first trial and what was tried after it, all in per cent. */
function versions(kit: Kit): MadeRecipe[] {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  const others = [
    changed(plain, 0.9),
    changed(plain, 0.8, "dextrose monohydrate"),
    changed(plain, 0.6, "fructose"),
  ];
  return [made, ...others].map((each) =>
    called(stillMet(perHundred(each)), {
      "skim milk powder": "SMP",
      "lemon juice": "juice of lemons",
    }),
  );
}

/** Ingredients down the page, trials across, what came out under them. */
function sheetOfTrials(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Trials");
  const list = versions(kit);
  put(sheet, 0, 0, `${list[0]!.title}, development`);
  const test = kit.random.pick([-10, -12, -15]);
  const temperature = given(kit, sheet, [1, 0], ["Test temperature", "°C", test]);
  const amountLabel = put(sheet, 3, 0, "Ingredient, % by weight");
  const items = down(sheet, [5, 0], itemsOf(list));
  put(sheet, 4, 0, "Date");
  put(sheet, 5 + items.length, 0, "Total");
  const row = 7 + items.length;
  const facts = FACTS.map(([words, plan]): Fact =>
    plan.as === "formula" && plan.states.startsWith("ice")
      ? [words, { ...plan, temperature, temperatureC: test, format: "0.0" }]
      : [words, plan],
  );
  put(sheet, row + facts.length, 0, "Target");
  put(sheet, row + facts.length + 1, 0, "Tell panel");
  list.forEach((made, index) => {
    const column = 1 + index;
    const heading = put(sheet, 3, column, `Trial ${index + 1}`);
    put(sheet, 4, column, DATES[index]);
    const plan = { items, left: 1, unit: "%", format: "0.0", amountLabel } as const;
    const recipe = downColumn(kit, sheet, made, index, plan);
    numbersUnder(kit, heading, recipe.amounts, "per cent", recipe.total);
    factsDown(sheet, recipe, facts, { row, column, labels: 0, items });
    nameTarget(sheet, recipe, { row: row + facts.length, column });
    tellIn(sheet, recipe, { row: row + facts.length + 1, column }, VOICE);
  });
  panel(kit, sheet, row + facts.length + 4);
}

/** What the panel gave, and how warm the samples were. */
function panel(kit: Kit, sheet: CorpusSheet, row: number): void {
  const warm = readings(kit, DATES.length, [-15, -12]);
  const score = (): number => kit.random.whole(4, 9);
  const rows = DATES.map((date, index) => [
    ...[date, `Trial ${index + 1}`, score(), score(), warm[index]],
  ]);
  const { heads, columns } = table(
    sheet,
    { row, column: 0 },
    ["Tasting", "Sample", "Texture, 1 to 9", "Flavour, 1 to 9", "Sample temp., °C"],
    rows,
  );
  numbersUnder(kit, heads[4]!, columns[4]!, "temperature");
  note(kit, sheet, row + 6, 0, "Five tasters each time, blind, water between samples.");
}

/** What is on the shelf of the pilot kitchen. */
function shelf(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Shelf");
  put(sheet, 0, 0, "Pilot kitchen shelf");
  const rows: readonly (readonly [string, string, string])[] = [
    ["Sugars", "cupboard 2", "May 2027"],
    ["Acids, salts", "cupboard 3", "no date"],
    ["Dairy", "fridge B", "see lid"],
    ["Fruit", "freezer A", "Nov 2027"],
  ];
  const cells: readonly Spot[] = putRow(sheet, 8, 0, ["Checked", "15 Feb"]);
  table(sheet, { row: 2, column: 0 }, ["Group", "Where", "Best before"], rows);
  note(kit, sheet, cells[0]!.row + 2, 0, "Scale was calibrated in January.");
}

function development(kit: Kit): void {
  sheetOfTrials(kit);
  shelf(kit);
}

/** A developer's trials. */
export const trialSheets: readonly Layout[] = [
  { name: "developer, four trials across with panel scores", language: "en", build: development },
];
