import { callFunction } from "../../../src/worksheet/callFunction";
import { a1, addSheet, put, putRow, shown, type CorpusSheet } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import { meets, withLines, type MadeRecipe } from "../recipes";
import { ofSpirit, readings, tellOnce } from "./words";

type Measure = readonly [count: number, unit: string, grams: number];

const UNITS = [
  ["cup", 4],
  ["tbsp", 2],
  ["tsp", 4],
] as const;

/** The biggest measure that fits, else the kitchen scale. */
function measureOf(name: string, grams: number): Measure {
  for (const [unit, parts] of UNITS) {
    const one = callFunction("GRAMS", name, 1, unit)[0]?.[0];
    if (typeof one !== "number" || grams < one / 2) continue;
    const count = Math.round((grams / one) * parts) / parts;
    return [count, unit, Math.round(count * one)];
  }
  return [grams, "g", grams];
}

/** Forgets the target where the cups alone decide whether it is met. */
function asBefore({ target, grams, names }: MadeRecipe, after: MadeRecipe): MadeRecipe {
  const isSame = target === null || meets({ grams, names }, target) === meets(after, target);
  return isSame ? after : { ...after, target: null };
}

const said = (made: MadeRecipe, at: Pick<Said, "temperature" | "temperatureC">): Said[] => [
  { label: "It starts to freeze at (°C)", states: "freezing point", as: "formula" },
  { label: "Water in the whole lot (g)", states: "water", as: "formula", format: "0" },
  {
    ...{ label: "Part of that water frozen in our freezer (%)", states: "ice of water" },
    ...{ as: "formula", format: "0", ...at },
  },
  ...ofSpirit(made, { label: "Pure alcohol (g)" }),
];

/** The recipe with the grams that its cups and spoons make. */
function inCups(given: MadeRecipe) {
  const measures = given.names.map((name, index) => measureOf(name, given.grams[index]!));
  const weighed = given.lines.map((each, index) => ({ ...each, grams: measures[index]![2] }));
  const made = asBefore(given, { ...withLines(given, weighed), names: given.names });
  return { measures, made };
}

/** The lines in cups and spoons and what they weigh. */
function lines(kit: Kit, sheet: CorpusSheet, given: MadeRecipe): MarkedRecipe {
  const { measures, made } = inCups(given);
  const place = { row: 4, column: 0 };
  const {
    heads,
    rows,
    names,
    amounts: counts,
    end,
  } = listed(sheet, made, place, {
    heads: ["How many", "Cup or spoon", "Of what", "Grams"],
    cells: (name, _, index) => [measures[index]![0], measures[index]![1], name],
    ...{ name: 2, amount: 0 },
  });
  const amounts = beside(kit, heads[3]!, counts, {
    ...{ sheet, format: "0" },
    content: (count, index) => {
      const [unit, name] = [a1(rows[index]![1]!), a1(names[index]!)];
      return `=ROUND(RIME.GRAMS(${name},${a1(count)},${unit}),0)`;
    },
  });
  put(sheet, end, 2, "All in");
  const total = sumOf(kit, sheet, { row: end, column: 3 }, amounts, "0");
  return markRecipe(kit, made, { names, amounts, unit: "g", amountLabel: heads[3]!, total });
}

const TRIES = ["Easter", "Memorial Day", "birthday", "Fourth of July", "heat wave", "last batch"];

/** What the table said of it. */
function verdict(hours: number, celsius: number): string {
  if (hours < 8) return "still soft in the middle";
  return celsius < -18.5 ? "hard, wait ten minutes" : "lovely";
}

/** How it went each time, right of the recipe. */
function diary(kit: Kit, sheet: CorpusSheet): void {
  const { random } = kit;
  put(sheet, 3, 5, "How it went");
  const heads = putRow(sheet, 4, 5, ["Made for", "Hours frozen", "Freezer read (°C)", "Verdict"]);
  const rows = TRIES.map((time, index) => {
    const [hours, celsius] = [random.whole(5, 26), -random.whole(150, 215) / 10];
    const line = [time, hours, shown(celsius, "0.0"), verdict(hours, celsius)];
    return putRow(sheet, 5 + index, 5, line);
  });
  readings(kit, heads[2]!, columnOf(rows, 2));
}

/** A recipe in cups and spoons with what came of it. */
function weekendCook(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Our favourite");
  const words = { sugar: "granulated sugar", honey: "runny honey", water: "cold water" };
  const made = called(kit.make(1)[0]!, words);
  put(sheet, 0, 0, made.title);
  put(sheet, 1, 0, "American cups and spoons, level");
  const value = -kit.random.whole(15, 19);
  const freezer = { label: "Our freezer (°C)", bare: "Our freezer", value };
  const temperature = input(kit, sheet, { row: 2, column: 0 }, freezer);
  const recipe = lines(kit, sheet, made);
  diary(kit, sheet);
  const at = { temperature, temperatureC: value };
  let next = say(sheet, recipe, { row: recipe.total!.row + 2, column: 0 }, said(made, at));
  nameTarget(sheet, recipe, { row: next++, column: 0, label: "Supposed to be" });
  next = tellOnce(sheet, recipe, { row: next, column: 0 }, "Guests with allergies:");
  note(kit, sheet, next + 1, 0, "Double it when the cousins come.");
}

/** Somebody who cooks at weekends. */
export const weekendCooks: readonly Layout[] = [
  { name: "weekend cook, cups and spoons and a diary", language: "en", build: weekendCook },
];
