import { a1, fixed, put, retype, sheetNamed, typedAt, type Spot } from "../book";
import type { FormulaColumn, MarkedBook } from "../marks";
import {
  FEEDS_ERRORS,
  numberAt,
  ODD_FORMULA,
  one,
  WRONG_RESULT,
  type Mutation,
  type Variant,
} from "../mutation";
import type { Chance } from "../random";

type Change = (
  formula: string,
  column: FormulaColumn,
  index: number,
  random: Chance,
) => string | number | null;

const formulaAt = ({ book }: MarkedBook, spot: Spot): string =>
  typedAt(book, spot)!.content as string;

/** Changes one formula of a column of at least four. */
const inColumn = (
  change: Change,
  test: (column: FormulaColumn) => boolean = () => true,
): Variant => ({
  apply: (marked, random) => {
    const able = marked.formulaColumns.filter((column) => column.spots.length >= 4 && test(column));
    const column = one(random, able);
    if (column === null) return null;
    const index = random.whole(1, column.spots.length - 1);
    const spot = column.spots[index]!;
    const to = change(formulaAt(marked, spot), column, index, random);
    if (to === null) return null;
    retype(marked.book, spot, to);
    return [spot];
  },
});

const overwritten = (factor: number): Variant => ({
  apply: (marked, random) => {
    const column = one(
      random,
      marked.formulaColumns.filter(({ spots }) => spots.length >= 4),
    );
    if (column === null) return null;
    const spot = column.spots[random.whole(1, column.spots.length - 1)]!;
    retype(marked.book, spot, Number((numberAt(marked, spot) * factor).toPrecision(3)));
    return [spot];
  },
});

/** Multiplies in every formula of a column, or in one. */
const withNumber = (every: boolean): Variant => ({
  apply: (marked, random) => {
    const column = one(random, marked.formulaColumns);
    if (column === null) return null;
    const number = random.pick(["1.07", "1.19", "0.85", "1.035"]);
    const spots = every ? column.spots : [random.pick(column.spots)];
    for (const spot of spots) retype(marked.book, spot, `${formulaAt(marked, spot)}*${number}`);
    return spots;
  },
});

/** The temperature typed into the formula instead of read from its cell. */
const typedTemperature: Variant = {
  apply: (marked, random) => {
    const able = marked.recipes.flatMap(({ results }) =>
      results.filter(({ typed, states }) => !typed && states.startsWith("ice")),
    );
    const result = one(random, able);
    if (result === null) return null;
    const formula = formulaAt(marked, result.spot);
    const to = formula.replace(/,\$[A-Z]+\$\d+,"/, `,${result.temperatureC},"`);
    if (to === formula) return null;
    retype(marked.book, result.spot, to);
    return [result.spot];
  },
};

const shifted = (reference: string, by: number): string =>
  reference.replace(/\d+$/, (row) => String(Number(row) + by));

/** A fixed cell that slides along as the formula is copied down. */
const slides: Change = (formula, { fixed: cells }, index) =>
  formula.replace(fixed(cells[0]!), shifted(a1(cells[0]!), index));

const loosened: Change = (formula, { fixed: cells }) =>
  formula.replace(fixed(cells[0]!), a1(cells[0]!));

const hasFixed = ({ fixed: cells }: FormulaColumn): boolean => cells.length > 0;

/** A cell that ought to move with the row, nailed to the first row's. */
const nailed: Change = (formula, _, index) => {
  const first = /(?<![$A-Z!'])([A-Z]+)(\d+)/.exec(formula);
  if (first === null) return null;
  const [whole, letters, row] = first;
  return formula.replace(whole, `$${letters}$${Number(row) - index}`);
};

const otherRow: Change = (formula) => {
  const first = /(?<![$A-Z!'])[A-Z]+\d+/.exec(formula)?.[0];
  return first === undefined ? null : formula.replace(first, shifted(first, -1));
};
const plus: Change = (formula) => {
  const at = formula.search(/(?<=\d)[*/](?=\$?[A-Z])/);
  return at < 0 ? null : `${formula.slice(0, at)}+${formula.slice(at + 1)}`;
};
const byTen: Change = (formula) =>
  formula.includes("/1000") ? formula.replace("/1000", "/100") : null;

interface Stored {
  readonly spot: Spot;
}

const everyFormula = ({ formulaColumns, sums, recipes }: MarkedBook): Stored[] => [
  ...formulaColumns.flatMap(({ spots }) => spots.map((spot) => ({ spot }))),
  ...sums,
  ...recipes.flatMap(({ results }) => results.filter(({ typed }) => !typed)),
];

const stale: Variant = {
  apply: (marked, random) => {
    const able = everyFormula(marked).filter(({ spot }) => Math.abs(numberAt(marked, spot)) > 0.05);
    const chosen = one(random, able);
    if (chosen === null) return null;
    const { spot } = chosen;
    const { content, format } = typedAt(marked.book, spot)!;
    const stored = numberAt(marked, spot) * random.pick([0.7, 0.85, 1.2, 1.4]);
    const sheet = sheetNamed(marked.book, spot.sheet);
    put(sheet, spot.row, spot.column, { content, stored, ...(format !== undefined && { format }) });
    return [spot];
  },
};

const circle = (
  formulaFor: (marked: MarkedBook, spot: Spot) => string,
  from: (marked: MarkedBook) => readonly Stored[],
): Variant => ({
  apply: (marked, random) => {
    const chosen = one(random, from(marked));
    if (chosen === null) return null;
    retype(marked.book, chosen.spot, formulaFor(marked, chosen.spot));
    return [chosen.spot];
  },
});

const sumOverItself = circle(
  (marked, spot) => formulaAt(marked, spot).replace(/:\$?[A-Z]+\$?\d+\)/, `:${a1(spot)})`),
  ({ sums }) => sums,
);
const readsItself = circle(
  (marked, spot) => `${formulaAt(marked, spot)}+${a1(spot)}*0`,
  (marked) => everyFormula(marked),
);

/** Writes a formula whose answer the file holds because it cannot be worked out here. */
export function putStored(
  marked: MarkedBook,
  spot: Spot,
  content: string,
  stored: number | string,
): void {
  const format = typedAt(marked.book, spot)?.format;
  put(sheetNamed(marked.book, spot.sheet), spot.row, spot.column, {
    ...{ content, stored },
    ...(format !== undefined && { format }),
  });
}

const fromOutside = (content: (random: Chance) => string, link: boolean): Variant => ({
  apply: (marked, random) => {
    const amounts = marked.recipes.flatMap((recipe) => recipe.amounts);
    const results = marked.recipes.flatMap((recipe) => recipe.results.map(({ spot }) => spot));
    const spot = one(random, [...amounts, ...results]);
    if (spot === null) return null;
    putStored(marked, spot, content(random), numberAt(marked, spot));
    if (link) marked.book.externalLinks = ["store.xlsx"];
    return [spot];
  },
});

/** Mistakes in formulas. */
export const formulaMutations: readonly Mutation[] = [
  {
    rule: "formula-overwritten",
    variants: [overwritten(1), overwritten(1.12)],
    fair: {
      "total-incomplete": "shares may no longer add up",
      ...WRONG_RESULT,
      "freezing-point-sign": "a typed result",
      "ideal-law-too-far-off": "a typed result",
    },
  },
  {
    rule: "inconsistent-formula",
    variants: [inColumn(otherRow), inColumn(plus), inColumn(byTen)],
    // A total over the wrong cells is told as one that does not fit the amounts.
    sameLine: ["total-incomplete"],
    fair: ODD_FORMULA,
  },
  {
    rule: "reference-slips",
    variants: [inColumn(slides, hasFixed), inColumn(loosened, hasFixed), inColumn(nailed)],
    fair: {
      ...ODD_FORMULA,
      "mass-units-mixed":
        "an amount times or over the wrong cell may be a thousand times too large",
    },
  },
  {
    rule: "hard-coded-number",
    variants: [withNumber(true), withNumber(false), typedTemperature],
    fair: { ...ODD_FORMULA, "constant-of-a-solute": "the column may look constants up" },
  },
  {
    rule: "circular-reference",
    variants: [sumOverItself, readsItself],
    fair: { ...ODD_FORMULA, ...FEEDS_ERRORS, "stale-value": "a circle has no settled answer" },
  },
  {
    rule: "value-from-outside",
    variants: [
      fromOutside((random) => `='[store.xlsx]Stock'!$B$${random.whole(2, 40)}`, true),
      fromOutside((random) => `=[1]Stock!B${random.whole(2, 40)}`, true),
      fromOutside((random) => `=_xll.KITCHENTOOL.GET("A${random.whole(2, 40)}")`, false),
    ],
    fair: { ...ODD_FORMULA, "hard-coded-number": "the formula may hold a number" },
  },
  {
    rule: "manual-calculation",
    variants: [
      {
        apply: (marked) => {
          marked.book.calculation = "manual";
          return [];
        },
      },
    ],
    fair: {},
  },
  {
    rule: "stale-value",
    variants: [stale],
    fair: {
      ...WRONG_RESULT,
      "total-incomplete": "a stored total or part that is not the sum",
      "ideal-law-too-far-off": "a stored answer",
      // What stands in the cell is what a reader of the file goes by until it is recalculated.
      "misses-its-target": "a stored amount is that of another mix",
    },
  },
];
