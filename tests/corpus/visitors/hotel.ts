import { a1, addSheet, fixed, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, tell, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { input } from "../page";
import { called } from "../kitchens/hand";
import { alcoholIn, beside } from "./lines";
import { listed } from "./listed";
import { menuCosts } from "./menuCosts";
import { poured } from "./poured";

const STEPS = ["weigh first", "warm to 40 °C", undefined, "fold in cold", "last"];

/** What the banquet needs, worked out from the mix of one batch; gives the number of batches. */
function covers(kit: Kit, sheet: CorpusSheet, total: string): Spot {
  const { random } = kit;
  const [, plates] = putRow(sheet, 2, 0, ["Plates to send", 10 * random.whole(6, 24)]);
  const scoop = { label: "Quenelle on a plate (g)", bare: "Quenelle on a plate" };
  const grams = input(
    kit,
    sheet,
    { row: 3, column: 0 },
    { ...scoop, value: random.pick([35, 42]) },
  );
  const need = `=${a1(plates!)}*${a1(grams)}`;
  const [, needed] = putRow(sheet, 4, 0, ["Base needed (g)", shown(need, "0")]);
  const batches = shown(`=${a1(needed!)}/${total}`, "0.00");
  return putRow(sheet, 5, 0, ["Batches to make", batches])[1]!;
}

/** What the base is like, left of the list. */
function facts(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe): void {
  const temperatureC = kit.random.pick([-9, -11, -12]);
  const pass = { label: "Temperature on the pass (°C)", bare: "Temperature on the pass" };
  const place = { row: 7, column: 0 };
  const temperature = input(kit, sheet, place, { ...pass, value: temperatureC });
  const ice = { temperature, temperatureC, as: "formula", percent: "format" } as const;
  const next = say(sheet, recipe, { row: 8, column: 0 }, [
    { label: "Base begins to freeze at (°C)", states: "freezing point", as: "formula" },
    { label: "Frozen part of its water on the pass", states: "ice of water", ...ice },
    { label: "Ice in the base on the pass", states: "ice of mix", ...ice },
    { label: "Water in one batch (g)", states: "water", as: "typed", decimals: 0 },
    {
      ...{ label: "Sugars for every 100 g of water (g)", decimals: 1 },
      ...{ states: "sugar per 100 g water", as: "typed" },
    },
    ...alcoholIn(recipe.made, {
      ...{ label: "Pure alcohol in one batch (g)", states: "alcohol" },
      ...{ as: "typed", decimals: 1 },
    }),
  ]);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Goes out as" });
}

/** A banquet: facts at the left, one batch and tonight's amounts at the right. */
function banquet(kit: Kit): void {
  const { marked } = kit;
  const sheet = addSheet(marked.book, "Banquet");
  const made = called(kit.make(1)[0]!, { sugar: "caster sugar", salt: "table salt" });
  putRow(sheet, 0, 0, ["Saturday banquet, frozen element", undefined, undefined, made.title]);
  const { heads, names, amounts, total, row } = listed(kit, sheet, made, {
    ...{ top: 2, left: 3, name: 1, amount: 0, sum: "Whole base" },
    headings: ["One batch (g)", "Product", "Tonight (g)", "How"],
    line: (at) => [made.grams[at], made.names[at], undefined, STEPS[at]],
  });
  const batches = covers(kit, sheet, a1(total));
  const plan = { column: 5, heading: heads[2]!, fixed: [batches], format: "0" };
  const alsoAmounts = beside(kit, amounts, plan, (amount) => `=${amount}*${fixed(batches)}`);
  sumOf(kit, sheet, { row, column: 5 }, alsoAmounts, "0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "g", amountLabel: heads[0]!, total },
  });
  facts(kit, sheet, recipe);
  const next = tell(kit, sheet, recipe, { row: row + 2, column: 3, as: "sentence" });
  recipe.flags.push(poured(kit));
  note(kit, sheet, Math.max(next + 1, 16), 0, "Bowls in the blast chiller from 4 pm.");
}

/** Sheets of a hotel's pastry cook. */
export const hotel: readonly Layout[] = [
  { name: "hotel banquet, one batch and tonight", language: "en", build: banquet },
  { name: "hotel menu, what a plate costs", language: "en", build: menuCosts },
];
