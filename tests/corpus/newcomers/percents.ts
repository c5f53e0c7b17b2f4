import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { markRecipe, say, sumOf } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { inUnit } from "../list";
import { input } from "../page";
import { perHundred, type MadeRecipe } from "../recipes";
import { stillMet } from "../kitchens/hand";
import { beside, listed, warn } from "./words";

const STORES = ["dry store", "walk-in", undefined, "top shelf"];

/** What the class is to find from the percentages, at their right. */
function findings(kit: Kit, sheet: CorpusSheet, recipe: MarkedRecipe): void {
  const place = { row: 5, column: 6 };
  const temperatureC = kit.random.pick([-12, -14, -16]);
  const words = { label: "Taken from the freezer at (°C)", bare: "Taken from the freezer at" };
  const temperature = input(kit, sheet, place, { ...words, value: temperatureC });
  const ice = { temperature, temperatureC, as: "formula", percent: "format" } as const;
  const next = say(sheet, recipe, { row: 6, column: 6 }, [
    { label: "Freezing temperature (°C)", states: "freezing point", as: "formula" },
    { label: "which is lower than water by (K)", states: "depression", as: "typed" },
    { label: "Water frozen, as a part of the water", states: "ice of water", ...ice },
    { label: "Ice, as a part of the mix", states: "ice of mix", ...ice },
    { label: "Sugars of all kinds (% of the mix)", states: "sugar share", as: "typed" },
    { label: "Water in 100 g of mix (g)", states: "water", as: "typed", decimals: 1 },
    { label: "Dissolved in 100 g of mix (g)", states: "dissolved", as: "typed", decimals: 1 },
  ]);
  nameTarget(sheet, recipe, { row: next + 1, column: 6, label: "To be served as" });
}

const HEADS = ["Component", "Part of the mix", "Class, g", "Each pair, g", "Fetch from"];

interface Lesson {
  readonly mix: Spot;
  readonly pairs: Spot;
}

/** Parts of the mix, grams for the class and for each pair beside them. */
function parts(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { mix, pairs }: Lesson) {
  const { heads, names, amounts, end } = listed(
    ...([sheet, made, { row: 5, column: 0 }] as const),
    { heads: HEADS, cells: (name, share) => [name, shown(inUnit(share, "fraction"), "0.0%")] },
  );
  amounts.forEach(({ row }) => put(sheet, row, 4, kit.random.pick(STORES)));
  const plan = { sheet, format: "0" };
  const portion = (spot: Spot) => `=${fixed(mix)}*${a1(spot)}`;
  const all = beside(kit, heads[2]!, amounts, { ...plan, fixed: [mix], content: portion });
  const divided = (spot: Spot) => `=${a1(spot)}/${fixed(pairs)}`;
  const each = beside(kit, heads[3]!, all, { ...plan, fixed: [pairs], content: divided });
  const row = put(sheet, end + 1, 0, "Must come to 100 %").row;
  const total = sumOf(kit, sheet, { row, column: 1 }, amounts, "0.0%");
  sumOf(kit, sheet, { row, column: 2 }, all, "0");
  sumOf(kit, sheet, { row, column: 3 }, each, "0");
  const lines = { names, amounts, alsoAmounts: [...all, ...each], total } as const;
  return markRecipe(kit, made, { ...lines, unit: "fraction", amountLabel: heads[1]! });
}

/** A formula in per cent for the class and its pairs, and what there is to read from it. */
function reading(kit: Kit): void {
  const { marked, random } = kit;
  const sheet = addSheet(marked.book, "Unit 2");
  const made = stillMet(perHundred(kit.make(1)[0]!));
  put(sheet, 0, 0, `Unit 2: reading a formula in per cent. ${made.title}`);
  const words = { label: "Mix for the class (g)", bare: "Mix for the class" };
  const value = random.whole(4, 9) * 800;
  const mix = input(kit, sheet, { row: 2, column: 0 }, { ...words, value });
  const pairs = putRow(sheet, 3, 0, ["Pairs at the benches", random.whole(6, 9)])[1]!;
  const recipe = parts(kit, sheet, made, { mix, pairs });
  findings(kit, sheet, recipe);
  const place = { row: recipe.total!.row + 2, column: 0 };
  const next = warn(sheet, recipe, place, "Allergens in it:");
  note(kit, sheet, next, 0, "Weigh to the gram; powders together in one bowl.");
}

/** Lessons on percentages. */
export const percents: readonly Layout[] = [
  { name: "unit 2, per cent for class and pairs", language: "en", build: reading },
];
