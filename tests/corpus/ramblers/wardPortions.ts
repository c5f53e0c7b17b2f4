import { a1, addSheet, fixed, put, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf, upTo } from "../strollers/words";
import { cautionsBy, fact, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Allergens:",
  honey: "Honey: unsuitable for infants under 12 months",
  alcohol: "Alcohol: not for children, in pregnancy or before driving",
  nuts: "Whole nuts: choking risk for under 5s and on soft diets",
  egg: "Raw yolk: cook to 71 °C or use pasteurised",
};

const PROFILE: readonly Said[] = [
  {
    ...{ label: "Starts freezing at", inCell: "°C" },
    ...{ states: "freezing point", as: "formula", format: "0.0" },
  },
  { label: "Fluid (all water)", inCell: "g", states: "water", as: "typed", decimals: 0 },
  { label: "Total sugars, of the weight", inCell: "%", states: "sugar share", as: "typed" },
  { label: "Dissolved matter", inCell: "g", states: "dissolved", as: "formula", format: "0" },
  {
    ...{ label: "Water still frozen on the trolley at −9 °C", inCell: "%", decimals: 0 },
    ...{ states: "ice of water", as: "typed", temperatureC: -9 },
  },
];

interface Ward {
  readonly portion: Spot;
  readonly patients: Spot;
}

/** What is weighed, what a patient gets of it and what each line has to declare. */
function weighed(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, { portion }: Ward): MarkedRecipe {
  const list = listed(
    sheet,
    made,
    { row: 6, column: 0 },
    {
      heads: ["Food", "Batch", "Unit", "Per portion (g)", "Allergen"],
      cells: (name, grams) => [name, grams, "g"],
    },
  );
  const { heads, rows, names, amounts, end } = list;
  put(sheet, end, 0, "Batch yield");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts);
  put(sheet, end, 2, "g");
  const alsoAmounts = beside(kit, heads[3]!, amounts, {
    ...{ sheet, format: "0.0", fixed: [total, portion] },
    content: (spot) => `=${a1(spot)}/${fixed(total)}*${fixed(portion)}`,
  });
  sumOf(kit, sheet, { row: end, column: 3 }, alsoAmounts, "0.0");
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unitCells: columnOf(rows, 2), unit: "g", total },
    amountLabel: heads[1]!,
  });
  declared(sheet, recipe);
  return recipe;
}

/** The allergen of each line beside it. */
function declared(sheet: CorpusSheet, { made, names, flags }: MarkedRecipe): void {
  if (!made.flagged) return;
  made.lines.forEach(({ allergen }, index) => {
    if (allergen !== undefined) flags.push(put(sheet, names[index]!.row, 4, allergen.en));
  });
}

/** What the ward has to watch, a row each. */
function watch(sheet: CorpusSheet, { made, flags }: MarkedRecipe, row: number): number {
  const cautions = made.flagged ? cautionsBy(made, VOICE) : [];
  cautions.forEach((words, index) => flags.push(put(sheet, row + index, 0, words)));
  return row + cautions.length;
}

/** A dessert for the wards: portions, what is declared, and what there is of sugars and fluid. */
function wardPortions(kit: Kit): void {
  const { random, marked } = kit;
  const made = upTo(madeOf(kit, 1, (each) => !isAlcoholic(each))[0]!, 2500);
  const sheet = addSheet(marked.book, "Wards 3 and 5");
  put(sheet, 0, 0, `Frozen dessert for the wards: ${made.title}`);
  note(kit, sheet, 1, 0, "Menu cycle week 2, Tuesday supper");
  const portion = input(
    kit,
    sheet,
    { row: 3, column: 0 },
    {
      ...{ label: "Portion (g)", bare: "Portion", value: random.pick([60, 75, 80, 100]) },
    },
  );
  const patients = fact(sheet, { row: 4, column: 0 }, "Patients ordering", random.whole(18, 34));
  const recipe = weighed(kit, sheet, made, { portion, patients });
  const { row } = recipe.total!;
  const portions = shown(`=${a1(recipe.total!)}/${a1(portion)}`, "0.0");
  const served = fact(sheet, { row: row + 2, column: 0 }, "Portions in the batch", portions);
  const batches = shown(`=${a1(patients)}/${a1(served)}`, "0.0");
  fact(sheet, { row: row + 3, column: 0 }, "Batches for the order", batches);
  const next = say(sheet, recipe, { row: row + 5, column: 0 }, PROFILE);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Texture wanted" });
  const last = watch(sheet, recipe, next + 2);
  note(kit, sheet, last + 1, 0, "Thickened-fluid patients get the set custard instead.");
}

/** A dietitian's sheet for the wards. */
export const wards: readonly Layout[] = [
  { name: "hospital dietitian, ward portions", language: "en", build: wardPortions },
];
