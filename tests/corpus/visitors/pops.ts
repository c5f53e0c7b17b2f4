import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { called, perKilogram } from "../kitchens/hand";
import { brine } from "./brine";
import { flavours } from "./flavours";
import { alcoholIn, beside, labelText } from "./lines";
import { listed } from "./listed";

/** The label on a sheet of its own: what it lists, what it warns of. */
function sticker(kit: Kit, recipe: MarkedRecipe): void {
  const { made } = recipe;
  const sheet = addSheet(kit.marked.book, "Label");
  const order = made.names.map((name, at) => ({ name, grams: made.grams[at]! }));
  order.sort((one, other) => other.grams - one.grams);
  const ingredients = order.map(({ name }) => name).join(", ");
  putRow(sheet, 0, 0, ["Front", made.title]);
  putRow(sheet, 1, 0, ["Back", `Ingredients: ${ingredients}.`]);
  const text = labelText(made, "Contains");
  if (made.flagged && text !== "") recipe.flags.push(put(sheet, 2, 1, text));
  put(sheet, 3, 1, "Keep frozen at −18 °C. Do not refreeze.");
}

/** How many pops are run; gives the kilograms of mix for it. */
function run(kit: Kit): Spot {
  const { random, marked } = kit;
  const sheet = marked.book.sheets[0]!;
  const [, moulds] = putRow(sheet, 2, 1, ["Moulds", random.whole(3, 8)]);
  const [, sticks] = putRow(sheet, 3, 1, ["Sticks in a mould", random.pick([22, 26, 28])]);
  const words = { label: "Fill of one pop (g)", bare: "Fill of one pop" };
  const place = { row: 4, column: 1 };
  const fill = input(kit, sheet, place, { ...words, value: random.pick([68, 75, 82]) });
  const mix = shown(`=${[moulds!, sticks!, fill].map(a1).join("*")}/1000`, "0.00");
  return putRow(sheet, 5, 1, ["Mix for the run (kg)", mix])[1]!;
}

/** What the mix is like, at the right. */
function mixAnswers(sheet: CorpusSheet, recipe: MarkedRecipe): void {
  const next = say(sheet, recipe, { row: 2, column: 5 }, [
    { label: "Mix begins to freeze (°C)", states: "freezing point", as: "typed", decimals: 1 },
    { label: "Below 0 °C by (K)", states: "depression", as: "formula" },
    { label: "Water in 1 kg of mix (g)", states: "water", as: "formula", format: "0" },
    ...alcoholIn(recipe.made, {
      ...{ label: "Alcohol in 1 kg of mix (g)", states: "alcohol" },
      ...{ as: "typed", decimals: 1 },
    }),
    { label: "Dissolved in 1 kg of mix (g)", states: "dissolved", as: "typed", decimals: 0 },
    {
      label: "Water turned to ice at −15 °C (%)",
      ...{ states: "ice of water", as: "typed", temperatureC: -15 },
    },
  ]);
  nameTarget(sheet, recipe, { row: next, column: 5, label: "Bite wanted" });
}

/** A run of pops: a kilogram of the mix at the right, the kilograms of the run at the left. */
function runSheet(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Run");
  const made = called(perKilogram(kit.make(1)[0]!), { "vodka 40 %": "vodka 40%" });
  putRow(sheet, 0, 1, [`Pops: ${made.title}`, `Run no. ${random.whole(10, 99)}`]);
  const mix = run(kit);
  const { heads, names, amounts, total, row } = listed(kit, sheet, made, {
    ...{ top: 7, left: 1, name: 1, amount: 2, sum: "Together" },
    headings: ["Weigh in (kg)", "Ingredient", "Grams in 1 kg of mix"],
    line: (at) => [undefined, made.names[at], made.grams[at]],
  });
  const plan = { column: 1, heading: heads[0]!, fixed: [mix], format: "0.000" };
  const alsoAmounts = beside(kit, amounts, plan, (amount) => `=${amount}*${fixed(mix)}/1000`);
  sumOf(kit, sheet, { row, column: 1 }, alsoAmounts, "0.000");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[2]!, total },
  });
  mixAnswers(sheet, recipe);
  note(kit, sheet, row + 2, 1, "Sticks go in after 40 minutes.");
  sticker(kit, recipe);
  brine(kit);
}

/** Sheets of a small maker of ice pops. */
export const pops: readonly Layout[] = [
  { name: "pops, a run of moulds and its brine", language: "en", build: runSheet },
  { name: "pops, flavours in columns with prices", language: "en", build: flavours },
];
