import { a1, addSheet, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { kilos } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import { asFormulas, asTemperatures, rowsAt, tellAt, told, type OwnWords } from "./words";

const CAUTIONS: OwnWords = [
  [/^Honey/, "Honey in it, so not for infants under 12 months."],
  [/^Contains alcohol/, "Alcohol in it: no children, no one pregnant, no one driving."],
  [/^Whole nuts/, "Whole nuts: choking hazard for under 5s."],
  [/^Raw egg/, "Raw egg yolk: take the mix to 71 °C or use pasteurised yolk."],
];

/** What the assessor expects under each card. */
const EXPECTED: readonly Said[] = [
  { label: "Water, all of it", inCell: "g", states: "water", as: "formula", format: "0" },
  { label: "Dissolved in it", inCell: "g", states: "dissolved", as: "typed", decimals: 0 },
  { label: "Freezing pt", inCell: "°C", states: "freezing point", as: "formula", format: "0.0" },
  {
    ...{ label: "Mix that is ice at −15 °C", inCell: "%", states: "ice of mix" },
    ...{ as: "typed", temperatureC: -15, decimals: 0 },
  },
];

const WIDTH = 5;

/** One station's card; gives the recipe and how deep the card goes. */
function card(kit: Kit, sheet: CorpusSheet, made: MarkedRecipe["made"], at: number): MarkedRecipe {
  const column = WIDTH * at;
  put(sheet, 2, column, `STATION ${at + 1}`);
  put(sheet, 3, column, made.title);
  const { rows, names, amounts, end, heads } = listed(
    sheet,
    made,
    { row: 5, column },
    {
      heads: ["Mise en place", "Qty", "Unit", "Done"],
      cells: (name, grams) => [name, grams, "g"],
    },
  );
  const total = sumOf(kit, sheet, { row: end, column: column + 1 }, amounts);
  put(sheet, end, column, "Yield");
  put(sheet, end, column + 2, "g");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, unit: "g", unitCells: columnOf(rows, 2), amountLabel: heads[1]!, total },
  });
  say(sheet, recipe, { row: 14, column }, EXPECTED);
  nameTarget(sheet, recipe, { row: 18, column, label: "Service" });
  tellAt(sheet, recipe, { row: 19, column }, told(made, "On the pass card:", CAUTIONS));
  return recipe;
}

const CRITERIA = ["Hygiene", "Accuracy of weighing", "Texture", "Flavour", "Clearing down"];

/** The assessor's marks: a line for each criterion, a column for each station. */
function marks(kit: Kit, recipes: readonly MarkedRecipe[]): void {
  const { book } = kit.marked;
  const sheet = addSheet(book, "Marks");
  put(sheet, 0, 0, "Assessment 3, frozen sweets. Marks out of 10 for each line.");
  const heads = putRow(sheet, 2, 0, ["Criterion", ...recipes.map(({ made }) => made.title)]);
  const rows = rowsAt(
    sheet,
    { row: 3, column: 0 },
    CRITERIA.map((each) => [each, ...recipes.map(() => kit.random.whole(5, 10))]),
  );
  const row = 3 + rows.length;
  put(sheet, row, 0, "Out of 50");
  const sums = recipes.map((_, index) =>
    sumOf(kit, sheet, { row, column: 1 + index }, columnOf(rows, 1 + index)),
  );
  put(sheet, row + 1, 0, "Per cent");
  const perCents = sums.map((spot) =>
    put(sheet, row + 1, spot.column, shown(`=${a1(spot)}/50*100`, "0")),
  );
  asFormulas(kit, { ...heads[0]!, row: row + 1 }, perCents);
  fridges(kit, sheet, row + 4);
  note(kit, sheet, row + 2, 0, "Second marker: please sign in the margin.");
}

/** The probe readings that the kitchen has to keep. */
function fridges(kit: Kit, sheet: CorpusSheet, row: number): void {
  const heads = putRow(sheet, row, 0, ["Freezer", "Probe at 9:00 (°C)", "Probe at 13:00 (°C)"]);
  const names = ["Upright by the door", "Chest", "Blast"];
  const rows: Spot[][] = rowsAt(
    sheet,
    { row: row + 1, column: 0 },
    names.map((name) => [name, -kit.random.whole(18, 23), -kit.random.whole(17, 22)]),
  );
  asTemperatures(kit, heads[1]!, columnOf(rows, 1));
  asTemperatures(kit, heads[2]!, columnOf(rows, 2));
}

/** Three stations beside each other, and their marks. */
function stations(kit: Kit): void {
  const own = { sugar: "granulated sugar", salt: "table salt", "whole milk": "full cream milk" };
  const sheet = addSheet(kit.marked.book, "Stations");
  put(
    sheet,
    0,
    0,
    "Level 3 pastry, practical assessment: three stations, a one-litre machine each",
  );
  const mades = kit.make(3).map((made) => called(kilos(made), own));
  const recipes = mades.map((made, index) => card(kit, sheet, made, index));
  marks(kit, recipes);
  note(kit, sheet, 21, 0, "Blank cards are in the drawer under the till.");
}

/** A cookery college's practical assessment. */
export const stationCards: readonly Layout[] = [
  { name: "cookery college, three stations and marks", language: "en", build: stations },
];
