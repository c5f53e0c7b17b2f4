import { addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called } from "../kitchens/hand";
import { markRecipe, sumOf, type Place } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { resultAt, type ResultPlan } from "../results";
import { isAlcoholic, madeOf, temperatures, upTo } from "../strollers/words";
import { inColumn, sideTable, under, worked } from "./words";

const VOICE: Voice = {
  lead: "Label it with:",
  honey: "Honey inside, so not for anyone under 12 months.",
  alcohol: "Alcohol inside, so for adults only and not in pregnancy or before driving.",
  nuts: "Whole nuts inside, so not for children under 5: they choke on them.",
  egg: "Raw yolk inside: take pasteurised, or heat the mix to 71 °C.",
};

const WORDS = {
  ...{ sugar: "caster sugar", water: "cold water", salt: "table salt", honey: "runny honey" },
  ...{ "lemon juice": "fresh lemon juice", "brewed coffee": "filter coffee" },
};

const JOBS = ["A", "B", "C", "D"];

/** One bench's list; who weighs what stands behind it. */
function bench(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  [at, place]: readonly [number, Place],
): MarkedRecipe {
  const { row, column } = place;
  put(sheet, row, column, `Bench ${at + 1}: ${made.title}`);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: row + 1, column },
    {
      heads: ["Weigh out", "grams", "pupil"],
      cells: (item, grams, index) => [item, grams, JOBS[index % JOBS.length]],
    },
  );
  put(sheet, end, column, "Should be in the bowl");
  const total = sumOf(kit, sheet, { row: end, column: column + 1 }, amounts);
  const cells = { names, amounts, amountLabel: heads[1]!, total, unit: "g" } as const;
  const recipe = markRecipe(kit, made, cells);
  nameTarget(sheet, recipe, { row: end + 2, column, label: "Aim" });
  tellIn(sheet, recipe, { row: end + 3, column }, VOICE);
  return recipe;
}

const TABLE = 9;

const HEADS = [
  ...["Bench", "Ice", "Starts to freeze at (°C)", "That is below water by (K)"],
  ...["Dissolved in the mix (g)", "All the water in it (g)", "Ice, % of the mix, at −16 °C"],
  ...["Probe before churning (°C)", "Dissolved for 100 g of its water (g)"],
];

const ANSWERS: readonly ResultPlan[] = [
  { states: "freezing point", as: "formula", format: "0.0" },
  { states: "depression", as: "formula", format: "0.0" },
  { states: "dissolved", as: "typed", decimals: 0 },
  { states: "water", as: "typed", decimals: 0 },
  { states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
];

/** All benches in one table at the right of the lists. */
function compared(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  put(sheet, 1, TABLE, "Fill in together at the end");
  const heads = putRow(sheet, 2, TABLE, HEADS);
  const points: Spot[] = [];
  recipes.forEach((recipe, index) => {
    const row = 3 + index;
    putRow(sheet, row, TABLE, [index + 1, recipe.made.title]);
    ANSWERS.forEach((plan, at) => {
      const place = { row, column: TABLE + 2 + at };
      resultAt(sheet, recipe, heads[2 + at]!, place, plan);
    });
    points.push({ sheet: sheet.name, row, column: TABLE + 2 });
    put(sheet, row, TABLE + 7, shown(kit.random.whole(8, 14) / 2, "0.0"));
  });
  temperatures(kit, heads[7]!, under(heads[7]!, recipes.length));
  const [solids, water] = [TABLE + 4, TABLE + 5].map(inColumn);
  const rows = recipes.map((_, index) => 3 + index);
  const formula = (row: number) => `100*${solids!(row)}/${water!(row)}`;
  worked(kit, sheet, heads[8]!, rows, { formula, format: "0" });
  put(sheet, 8, TABLE, "lowest");
  put(sheet, 8, TABLE + 2, shown(`=MIN(${span(points)})`, "0.0"));
}

/** Who clears up and what the fridge said. */
function clearing(kit: Kit, sheet: CorpusSheet): void {
  const lines = ["Mon", "Tue", "Thu", "Fri"].map((day, index) => [
    ...[day, `Bench ${((index + 1) % 4) + 1}`, kit.random.whole(3, 5)],
  ]);
  const heads = sideTable(sheet, [11, TABLE], ["Lesson", "Clears up", "Fridge (°C)"], lines);
  temperatures(kit, heads[2]!, under(heads[2]!, lines.length));
}

/** Four benches, two by two, and what came of them. */
function benches(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Benches");
  put(sheet, 0, 0, "9F Food: four benches, four ices");
  const sober = madeOf(kit, 4, (made) => !isAlcoholic(made));
  const mades = sober.map((made) => called(upTo(made, 800), WORDS));
  const deepest = Math.max(...mades.map(({ names }) => names.length));
  const recipes = mades.map((made, index) => {
    const place = { row: 2 + Math.floor(index / 2) * (deepest + 8), column: 4 * (index % 2) };
    return bench(kit, sheet, made, [index, place]);
  });
  compared(kit, sheet, recipes);
  clearing(kit, sheet);
  note(kit, sheet, 2 + 2 * (deepest + 8), 0, "Bowls back on the shelf they came from.");
}

/** A food lesson. */
export const benchesSheets: readonly Layout[] = [
  { name: "food lesson, four benches two by two", language: "en", build: benches },
];
