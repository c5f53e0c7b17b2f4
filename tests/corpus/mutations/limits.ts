import { quotedSheet } from "../../../src/workbook/quotedSheet";
import { callFunction } from "../../../src/worksheet/callFunction";
import { isFormula, put, sheetNamed, type Spot } from "../book";
import type { Prepare } from "../kit";
import {
  allPreparedIn,
  linesOf,
  one,
  preparedIn,
  seededSpots,
  type Mutation,
  type Variant,
} from "../mutation";
import { adding } from "./ingredients";
import type { MarkedBook } from "../marks";
import { massOf, withLines, type MadeRecipe } from "../recipes";
import { ALCOHOL, line } from "../stock";

const component = (made: MadeRecipe, name: string): number => {
  const grams = callFunction(
    "COMPONENT",
    made.names.map((each) => [each]),
    made.grams.map((each) => [each]),
    name,
  )[0]![0];
  return typeof grams === "number" ? grams : 0;
};

/** Adds so many grams for each gram of water in the mix. */
const perWater = (en: string, de: string, from: number, to: number): Prepare =>
  adding((made, random) =>
    line(en, de, Math.round(component(made, "water") * random.between(from, to))),
  );

const seeded = (prepare: Prepare): Variant => ({ prepare, apply: seededSpots });

/** Any cell of the prepared recipe. */
const anyLine = (
  prepare: Prepare,
  test: (marked: MarkedBook) => boolean = () => true,
): Variant => ({
  prepare,
  apply: (marked) => {
    const recipes = allPreparedIn(marked);
    if (recipes.length === 0 || !test(marked)) return null;
    return recipes.flatMap((recipe) => [...linesOf(recipe), ...recipe.targets]);
  },
});

const milky: Prepare = (made, random) => {
  if (component(made, "lactose") < 5) return null;
  return adding(() => {
    const grams = Math.round(component(made, "water") * random.between(0.4, 0.55));
    return line("skim milk powder", "Magermilchpulver", grams, {
      allergen: { en: "milk", de: "Milch" },
    });
  })(made, random);
};

const strong: Prepare = adding((made, random) =>
  line(
    "vodka 40 %",
    "Spirituose 40 % vol",
    Math.round(massOf(made) * random.between(0.7, 1.1)),
    ALCOHOL,
  ),
);

const hasTarget = (marked: MarkedBook): boolean => preparedIn(marked)!.targets.length > 0;

const unflagged: Prepare = (made) => {
  const named = made.lines.filter(
    ({ allergen, caution }) =>
      caution !== undefined || (allergen !== undefined && !/wheat|sulph/.test(allergen.en)),
  );
  if (named.length === 0) return null;
  return {
    ...withLines(made, made.lines),
    flagged: false,
    seeded: named.map((each) => each[made.language]),
  };
};

/** Takes from the other recipes, too, what they tell. */
const silent: Variant = {
  prepare: unflagged,
  apply: (marked) => {
    for (const { flags } of marked.recipes) {
      for (const spot of flags)
        put(sheetNamed(marked.book, spot.sheet), spot.row, spot.column, undefined);
    }
    // The warning under a list of spirits is one of the flags: they are as silent without it.
    const spirits = marked.alcohols.flatMap(({ grams, abv, alcohol }) => [grams, abv, alcohol]);
    const lines = [...marked.recipes.flatMap(linesOf), ...spirits];
    return preparedIn(marked) === undefined ? null : lines;
  },
};

/** Hides the row or the column of a line. */
const hiddenLine: Variant = {
  apply: (marked, random) => {
    const recipe = one(random, marked.recipes);
    if (recipe === null) return null;
    const index = random.whole(0, recipe.names.length - 1);
    const [name, amount] = [recipe.names[index]!, recipe.amounts[index]!];
    const sheet = sheetNamed(marked.book, name.sheet);
    const isColumn = name.column === amount.column;
    if (isColumn) sheet.hiddenColumns.add(name.column);
    else sheet.hiddenRows.add(name.row);
    const everything = marked.recipes.flatMap(linesOf);
    const isHidden = ({ sheet: on, row, column }: Spot) =>
      on === name.sheet && (isColumn ? column === name.column : row === name.row);
    return everything.filter(isHidden);
  },
};

/** Hides the column of the names' neighbour: the amounts themselves. */
const hiddenAmounts: Variant = {
  apply: (marked, random) => {
    const recipe = one(
      random,
      marked.recipes.filter(({ shared, results }) => !shared && results.length > 0),
    );
    if (recipe === null) return null;
    const [amount] = recipe.amounts;
    sheetNamed(marked.book, amount!.sheet).hiddenColumns.add(amount!.column);
    // Recipes below each other have their amounts in one column, which is hidden for all of them.
    return marked.recipes.flatMap(({ amounts }) =>
      amounts.filter(({ sheet, column }) => sheet === amount!.sheet && column === amount!.column),
    );
  },
};

/** Every formula of a book, with its place. */
const formulasOf = ({ book }: MarkedBook) =>
  book.sheets.flatMap(({ name, cells }) =>
    cells.flatMap((line, row) =>
      line.flatMap((cell, column) =>
        isFormula(cell) ? [{ spot: { sheet: name, row, column }, text: cell.content }] : [],
      ),
    ),
  );

/** Hides a whole sheet that formulas of another read. */
const hiddenSheet: Variant = {
  apply: (marked, random) => {
    const formulas = formulasOf(marked);
    const readersOf = (name: string) =>
      formulas.filter(
        ({ spot, text }) =>
          spot.sheet !== name &&
          (text.includes(`${name}!`) || text.includes(`${quotedSheet(name)}!`)),
      );
    const sheet = one(
      random,
      marked.book.sheets.filter(({ name }) => readersOf(name).length > 0),
    );
    if (sheet === null) return null;
    sheet.hidden = true;
    const own = sheet.cells.flatMap((line, row) =>
      line.flatMap((cell, column) =>
        cell === undefined ? [] : [{ sheet: sheet.name, row, column }],
      ),
    );
    return [...own, ...readersOf(sheet.name).map(({ spot }) => spot)];
  },
};

const MIX_CHANGED = {
  "misses-its-target": "the changed mix may miss the target it met before",
  "caution-not-named": "what the new line brings may have to be told",
  // What is added softens, too: a mix with spirit that just met its target needs less of it now.
  "too-much-alcohol-to-set": "the changed mix may be too soft as long as the spirit is in it",
} as const;

/** What a mix cannot hold, what has to be told, what is hidden. */
export const limitMutations: readonly Mutation[] = [
  {
    rule: "more-than-dissolves",
    inValues: true,
    variants: [
      seeded(perWater("salt", "Salz", 0.42, 0.6)),
      seeded(perWater("baking soda", "Natron", 0.13, 0.2)),
      seeded(perWater("sucrose", "Saccharose", 2.4, 3)),
    ],
    fair: MIX_CHANGED,
  },
  {
    rule: "lactose-may-feel-sandy",
    inValues: true,
    variants: [anyLine(milky)],
    fair: { ...MIX_CHANGED, "more-than-dissolves": "lactose beyond its solubility" },
  },
  {
    rule: "polyol-will-crystallise",
    sameLine: ["more-than-dissolves"],
    inValues: true,
    variants: [
      // So much that the water left liquid in a freezer would not hold it even at 20 °C, however sweet the mix.
      seeded(perWater("erythritol", "Erythrit", 0.34, 0.46)),
      seeded(perWater("mannitol", "Mannit", 0.13, 0.2)),
    ],
    fair: MIX_CHANGED,
  },
  {
    rule: "too-much-alcohol-to-set",
    variants: [anyLine(strong, hasTarget)],
    fair: MIX_CHANGED,
  },
  { rule: "caution-not-named", variants: [silent], fair: {} },
  {
    rule: "hidden-amount",
    variants: [hiddenLine, hiddenAmounts, hiddenSheet],
    fair: {},
  },
];
