import { ownIngredientsIn } from "../../../src/audit/recipes/names/ownIngredients";
import type { Spot } from "../book";
import type { MarkedBook, MarkedRecipe } from "../marks";
import { moved, type Insertion } from "./moved";
import type { Restated, Restatement } from "./restatement";

/** A range of own ingredients with a free column in it is refused, which is no other way of saying the same. */
const isThroughOwn = ({ workbook }: Restated, sheet: string, { columns }: Insertion): boolean =>
  columns !== undefined &&
  workbook.sheets
    .filter(({ name }) => name === sheet)
    .flatMap(ownIngredientsIn)
    .some(({ range }) => range.left < columns.before && columns.before <= range.right);

/** Puts rows or columns into the sheet of the first recipe of a book. */
const inFirstRecipe = (
  name: string,
  insertion: (recipe: MarkedRecipe) => Insertion,
): Restatement => ({
  name,
  restate: (book, { recipes: [recipe] }: MarkedBook) => {
    if (recipe === undefined) return book;
    const { sheet } = recipe.names[0]!;
    const inserted = insertion(recipe);
    return isThroughOwn(book, sheet, inserted)
      ? book
      : moved(book, (name) => (name === sheet ? inserted : {}));
  },
});

const isDown = ({ names }: MarkedRecipe): boolean =>
  names.every(({ column }) => column === names[0]!.column);

/** Whether a total stands below all lines: where recipes are rows, free rows there would tear their table apart. */
const isUnder = (total: Spot, names: readonly Spot[]): boolean =>
  names.every(({ row, column }) => row < total.row && column === names[0]!.column);

/** Sheets with more room in them: rows and columns left free where people leave them. */
export const roomier: readonly Restatement[] = [
  {
    name: "a margin and a title above",
    restate: (book) =>
      moved(book, () => ({ rows: { before: 0, count: 3 }, columns: { before: 0, count: 2 } })),
  },
  inFirstRecipe("a free column behind the names", (recipe) => {
    const behind = recipe.names[0]!.column + 1;
    return isDown(recipe) ? { columns: { before: behind, count: 1 } } : {};
  }),
  inFirstRecipe("a free row under the headings", (recipe) => {
    const first = Math.min(...recipe.names.map(({ row }) => row));
    return isDown(recipe) && first > 0 ? { rows: { before: first, count: 1 } } : {};
  }),
  inFirstRecipe("free rows under the total", ({ total, names }) =>
    total !== null && isUnder(total, names) ? { rows: { before: total.row + 1, count: 2 } } : {},
  ),
  inFirstRecipe("a free row above the total", ({ total, names }) =>
    total !== null && isUnder(total, names) ? { rows: { before: total.row, count: 1 } } : {},
  ),
  inFirstRecipe("a free row above the headings", (recipe) => {
    const heading = Math.min(...recipe.names.map(({ row }) => row)) - 1;
    return isDown(recipe) && heading > 0 ? { rows: { before: heading, count: 1 } } : {};
  }),
  inFirstRecipe("a free row in the middle of the list", (recipe) => {
    const rows = recipe.names.map(({ row }) => row).sort((one, other) => one - other);
    const middle = rows[Math.floor(rows.length / 2)]!;
    // A group of one line is none.
    return isDown(recipe) && rows.length >= 4 ? { rows: { before: middle, count: 1 } } : {};
  }),
  inFirstRecipe("a free column behind the amounts", (recipe) => {
    const amounts = recipe.amounts[0]!.column;
    const isRight = isDown(recipe) && amounts > recipe.names[0]!.column;
    return isRight ? { columns: { before: amounts + 1, count: 1 } } : {};
  }),
  inFirstRecipe("a free row between two answers", ({ results, names }) => {
    const lines = names.map(({ row }) => row);
    const below = results.filter(({ spot }) => spot.sheet === names[0]!.sheet);
    const rows = new Set(
      below.map(({ spot }) => spot.row).filter((row) => row > Math.max(...lines)),
    );
    const [, second] = [...rows].sort((one, other) => one - other);
    return second === undefined ? {} : { rows: { before: second, count: 1 } };
  }),
];
