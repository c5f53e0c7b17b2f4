import { a1, addSheet, put, putRow, shown, span, type CorpusSheet, type Spot } from "../book";
import { nameTarget, note, type Kit, type Layout } from "../kit";
import { largestFirst } from "../kitchens/hand";
import { again } from "../layouts/marking";
import { markRecipe, say, sumOf, type Said } from "../layouts/parts";
import type { MarkedRecipe } from "../marks";
import { listed } from "../newcomers/words";
import { input } from "../page";
import type { MadeRecipe } from "../recipes";
import { isAlcoholic, madeOf } from "../strollers/words";
import { line, type StockLine } from "../stock";
import { fact, tellBy, together, type Voice } from "./words";

const VOICE: Voice = {
  lead: "Diet office, declare:",
  honey: "Contains honey, not under 12 months",
  alcohol: "Contains alcohol, adults only, not in pregnancy, not if driving",
  nuts: "Whole nuts, choking hazard, no under-fives",
  egg: "Uses raw egg yolk, bring to 71 °C or order pasteurised",
};

const isSugar = ({ en }: StockLine): boolean => en === "sugar" || en === "sucrose";

/** Half of the sugar taken out, a third of it put back as fructose and some bulk as inulin. */
function swapped(made: MadeRecipe): MadeRecipe {
  const sugar = made.lines.filter(isSugar).reduce((sum, { grams }) => sum + grams, 0);
  const lines = made.lines.map((each) =>
    isSugar(each) ? { ...each, grams: each.grams / 2 } : each,
  );
  return together(made, [
    ...lines,
    line("fructose", "Fruktose", sugar * 0.33),
    line("inulin", "Inulin", sugar * 0.12),
  ]);
}

const FIGURES: readonly Said[] = [
  { label: "Sugars, % by weight", states: "sugar share", as: "typed" },
  {
    label: "Sugars to 100 g of water, g",
    states: "sugar per 100 g water",
    as: "typed",
    decimals: 1,
  },
  { label: "Water, %", states: "water", as: "typed", decimals: 1 },
  { label: "Freezing point, °C", states: "freezing point", as: "typed", decimals: 1 },
  {
    label: "Ice at −16 °C, % of all of it",
    ...{ states: "ice of mix", as: "typed", temperatureC: -16, decimals: 0 },
  },
];

interface Side {
  readonly word: string;
  readonly column: number;
  readonly figures: number;
}

/** One version with its figures below; gives the recipe. */
function version(kit: Kit, sheet: CorpusSheet, made: MadeRecipe, side: Side): MarkedRecipe {
  const { word, column, figures } = side;
  put(sheet, 2, column, word);
  const { heads, names, amounts, end } = listed(
    sheet,
    made,
    { row: 3, column },
    {
      heads: ["Ingredient", "% by weight"],
      cells: (name, grams) => [name, shown(grams, "0.0")],
    },
  );
  put(sheet, end, column, "All");
  const total = sumOf(kit, sheet, { row: end, column: column + 1 }, amounts, "0.0");
  const lines = { names, amounts, total, unit: "%", amountLabel: heads[1]! } as const;
  const recipe = markRecipe(kit, made, lines);
  const next = say(sheet, recipe, { row: figures, column }, FIGURES);
  nameTarget(sheet, recipe, { row: next, column, label: "Serve as" });
  tellBy(sheet, recipe, { row: figures + 7, column }, VOICE);
  return recipe;
}

const sugarsOf = ({ results }: MarkedRecipe): Spot | undefined =>
  results.find(({ states }) => states === "sugar share")?.spot;

/** What a portion of each brings, on a sheet of its own. */
function perPortion(kit: Kit, from: string, recipes: readonly MarkedRecipe[]): void {
  const sheet = addSheet(kit.marked.book, "Sugars per portion");
  const value = kit.random.pick([65, 80, 90]);
  const words = { label: "Portion on the diet sheet (g)", bare: "Portion on the diet sheet" };
  const portion = input(kit, sheet, { row: 0, column: 0 }, { ...words, value });
  const rows = recipes.flatMap((recipe, index) => {
    const sugars = sugarsOf(recipe);
    if (sugars === undefined) return [];
    const word = ["Usual version, sugars (g)", "Swapped version, sugars (g)"][index]!;
    const content = `='${from}'!${a1(sugars)}/100*${a1(portion)}`;
    return [fact(sheet, { row: 2 + index, column: 0 }, word, shown(content, "0.0"))];
  });
  if (rows.length < 2) return;
  const saved = shown(`=${a1(rows[0]!)}-${a1(rows[1]!)}`, "0.0");
  fact(sheet, { row: 4, column: 0 }, "Saved per portion (g)", saved);
  putRow(sheet, 5, 0, ["Mean of both (g)", shown(`=AVERAGE(${span(rows)})`, "0.0")]);
}

/** The usual dessert beside one with half of its sugar swapped. */
function sugarSwap(kit: Kit): void {
  const name = "Usual and swapped";
  const sheet = addSheet(kit.marked.book, name);
  const made = madeOf(kit, 1, (each) => !isAlcoholic(each))[0]!;
  const plain = made.seeded === undefined ? made : again(kit, made);
  const mades = [made, swapped(plain)].map(largestFirst);
  put(sheet, 0, 0, `${made.title}: can the sugar come down?`);
  const figures = 6 + Math.max(...mades.map(({ names }) => names.length));
  const recipes = mades.map((each, index) => {
    const word = ["On the menu now", "Half the sugar swapped"][index]!;
    return version(kit, sheet, each, { word, column: 3 * index, figures });
  });
  note(kit, sheet, figures + 9, 0, "Inulin: start low, some patients bloat.");
  perPortion(kit, name, recipes);
}

/** A dietitian's sheet about sugars. */
export const sugarSwaps: readonly Layout[] = [
  { name: "hospital dietitian, usual and swapped sugars", language: "en", build: sugarSwap },
];
