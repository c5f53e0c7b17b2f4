import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, put, type CorpusSheet } from "../book";
import { type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { meets, withLines, type MadeRecipe } from "../recipes";
import { isBoozy, sayAll } from "./words";

interface Measured {
  readonly count: number;
  readonly measure: string;
  readonly each: number;
}

const MEASURES = [
  ["cup", "mug (1 cup)", 4],
  ["tbsp", "tablespoon", 1],
  ["tsp", "teaspoon", 2],
] as const;

/** The largest measure of which there is enough; on the scales where there is none. */
function measured(en: string, grams: number): Measured {
  for (const [unit, measure, steps] of MEASURES) {
    const one = callFunction("GRAMS", en, 1, unit)[0]?.[0];
    if (typeof one !== "number") continue;
    const each = unit === "cup" ? Math.round(one) : Math.round(one * 2) / 2;
    const count = Math.round((grams / one) * steps) / steps;
    if (count >= 0.5) return { count, measure, each };
  }
  return { count: grams, measure: "g on the scales", each: 1 };
}

/** Forgets the target where the mugs, and not a mistake, decide whether it is met. */
function asBefore(made: MadeRecipe, after: MadeRecipe): MadeRecipe {
  const { target } = made;
  if (target === null || meets(made, target) === meets(after, target)) return after;
  return { ...after, target: null };
}

/** The recipe with the grams that its mugs and spoons make. */
function inMugs(made: MadeRecipe) {
  const measures = made.lines.map(({ en, grams }) => measured(en, grams));
  const lines = made.lines.map((line, index) => {
    const { count, each } = measures[index]!;
    return { ...line, grams: count * each };
  });
  return { measures, made: asBefore(made, withLines(made, lines)) };
}

const said = (freezer: Pick<Said, "temperature" | "temperatureC">): readonly Said[] => [
  { label: "Starts freezing at (°C)", states: "freezing point", as: "formula", format: "0.0" },
  {
    ...{ label: "How much of the water is frozen in my freezer", states: "ice of water" },
    ...{ as: "formula", percent: "format", ...freezer },
  },
  {
    ...{ label: "How much of the whole mix is ice in my freezer", states: "ice of mix" },
    ...{ as: "formula", percent: "format", ...freezer },
  },
  { label: "Water it holds (g)", states: "water", as: "formula", format: "0" },
  { label: "Dissolved in that water (g)", states: "dissolved", as: "typed", decimals: 0 },
];

const ALCOHOL: Said = { label: "Alcohol in it (g)", states: "alcohol", as: "typed", decimals: 1 };

/** The lines, their grams worked out of the measures. */
function lines(
  kit: Kit,
  sheet: CorpusSheet,
  made: MadeRecipe,
  measures: readonly Measured[],
): MarkedRecipe {
  const plan = {
    heads: ["Ingredient", "How many", "Measure", "One of it weighs (g)", "Makes (g)"],
    cells: (name: string, _: number, index: number) => {
      const { count, measure, each } = measures[index]!;
      return [name, count, measure, each];
    },
  };
  const { heads, rows, names, end } = listed(sheet, made, { row: 3, column: 0 }, plan);
  const counts = columnOf(rows, 1);
  const amounts = beside(kit, heads[4]!, counts, {
    ...{ sheet, format: "0" },
    content: (spot, index) => `=${a1(spot)}*${a1(rows[index]![3]!)}`,
  });
  put(sheet, end + 1, 0, "In the bowl");
  const total = sumOf(kit, sheet, { row: end + 1, column: 4 }, amounts, "0");
  return markRecipe(kit, made, { names, amounts, unit: "g", amountLabel: heads[4]!, total });
}

/** One old recipe on its sheet. */
function oldRecipe(kit: Kit, sheet: CorpusSheet, given: MadeRecipe): void {
  const { measures, made } = inMugs(given);
  put(sheet, 0, 0, `${made.title}, as Mum made it`);
  const value = -kit.random.whole(15, 20);
  const words = { label: "My freezer (°C)", bare: "My freezer", value };
  const temperature = input(kit, sheet, { row: 1, column: 0 }, words);
  const recipe = lines(kit, sheet, made, measures);
  const plans = said({ temperature, temperatureC: value });
  sayAll(
    kit,
    sheet,
    recipe,
    { row: recipe.total!.row + 2, column: 0 },
    {
      said: isBoozy(made) ? [...plans, ALCOHOL] : plans,
      ...{ target: "We like it as", lead: "Watch out, has in it:" },
      note: "Level mugs, scraped off with a knife.",
    },
  );
}

/** The notebook of the family in mugs and spoons. */
function notebook(kit: Kit): void {
  const names = ["Mum's ice", "Other one"];
  kit.make(2).forEach((made, index) => {
    oldRecipe(kit, addSheet(kit.marked.book, names[index]!), made);
  });
}

/** A home cook with mugs and spoons. */
export const mugCooks: readonly Layout[] = [
  { name: "home cook, mugs and spoons weighed out", language: "en", build: notebook },
];
