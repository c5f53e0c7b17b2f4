import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import { sound } from "../guests/words";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import type { MadeRecipe } from "../recipes";
import { changed, plainOf } from "./swaps";
import { comparisons } from "./variants";
import { given, warnIn, type Cautions } from "./words";

const OWN: Cautions = {
  honey: "Contains honey: unsuitable for babies under 12 months.",
  alcohol: "Contains alcohol: unsuitable for children, in pregnancy or before driving.",
  nuts: "Contains whole nuts: choking hazard for children under 5.",
  egg: "Contains raw egg yolk: heat to 71 °C or use pasteurised yolk.",
};

/** The project's trials: the first as the book has it, which may hold a mistake. */
function trialsOf(kit: Kit): readonly (readonly [string, string, MadeRecipe])[] {
  const made = plainOf(kit);
  const plain = sound(kit, made);
  return [
    ["Trial 1", "As in the recipe book", made],
    ["Trial 2", "Sugar cut by a fifth", changed(plain, 0.8)],
    ["Trial 3", "A quarter of the sugar replaced by fructose", changed(plain, 0.75, "fructose")],
  ];
}

/** The panel's marks out of five, a row each, their mean beside. */
function panel(kit: Kit, sheet: CorpusSheet, top: number, left: number): void {
  const heads = putRow(sheet, top, left, ["Panel (1 to 5)", "A", "B", "C", "D", "mean"]);
  const means = ["sweetness", "smoothness", "flavour", "easy to scoop"].map((what, index) => {
    const marks = Array.from({ length: 4 }, () => kit.random.whole(2, 5));
    const spots = putRow(sheet, top + 1 + index, left, [what, ...marks]);
    const mean = `=AVERAGE(${a1(spots[1]!)}:${a1(spots[4]!)})`;
    return put(sheet, top + 1 + index, left + 5, shown(mean, "0.0"));
  });
  kit.marked.formulaColumns.push({ spots: means, heading: heads[5]!, fixed: [] });
}

interface Trial {
  readonly top: number;
  readonly family: Spot;
  readonly freezer: Spot;
  readonly temperatureC: number;
}

/** What was found out and what was looked up. */
function findings(sheet: CorpusSheet, recipe: MarkedRecipe, row: number, trial: Trial): number {
  const { freezer: temperature, temperatureC } = trial;
  const next = say(sheet, recipe, { row, column: 0 }, [
    { label: "Freezing point, calculated (°C)", states: "freezing point", as: "formula" },
    { label: "Total sugars (% of the mixture)", states: "sugar share", as: "typed" },
    {
      label: "Water frozen in our freezer (% of the water)",
      ...{ states: "ice of water", as: "formula", temperature, temperatureC, format: "0.0" },
    },
    { label: "Water in the mixture (g)", states: "water", as: "typed", decimals: 0 },
    { label: "Dissolved in the water (g)", states: "dissolved", as: "typed", decimals: 0 },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Aim" });
  return warnIn(sheet, recipe, { row: next + 1, column: 0 }, [
    "Allergy information: contains",
    OWN,
  ]);
}

/** One trial of the log; gives the next free row. */
function trial(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, plan: Trial): number {
  const { top, family } = plan;
  const list = listed(
    sheet,
    made,
    { row: top, column: 0 },
    {
      heads: ["Ingredients", "Quantity (g)", "One serving (g)"],
      cells: (name, grams) => [name, grams],
    },
  );
  const { heads, names, amounts, end } = list;
  const serving = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [family] },
    content: (spot) => `=${a1(spot)}/${fixed(family)}`,
  });
  put(sheet, end, 0, "Total weight");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  sumOf(kit, sheet, { row: end, column: 2 }, serving, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts: serving, unit: "g", amountLabel: heads[1]!, total },
  });
  panel(kit, sheet, top, 4);
  return findings(sheet, recipe, end + 2, plan) + 1;
}

/** The log of a project, trial under trial. */
function log(kit: Kit): void {
  const { random } = kit;
  const sheet = addSheet(kit.marked.book, "Log");
  const trials = trialsOf(kit);
  put(sheet, 0, 0, `Home economics project: does sugar make ${trials[0]![2].title} softer?`);
  const family = putRow(sheet, 1, 0, ["Servings", random.whole(6, 10)])[1]!;
  const temperatureC = -random.whole(16, 19);
  const freezer = given(kit, sheet, [2, 0], ["Freezer thermometer", "°C", temperatureC]);
  let top = 4;
  trials.forEach(([name, what, made], index) => {
    putRow(sheet, top, 0, [name, `${9 + 7 * index} Feb`, what]);
    top = trial(kit, sheet, made, { top: top + 1, family, freezer, temperatureC });
    note(
      kit,
      sheet,
      top - 1,
      0,
      ["Photos 1 to 4.", "Tasted the next morning, no time before.", "Photos 9 to 12."][index]!,
    );
    top += 1;
  });
}

/** A home-economics student. */
export const students: readonly Layout[] = [
  { name: "home economics project, log of trials", language: "en", build: log },
  ...comparisons,
];
