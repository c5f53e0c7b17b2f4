import { retype, typedAt, type Spot } from "./book";
import { calculate } from "./calculate";
import type { Prepare } from "./kit";
import { trueValue, type MarkedBook, type MarkedRecipe } from "./marks";
import type { Chance } from "./random";

/** One way of making a mistake; where it then is, or null where the book gives no occasion. */
export interface Variant {
  /** Changes one recipe before it is laid out; what is said of it is then said of the changed one. */
  readonly prepare?: Prepare;
  /** Changes the book; gives the cells of which a finding has to name one. */
  readonly apply: (marked: MarkedBook, random: Chance) => readonly Spot[] | null;
}

/** A mistake of the list of what to look for, by the rule that has to find it. */
export interface Mutation {
  readonly rule: string;
  readonly variants: readonly Variant[];
  /** Whether it shows in a file of values alone. */
  readonly inValues?: true;
  /** Rules of the same line of the list, a finding of which counts as found. */
  readonly sameLine?: readonly string[];
  /** Rules that may speak of the same mistake or of what follows from it, with the reason. */
  readonly fair: Readonly<Record<string, string>>;
}

/** What follows when an amount is no longer that of the stated results. */
export const CHANGED_AMOUNT = {
  "result-differs": "typed results were those of the right amounts",
  "misses-its-target": "the changed mix may miss its target",
  "total-incomplete": "a typed part no longer adds up",
  "more-than-dissolves": "the changed mix may hold too much",
  "lactose-may-feel-sandy": "the changed mix may hold too much",
  "too-much-alcohol-to-set": "the changed mix may hold too much",
} as const;

/** What follows when a cell that formulas read is no number, or a name that they read is not known. */
export const FEEDS_ERRORS = {
  "error-in-an-amount":
    "formulas that read the cell, or a mix that has no answer, show an error in a result",
} as const;

/** What a wrong number in a stated result is by the list's line on stored results, whatever its cause. */
export const WRONG_RESULT = {
  "result-differs": "a stored result that differs from our recomputation",
} as const;

/** What follows in a class sheet from a wrong constant. */
export const WRONG_LAW = {
  "result-differs": "the depression no longer is what the solution gives",
  "ideal-law-too-far-off": "the answer is further off than the stated tolerance",
} as const;

/** What a formula changed in one row of a column is, too. */
export const ODD_FORMULA = {
  "inconsistent-formula": "one formula is unlike its column",
  "reference-slips": "its references move unlike those of its column",
  "hard-coded-number": "it may hold a number",
  "total-incomplete": "shares may no longer add up",
  "result-differs": "the column may hold results",
  "ideal-law-too-far-off": "the column may hold results",
  "error-in-an-amount": "it may read an empty cell or a text",
  "more-than-dissolves": "the column may hold amounts",
  // Less of all else leaves more of the spirit.
  "too-much-alcohol-to-set": "the column may hold amounts",
  "misses-its-target": "the column may hold amounts",
} as const;

export const numberAt = ({ book }: MarkedBook, { sheet, row, column }: Spot): number => {
  const value = calculate(book)(sheet, row, column);
  return typeof value === "number" ? value : Number.NaN;
};

export const textAt = ({ book }: MarkedBook, spot: Spot): string => {
  const content = typedAt(book, spot)?.content;
  return typeof content === "string" ? content : "";
};

/** The recipes that `prepare` changed: several where a layout has versions of one, each with its mistake. */
export const allPreparedIn = ({ recipes }: MarkedBook): readonly MarkedRecipe[] =>
  recipes.filter(({ made }) => made.seeded !== undefined);

/** The first of them. */
export const preparedIn = (marked: MarkedBook): MarkedRecipe | undefined =>
  allPreparedIn(marked)[0];

/** The cells of the lines that `prepare` put in or changed. */
export function seededSpots(marked: MarkedBook): Spot[] | null {
  const recipes = allPreparedIn(marked);
  if (recipes.length === 0) return null;
  return recipes.flatMap(({ names, amounts, alsoAmounts, made }) => {
    const at = made.names.flatMap((name, index) => (made.seeded!.includes(name) ? [index] : []));
    return at.flatMap((index) => {
      const amount = amounts[index]!;
      return [names[index]!, amount, ...alsoAmounts.filter(({ row }) => row === amount.row)];
    });
  });
}

export const linesOf = ({ names, amounts, alsoAmounts }: MarkedRecipe): Spot[] => [
  ...[...names, ...amounts, ...alsoAmounts],
];

/** One of a list, or null where there is none. */
export const one = <T>(random: Chance, list: readonly T[]): T | null =>
  list.length === 0 ? null : random.pick(list);

/** Retypes a cell as a number that keeps within some decimals. */
export function retypeNumber(
  marked: MarkedBook,
  spot: Spot,
  value: number,
  decimals: number,
): void {
  retype(marked.book, spot, Number(value.toFixed(decimals)));
}

/** A result's right value in the sheet's own scale. */
export function rightValue(
  { made }: MarkedRecipe,
  { states, temperatureC, scale }: MarkedRecipe["results"][number],
): number | null {
  const value = trueValue(made, states, temperatureC);
  return value === null ? null : value * scale;
}

/** Every pair of a recipe and a result of it that pass. */
export const resultsWhere = (
  { recipes }: MarkedBook,
  test: (result: MarkedRecipe["results"][number], recipe: MarkedRecipe) => boolean,
) =>
  recipes.flatMap((recipe) =>
    recipe.results.flatMap((result) => (test(result, recipe) ? [{ recipe, result }] : [])),
  );
