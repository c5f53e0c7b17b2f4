import { callFunction } from "../../../src/worksheet/callFunction";
import { addSheet, a1, put, putRow, shown, span, type CorpusSheet } from "../book";
import { note, type Kit, type Layout } from "../kit";
import { trueValue, type MarkedRecipe } from "../marks";
import { withLines, type MadeRecipe } from "../recipes";
import { answer, markRecipe, sumAt, tellAll } from "./marking";

interface Measure {
  readonly quantity: number;
  readonly unit: string;
}

const gramsOf = (name: string, { quantity, unit }: Measure): number | null => {
  const grams = callFunction("GRAMS", name, quantity, unit)[0]?.[0];
  return typeof grams === "number" ? Math.round(grams) : null;
};

/** The nearest quarter of a cup, half of a tablespoon or quarter of a teaspoon. */
function measured(name: string, grams: number): Measure {
  for (const [unit, steps] of [
    ["cup", 4],
    ["tbsp", 2],
    ["tsp", 4],
  ] as const) {
    const one = callFunction("GRAMS", name, 1, unit)[0]?.[0];
    if (typeof one !== "number") continue;
    const quantity = Math.round((grams / one) * steps) / steps;
    if (quantity * steps >= 1) return { quantity, unit };
  }
  return { quantity: Math.max(0.5, Math.round((grams / 28.349523125) * 2) / 2), unit: "oz" };
}

/** A recipe whose grams are those of the cups and spoons. */
function spooned(made: MadeRecipe) {
  const measures = made.lines.map(({ en, grams }) => measured(en, grams));
  const lines = made.lines.map((each, index) => ({
    ...each,
    grams: gramsOf(each.en, measures[index]!) ?? each.grams,
  }));
  return { measures, made: { ...withLines(made, lines), target: null } };
}

/** Answers beside the lines, their temperatures in °F. */
function answersInFahrenheit(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe): void {
  const [, freezer] = putRow(sheet, 2, 5, ["Freezer set to (°F)", kit.random.pick([0, -5, 5])]);
  const label = { sheet: sheet.name, row: 2, column: 5 };
  kit.marked.inputs.push({ label, value: freezer!, bare: "Freezer set to" });
  const lines = `${span(recipe.names)},${span(recipe.amounts)}`;
  if (trueValue(recipe.made, "freezing point", null) !== null) {
    const fahrenheit = shown(`=RIME.FREEZINGPOINT(${lines})*9/5+32`, "0.0");
    putRow(sheet, 3, 5, ["Freezing point (°F)", fahrenheit]);
    const ice = `=RIME.ICEFRACTION(${lines},(${a1(freezer!)}-32)*5/9,"water")`;
    putRow(sheet, 4, 5, ["Share of the water frozen in the freezer", shown(ice, "0%")]);
  }
  const water = { states: "water", as: "formula", format: "0" } as const;
  answer(sheet, recipe, ["Water in the mix (g)", 5, 5], [5, 6], water);
  const dissolved = { states: "dissolved", as: "typed", decimals: 0 } as const;
  answer(sheet, recipe, ["Dissolved solids (g)", 6, 5], [6, 6], dissolved);
  const alcohol = { states: "alcohol", as: "typed", decimals: 1 } as const;
  answer(sheet, recipe, ["Alcohol (g)", 7, 5], [7, 6], alcohol);
}

/** A recipe out of a book, its grams beside the cups, temperatures in °F throughout. */
function fromABook(kit: Kit): void {
  const { measures, made } = spooned(kit.make(1)[0]!);
  const sheet = addSheet(kit.marked.book, "Page 41");
  put(sheet, 0, 0, made.title);
  const heads = putRow(sheet, 2, 0, ["Qty", "Measure", "Ingredient", "Grams"]);
  const names = made.names.map((name, index) => {
    const { quantity, unit } = measures[index]!;
    const [, , spot] = putRow(sheet, 3 + index, 0, [shown(quantity, "# ?/?"), unit, name]);
    return spot!;
  });
  const amounts = made.grams.map((grams, index) => put(sheet, 3 + index, 3, grams));
  const end = 3 + names.length;
  put(sheet, end, 2, "Total");
  const total = sumAt(kit, sheet, [end, 3], amounts);
  const recipe = markRecipe(kit, made, { names, amounts, total, amountLabel: heads[3]! });
  answersInFahrenheit(kit, sheet, recipe);
  tellAll(sheet, [recipe], [end + 2, 0]);
  note(kit, sheet, end + 4, 0, "Level cups and spoons; nuts and cocoa not packed.");
}

/** Household measures with grams beside. */
export const spoons: readonly Layout[] = [
  { name: "a page of a cook book with grams", language: "en", build: fromABook },
];
