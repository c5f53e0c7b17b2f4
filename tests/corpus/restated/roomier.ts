import type { MarkedBook, MarkedRecipe } from "../marks";
import { moved, type Insertion } from "./moved";
import type { Restatement } from "./restatement";

/** Puts rows or columns into the sheet of the first recipe of a book. */
const inFirstRecipe = (
  name: string,
  insertion: (recipe: MarkedRecipe) => Insertion,
): Restatement => ({
  name,
  restate: (book, { recipes: [recipe] }: MarkedBook) =>
    recipe === undefined
      ? book
      : moved(book, (sheet) => (sheet === recipe.names[0]!.sheet ? insertion(recipe) : {})),
});

const isDown = ({ names }: MarkedRecipe): boolean =>
  names.every(({ column }) => column === names[0]!.column);

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
  inFirstRecipe("free rows under the total", ({ total }) =>
    total === null ? {} : { rows: { before: total.row + 1, count: 2 } },
  ),
  inFirstRecipe("a free row above the total", ({ total, names }) =>
    total !== null && names.every(({ row }) => row < total.row)
      ? { rows: { before: total.row, count: 1 } }
      : {},
  ),
];
