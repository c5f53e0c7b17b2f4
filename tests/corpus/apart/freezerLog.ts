import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { inUnit } from "../list";
import { beside, listed } from "../newcomers/words";
import { hundredth, readings } from "./words";

const VOICE: Voice = {
  lead: "Declare",
  honey: "Honey: keep from babies under 12 months.",
  alcohol: "Alcohol: keep from children, expectant mothers (pregnancy) and drivers.",
  nuts: "Nuts left whole: under-5s may choke.",
  egg: "Uncooked yolk: bring the mix to 71 °C or use pasteurised yolk.",
};

const DAYS = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10"];

/** Ten days of the two freezers. */
function log(kit: Kit, sheet: CorpusSheet): number {
  const { random } = kit;
  put(sheet, 0, 0, "FREEZER LOG, FARM SHOP, MAY");
  const end = readings(
    kit,
    sheet,
    { row: 2, column: 0 },
    {
      heads: ["Day", "Chest (°C)", "Defrosted", "Remarks"],
      ...{ when: DAYS.map((day) => `May ${day}`), tenths: [-224, -186] },
      rest: (index) => [
        index === 5 ? "yes" : "no",
        random.next() < 0.2 ? "busy, lid up a lot" : undefined,
      ],
    },
  );
  readings(
    kit,
    sheet,
    { row: 2, column: 5 },
    {
      heads: ["Day", "Display (°C)", "Tubs put out"],
      ...{ when: DAYS.map((day) => `May ${day}`), tenths: [-152, -126] },
      rest: () => [random.whole(2, 9)],
    },
  );
  return end;
}

/** What stands in the display, in parts of one, so that it can be made for any bucket. */
function recipeBelow(kit: Kit, sheet: CorpusSheet, row: number): void {
  const { random, marked } = kit;
  const made = called(largestFirst(kit.make(1)[0]!), { water: "cold water", sugar: "white sugar" });
  put(sheet, row, 0, `In the display now: ${made.title}`);
  const [label, bucket] = putRow(sheet, row + 1, 0, ["Bucket to fill (kg)", random.whole(4, 12)]);
  marked.inputs.push({ label: label!, value: bucket!, bare: "Bucket to fill" });
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 3, column: 0 },
    {
      heads: ["Ingredient", "Part of the mix (whole = 1)", "Kg for the bucket"],
      cells: (name, grams) => [name, shown(inUnit(grams, "fraction"), "0.000")],
    },
  );
  const alsoAmounts = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.00", fixed: [bucket!] },
    content: (spot) => `=${a1(spot)}*${fixed(bucket!)}`,
  });
  put(sheet, end, 0, "Whole");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.000");
  sumOf(kit, sheet, { row: end, column: 2 }, alsoAmounts, "0.00");
  const amountLabel = heads[1]!;
  const lines = { names, amounts, alsoAmounts, amountLabel, total, unit: "fraction" } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: row + 3, column: 4 }, [
    { label: "Freezing point, °C", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Depression, K", states: "depression", as: "formula" },
    { label: "Sugars, share of the mix", states: "sugar share", as: "typed", percent: "format" },
    {
      ...{ label: "Frozen part of the water, display at −14 °C", percent: "format" },
      ...{ states: "ice of water", as: "typed", temperatureC: -14 },
    },
    {
      ...{ label: "Ice in the mix, chest at −20 °C", percent: "format" },
      ...{ states: "ice of mix", as: "typed", temperatureC: -20 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 4, label: "Made to be" });
  tellIn(sheet, recipe, { row: next + 1, column: 4 }, VOICE);
  note(kit, sheet, end + 2, 0, "Log sheets are kept for a year in the egg room.");
}

/** A farm shop's freezer log with the recipe at its foot. */
function freezerLog(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "May");
  const end = log(kit, sheet);
  recipeBelow(kit, sheet, end + 2);
  hundredth(
    kit,
    sheet,
    { row: 2, column: 9 },
    {
      heads: ["Sold in May", "Share (%)"],
      ...{ items: ["small tubs", "large tubs", "cones", "boxes to order"], total: "May" },
    },
  );
}

/** A log that ends in a recipe. */
export const freezerLogs: readonly Layout[] = [
  { name: "farm shop freezer log, the recipe at its foot", language: "en", build: freezerLog },
];
