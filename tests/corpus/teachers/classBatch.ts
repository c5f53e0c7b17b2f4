import { a1, addSheet, fixed, put, putRow, shown, span, type CorpusSheet } from "../book";
import { tellIn, type Voice } from "../caterers/words";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { called, largestFirst } from "../kitchens/hand";
import { given } from "../lodgers/words";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { beside, listed } from "../newcomers/words";
import { labelWords, type MadeRecipe } from "../recipes";
import { resultAt } from "../results";
import { isAlcoholic, madeOf, temperatures } from "../strollers/words";
import { under } from "./words";

const VOICE: Voice = {
  lead: "On the tub we write:",
  honey: "Sweetened with honey; babies under 12 months must not have any.",
  alcohol: "Made with alcohol; no children, no pregnant guests, no drivers.",
  nuts: "Nuts are whole; a choking hazard for children under 5.",
  egg: "Yolk goes in raw; use pasteurised or bring it to 71 °C.",
};

const SAID: readonly Said[] = [
  { label: "freezing begins", inCell: "°C", states: "freezing point", as: "typed", decimals: 1 },
  { label: "water per 100 g", inCell: "g", states: "water", as: "formula", format: "0.0" },
  {
    label: "of that water, ice at −14 °C",
    ...{ inCell: "%", states: "ice of water", as: "typed", temperatureC: -14, decimals: 0 },
  },
  { label: "sugars, % by mass of the mix", states: "sugar share", as: "typed", decimals: 1 },
];

/** A recipe in per cent, worked out for the class beside it. */
function tab(kit: Kit, made: MadeRecipe, name: string): MarkedRecipe {
  const sheet = addSheet(kit.marked.book, name);
  put(sheet, 0, 0, made.title);
  const pupils = putRow(sheet, 1, 0, ["pupils", kit.random.whole(14, 24)])[1]!;
  const tub = given(kit, sheet, [2, 0], ["a tub each", "g", kit.random.pick([80, 90, 100])]);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 4, column: 0 },
    {
      heads: ["what", "%", "for the class, g", "bring from"],
      cells: (item, share) => [
        ...[item, shown(share, "0.0"), undefined, kit.random.pick(["store", "shop"])],
      ],
    },
  );
  const scaled = beside(kit, heads[2]!, amounts, {
    ...{ sheet, format: "0", fixed: [pupils, tub] },
    content: (spot) => `=${a1(spot)}/100*${fixed(pupils)}*${fixed(tub)}`,
  });
  put(sheet, end, 0, "sum");
  const total = sumOf(kit, sheet, { row: end, column: 1 }, amounts, "0.0");
  sumOf(kit, sheet, { row: end, column: 2 }, scaled, "0");
  const cells = { names, amounts, alsoAmounts: scaled, total } as const;
  const recipe = markRecipe(kit, made, { ...cells, amountLabel: heads[1]!, unit: "%" });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, SAID);
  tellIn(sheet, recipe, { row: next + 1, column: 0 }, VOICE);
  return recipe;
}

const HEADS = [
  ...["Week", "Sheet", "Ice", "Freezing point by formula (°C)", "Depression (K)"],
  ...["Served as", "Allergens", "Air con in room 8 (°C)"],
];

/** The plan of the term, which reads the sheets. */
function plan(kit: Kit, sheet: CorpusSheet, recipes: readonly MarkedRecipe[]): void {
  const heads = putRow(sheet, 2, 0, HEADS);
  recipes.forEach((recipe, index) => {
    const { made, names, amounts, flags } = recipe;
    const row = 3 + index;
    const { sheet: name } = names[0]!;
    putRow(sheet, row, 0, [2 * index + 1, name, made.title]);
    const lines = `'${name}'!${span(names)},'${name}'!${span(amounts)}`;
    const point = { states: "freezing point", as: "formula", format: "0.00" } as const;
    const drop = { states: "depression", as: "formula", format: "0.00" } as const;
    resultAt(sheet, recipe, heads[3]!, { row, column: 3 }, point, () => lines);
    resultAt(sheet, recipe, heads[4]!, { row, column: 4 }, drop, () => lines);
    nameTarget(sheet, recipe, { row, column: 5 });
    const allergens = made.flagged ? labelWords(made, "allergen").join(", ") : "";
    if (allergens !== "") flags.push(put(sheet, row, 6, allergens));
    put(sheet, row, 7, kit.random.whole(19, 23));
  });
  temperatures(kit, heads[7]!, under(heads[7]!, recipes.length));
}

/** A recipe a fortnight, a sheet each, the term's plan in front. */
function classBatch(kit: Kit): void {
  const sheet = addSheet(kit.marked.book, "Term plan");
  put(sheet, 0, 0, "Summer term, Wednesday cooks");
  const words = { water: "water", sugar: "white sugar", "cocoa powder": "cocoa" };
  const mades = madeOf(kit, 3, (made) => !isAlcoholic(made)).map((made) =>
    called(largestFirst(made), words),
  );
  const recipes = mades.map((made, index) => tab(kit, made, `Week ${2 * index + 1}`));
  plan(kit, sheet, recipes);
  note(kit, sheet, 8, 0, "Even weeks: we taste, compare and write it up.");
}

/** A cookery club at school. */
export const classBatches: readonly Layout[] = [
  { name: "Wednesday cooks, a sheet a fortnight", language: "en", build: classBatch },
];
