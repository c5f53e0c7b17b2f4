import { put, retype, sheetNamed, span, typedAt, type Spot } from "../book";
import type { MarkedBook, MarkedRecipe } from "../marks";
import {
  CHANGED_AMOUNT,
  FEEDS_ERRORS,
  linesOf,
  numberAt,
  one,
  retypeNumber,
  textAt,
  type Mutation,
  type Variant,
} from "../mutation";
import type { Chance } from "../random";
import { massOf } from "../recipes";
import { textNumberVariants } from "./textNumbers";

interface Cell {
  readonly recipe: MarkedRecipe;
  readonly index: number;
  readonly spot: Spot;
  readonly value: number;
}

const cellsOf = (marked: MarkedBook): Cell[] =>
  marked.recipes.flatMap((recipe) =>
    recipe.amounts.map((spot, index) => ({ recipe, index, spot, value: numberAt(marked, spot) })),
  );

/** Changes one amount of those that pass. */
const amount = (
  test: (cell: Cell) => boolean,
  change: (marked: MarkedBook, cell: Cell, random: Chance) => void,
): Variant => ({
  apply: (marked, random) => {
    const cell = one(random, cellsOf(marked).filter(test));
    if (cell === null) return null;
    change(marked, cell, random);
    const { alsoAmounts } = cell.recipe;
    return [cell.spot, ...alsoAmounts.filter(({ row }) => row === cell.spot.row)];
  },
});

const asText = (write: (value: number) => string): Variant =>
  amount(
    () => true,
    ({ book }, { spot, value }) => retype(book, spot, write(value)),
  );

const share = ({ recipe: { made }, index }: Cell): number => made.grams[index]! / massOf(made);

const isMain = (cell: Cell): boolean => share(cell) > 0.08;

const times = (unit: "g" | "kg", factor: number): Variant =>
  amount(
    (cell) => isMain(cell) && cell.recipe.unit === unit,
    (marked, { spot, value }) => retypeNumber(marked, spot, value * factor, 4),
  );

/** One line in kilograms, and says so in its unit cell, under a plain sum. */
const otherUnitCell: Variant = {
  apply: (marked, random) => {
    const able = cellsOf(marked).filter(
      (cell) => isMain(cell) && cell.recipe.unitCells.length > 0 && cell.recipe.total !== null,
    );
    const cell = one(random, able);
    if (cell === null) return null;
    const unitCell = cell.recipe.unitCells[cell.index]!;
    retypeNumber(marked, cell.spot, cell.value / 1000, 4);
    retype(marked.book, unitCell, "kg");
    return [cell.spot, unitCell, cell.recipe.total!];
  },
};

/** Amounts that are counted in spoons are worked out: one of them in other digits or units was typed over a formula. */
const TYPED_OVER = { "formula-overwritten": "the amount may have been a formula" } as const;

const ERRORS = ["#REF!", "#DIV/0!", "#N/A", "#VALUE!", "#NAME?"];

const brokenResult: Variant = {
  apply: (marked, random) => {
    const able = marked.recipes.flatMap(({ results }) => results.filter(({ typed }) => !typed));
    const result = one(random, able);
    if (result === null) return null;
    const formula = typedAt(marked.book, result.spot)!.content as string;
    retype(marked.book, result.spot, formula.replace(/\$?[A-Z]+\$?\d+:\$?[A-Z]+\$?\d+/, "#REF!"));
    return [result.spot];
  },
};

interface Sum {
  readonly spot: Spot;
  readonly parts: readonly Spot[];
}

const filled = (marked: MarkedBook, spot: Spot): boolean =>
  typedAt(marked.book, spot) !== undefined;

/** Rewrites one sum. */
const sum = (
  test: (marked: MarkedBook, sum: Sum) => boolean,
  change: (marked: MarkedBook, sum: Sum, random: Chance) => string | number,
): Variant => ({
  apply: (marked, random) => {
    const able = marked.sums.filter((each) => each.parts.length > 2 && test(marked, each));
    const chosen = one(random, able);
    if (chosen === null) return null;
    retype(marked.book, chosen.spot, change(marked, chosen, random));
    return [chosen.spot];
  },
});

const omitsLast = sum(
  (marked, { parts }) => filled(marked, parts.at(-1)!),
  (_, { parts }) => `=SUM(${span(parts.slice(0, -1))})`,
);
const omitsFirst = sum(
  (marked, { parts }) => filled(marked, parts[0]!),
  (_, { parts }) => `=SUM(${span(parts.slice(1))})`,
);
const typedTotal = sum(
  () => true,
  (marked, { spot }, random) => {
    const value = numberAt(marked, spot) * random.pick([0.88, 0.94, 1.07, 1.15]);
    return Number(value.toPrecision(3));
  },
);

/** A grand total over all rows above it, the total among them. */
const countsTotalTwice: Variant = {
  apply: (marked, random) => {
    // In a summary beside its list a total has no amounts above it.
    const able = marked.recipes.filter(
      ({ total, shared, amounts }) =>
        total !== null && !shared && amounts.every(({ column }) => column === total.column),
    );
    const recipe = one(random, able);
    if (recipe === null) return null;
    const { total, amounts } = recipe;
    const sheet = sheetNamed(marked.book, total!.sheet);
    const row = total!.row + 1;
    if (sheet.cells[row]?.some((cell) => cell !== undefined)) return null;
    const label = recipe.names[0]!.column;
    put(sheet, row, label, recipe.made.language === "en" ? "Grand total" : "Gesamtsumme");
    return [put(sheet, row, total!.column, `=SUM(${span([...amounts, total!])})`)];
  },
};

/** Shares that no longer make 100 %. */
const notHundred: Variant = {
  apply: (marked, random) => {
    const recipe = one(
      random,
      marked.recipes.filter(({ unit }) => unit === "%"),
    );
    if (recipe === null) return null;
    const spot = recipe.amounts[recipe.made.grams.indexOf(Math.max(...recipe.made.grams))]!;
    retypeNumber(marked, spot, numberAt(marked, spot) + random.pick([-4, 3, 5]), 1);
    return [...linesOf(recipe), ...(recipe.total === null ? [] : [recipe.total])];
  },
};

/** The label of the amounts without its unit. */
const withoutUnit: Variant = {
  apply: (marked, random) => {
    if (marked.formulaColumns.some(({ heading }) => textAt(marked, heading).includes("(g)"))) {
      return null;
    }
    const able = marked.recipes.filter(
      ({ amountLabel, unitCells, amounts, shared, unit }) =>
        amountLabel !== null &&
        unitCells.length === 0 &&
        !shared &&
        unit !== "%" &&
        /\b(g|kg|grams?|gramm|mass)\b/i.test(textAt(marked, amountLabel)) &&
        !/"/.test(typedAt(marked.book, amounts[0]!)?.format ?? ""),
    );
    const recipe = one(random, able);
    if (recipe === null) return null;
    retype(marked.book, recipe.amountLabel!, recipe.made.language === "en" ? "Amount" : "Menge");
    return [recipe.amountLabel!, ...recipe.amounts];
  },
};

const inputWithoutUnit: Variant = {
  apply: (marked, random) => {
    const input = one(random, marked.inputs);
    if (input === null) return null;
    retype(marked.book, input.label, input.bare);
    return [input.label, input.value];
  },
};

const ownLine = (
  change: (marked: MarkedBook, line: Readonly<Record<string, Spot>>) => void,
): Variant => ({
  apply: (marked, random) => {
    const own = one(random, marked.ownLines);
    if (own === null) return null;
    change(marked, own);
    return Object.values(own);
  },
});

/** Mistakes in amounts and in what they add up to. */
export const amountMutations: readonly Mutation[] = [
  {
    rule: "number-as-text",
    variants: [
      asText((value) => String(value).replace(".", ",")),
      asText((value) => value.toFixed(1).replace(".", ",")),
      asText((value) => `${value} `),
      asText((value) => value.toFixed(1)),
      ...textNumberVariants,
    ],
    fair: { ...CHANGED_AMOUNT, ...FEEDS_ERRORS },
  },
  {
    rule: "error-in-an-amount",
    variants: [
      amount(
        () => true,
        ({ book }, { spot }, random) => retype(book, spot, { error: random.pick(ERRORS) }),
      ),
      amount(
        () => true,
        ({ book }, { spot, value }) => retype(book, spot, `=${value}/0`),
      ),
      brokenResult,
    ],
    fair: {
      ...FEEDS_ERRORS,
      ...CHANGED_AMOUNT,
      "hard-coded-number": "the formula holds a number",
      "inconsistent-formula": "one of a column",
    },
  },
  {
    rule: "total-incomplete",
    variants: [omitsLast, omitsFirst, typedTotal, countsTotalTwice, notHundred],
    fair: {
      ...CHANGED_AMOUNT,
      "formula-overwritten": "a typed total beside totals that are formulas",
      "inconsistent-formula": "a total unlike those beside it",
      "reference-slips": "a total unlike those beside it",
      "unknown-ingredient": "the added grand total row",
    },
  },
  {
    rule: "percent-and-fraction",
    variants: [
      amount(
        ({ recipe, value }) => recipe.unit === "%" && value >= 5,
        (marked, { spot, value }) => retypeNumber(marked, spot, value / 100, 4),
      ),
      amount(
        ({ recipe, value }) => recipe.unit === "fraction" && value >= 0.02,
        (marked, { spot, value }) => retypeNumber(marked, spot, value * 100, 2),
      ),
    ],
    fair: {
      ...FEEDS_ERRORS,
      ...CHANGED_AMOUNT,
      "more-digits-than-known": "a fraction among per cent has more decimals",
    },
  },
  {
    rule: "mass-units-mixed",
    variants: [times("g", 0.001), times("g", 1000), times("kg", 1000), otherUnitCell],
    fair: {
      ...FEEDS_ERRORS,
      ...CHANGED_AMOUNT,
      ...TYPED_OVER,
      "more-digits-than-known": "decimals that come with the other unit",
    },
  },
  {
    rule: "own-ingredients-refused",
    variants: [
      ownLine((marked, { water }) =>
        retypeNumber(marked, water!, numberAt(marked, water!) - 15, 1),
      ),
      ownLine((marked, { water }) => retypeNumber(marked, water!, numberAt(marked, water!) + 9, 1)),
      ownLine(({ book }, { water }) =>
        put(sheetNamed(book, water!.sheet), water!.row, water!.column, undefined),
      ),
      ownLine((marked, { sugars }) => retypeNumber(marked, sugars!, -numberAt(marked, sugars!), 1)),
    ],
    fair: {
      ...FEEDS_ERRORS,
      "unknown-ingredient": "an own ingredient that cannot be used is not known",
    },
  },
  {
    rule: "input-without-unit",
    variants: [withoutUnit, inputWithoutUnit],
    fair: {
      "more-digits-than-known": "kilograms taken for grams",
      "result-differs": "kilograms taken for grams, a reading in °F taken for °C",
    },
  },
  {
    rule: "more-digits-than-known",
    variants: [
      amount(
        () => true,
        (marked, { spot, value }, random) =>
          // Of kilograms, too, more decimals than any scale shows, the last of them no zero.
          retypeNumber(marked, spot, value * (1 + random.between(-1, 1) * 0.0004), 9),
      ),
    ],
    fair: { "total-incomplete": "rounding of a typed part", ...TYPED_OVER },
  },
];
