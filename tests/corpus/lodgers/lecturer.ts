import { a1, addSheet, fixed, put, putRow, shown, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { columnOf, largestFirst } from "../kitchens/hand";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MadeRecipe } from "../recipes";
import { beside, listed, type Listed } from "../newcomers/words";
import { labSheets } from "./lab";
import { given, warnIn, type Cautions } from "./words";

const OWN: Cautions = {
  honey: "Honey: not suitable for infants under 12 months.",
  alcohol: "Contains alcohol: not for under-18s, pregnant students or anyone driving.",
  nuts: "Whole nuts: choking hazard for children under 5.",
  egg: "Raw egg yolk: cook out to 71 °C or use pasteurised yolk.",
};

const DOES: readonly (readonly [RegExp, string])[] = [
  [/^water|coffee/, "moisture"],
  [/honey/, "sweetness, softness"],
  [/sugar|sucrose|monohydrate$|fructose|syrup/, "sweetness, softness"],
  [/yolk/, "emulsifier"],
  [/^cream|whole milk|skim/, "fat and milk solids"],
  [/inulin/, "body"],
  [/nuts|pistachios|pecans|biscuits|chocolate|coconut$/, "texture"],
  [/lemon|lime|acid/, "acidity"],
  [/salt/, "seasoning"],
  [/vodka|rum/, "flavour, softness"],
];

const does = (name: string): string => DOES.find(([of]) => of.test(name))?.[1] ?? "flavour";

/** Syrups that every group makes up, their strength both ways. */
function stockSyrups({ random, marked }: Kit, sheet: CorpusSheet, top: number): void {
  put(sheet, top, 0, "Stock syrups to have ready");
  const heads = putRow(sheet, top + 1, 0, [
    ...["Syrup", "Sucrose (g)", "Water (g)", "Sucrose, % w/w", "Sucrose, g per 100 g water"],
  ]);
  const rows = ["light", "medium", "heavy", "glazing"].map((name, index) => {
    const row = top + 2 + index;
    const sugarGrams = 150 + 120 * index + 10 * random.whole(0, 6);
    const [, sugar, water] = putRow(sheet, row, 0, [name, sugarGrams, 500]) as [Spot, Spot, Spot];
    const mass = `=${a1(sugar)}/(${a1(sugar)}+${a1(water)})*100`;
    const share = put(sheet, row, 3, shown(mass, "0.0"));
    const ratio = shown(`=${a1(sugar)}/${a1(water)}*100`, "0.0");
    const perWater = put(sheet, row, 4, ratio);
    marked.strengths.push({ sugar, water, perWater, share });
    return [share, perWater];
  });
  [0, 1].forEach((at) =>
    marked.formulaColumns.push({ spots: columnOf(rows, at), heading: heads[3 + at]!, fixed: [] }),
  );
}

/** Grams for the demonstration and for a bench, by the per cent; gives both columns' cells. */
function weights(kit: Kit, { sheet, heads, amounts, end }: Listed, sizes: readonly Spot[]): Spot[] {
  return sizes.flatMap((size, at) => {
    const spots = beside(kit, heads[3 + at]!, amounts, {
      ...{ sheet, format: "0", fixed: [size] },
      content: (spot) => `=${a1(spot)}/100*${fixed(size)}`,
    });
    sumOf(kit, sheet, { row: end, column: 3 + at }, spots, "0");
    return spots;
  });
}

const FACTS: readonly Said[] = [
  { label: "Initial freezing temperature (°C)", states: "freezing point", as: "formula" },
  { label: "which is lower than water's by (K)", states: "depression", as: "typed" },
  { label: "Water (g per 100 g mix)", states: "water", as: "formula", format: "0.0" },
  { label: "Sugar concentration, % w/w of mix", states: "sugar share", as: "typed" },
  {
    label: "Sugar concentration, g per 100 g water",
    states: "sugar per 100 g water",
    as: "typed",
  },
  {
    label: "Ice at −12 °C, % w/w of mix",
    ...{ states: "ice of mix", as: "typed", temperatureC: -12 },
  },
  {
    label: "Water frozen at −12 °C, % of all water",
    ...{ states: "ice of water", as: "typed", temperatureC: -12 },
  },
];

/** What is in it, in per cent. */
function shares(sheet: CorpusSheet, made: MadeRecipe): Listed {
  putRow(sheet, 1, 0, ["Mix under discussion", made.title]);
  return listed(
    sheet,
    made,
    { row: 5, column: 0 },
    {
      heads: ["Ingredient", "Function", "% w/w", "Demonstration (g)", "Bench (g)"],
      ...{ amount: 2, cells: (name, grams) => [name, does(name), shown(grams, "0.0")] },
    },
  );
}

/** A formula in per cent by weight, what each part does, and the weights for the day. */
function percentages(kit: Kit): void {
  const { random, marked } = kit;
  const sheet = addSheet(marked.book, "Session 7");
  const made = largestFirst(kit.make(1)[0]!);
  put(sheet, 0, 0, "Level 3 pâtisserie, session 7: balancing a frozen mix");
  const sizes = [
    given(kit, sheet, [2, 0], ["Demonstration", "g", random.pick([1500, 2000, 2500])]),
    given(kit, sheet, [3, 0], ["Each bench", "g", random.pick([600, 750, 800])]),
  ];
  const list = shares(sheet, made);
  const { heads, names, amounts, end } = list;
  put(sheet, end, 0, "Check: must come to 100");
  const total = sumOf(kit, sheet, { row: end, column: 2 }, amounts, "0.0");
  const alsoAmounts = weights(kit, list, sizes);
  const recipe = markRecipe(kit, made, {
    ...{ names, amounts, alsoAmounts, unit: "%", amountLabel: heads[2]!, total },
  });
  marked.numberColumns.push({ spots: amounts, heading: heads[2]!, total, kind: "per cent" });
  const next = say(sheet, recipe, { row: end + 2, column: 0 }, FACTS);
  nameTarget(sheet, recipe, { row: next, column: 0, label: "Serving style" });
  const lead = ["Allergen statement: contains", OWN] as const;
  const free = warnIn(sheet, recipe, { row: next + 1, column: 0 }, lead);
  stockSyrups(kit, sheet, free + 1);
  note(kit, sheet, free + 8, 0, "Discussion: swap a fifth of the sugar for dextrose. What moves?");
}

/** A pastry lecturer at a college. */
export const lecturers: readonly Layout[] = [
  { name: "pastry lecturer, per cent and bench weights", language: "en", build: percentages },
  ...labSheets,
];
