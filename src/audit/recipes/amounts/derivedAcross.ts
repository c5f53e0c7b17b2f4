import { referencesOf } from "../../../workbook/references";
import type { FinderContext } from "../finderContext";
import { plainWords } from "../headings/plainWords";
import type { RecipeName } from "../recipeBlock";

const ROWS_READ = 6;

const isSameItem = (one: string, other: string): boolean => plainWords(one) === plainWords(other);

/**
 * Columns under an unknown word, or under a name once more ("Sucrose (% by mass)" after "Sucrose (g)"), that are worked
 * out from the amounts, sums or answers in their rows: no ingredients.
 */
export function derivedAcross(
  { sheet, check }: FinderContext,
  first: number,
  names: readonly RecipeName[],
  answers: readonly number[],
): readonly number[] {
  const columns = [...names.map(({ column }) => column), ...answers];
  const isDerived = (row: number, column: number): boolean => {
    const formula = sheet.cellAt(row, column)?.formula;
    const read = formula === undefined ? [] : referencesOf(formula);
    return read.some(
      ({ range }) =>
        range.top === row &&
        range.bottom === row &&
        columns.some((each) => each !== column && range.left <= each && each <= range.right),
    );
  };
  const rows = Array.from({ length: ROWS_READ }, (_, step) => first + step);
  const isAgain = (name: RecipeName) =>
    names.some(({ item, column }) => column < name.column && isSameItem(item, name.item));
  return names
    .filter((name) => check(name.item).kind === "unknown" || isAgain(name))
    .map(({ column }) => column)
    .filter((column) => {
      const filled = rows.filter((row) => typeof sheet.cellAt(row, column)?.value === "number");
      const derived = filled.filter((row) => isDerived(row, column)).length;
      return derived > 0 && derived * 2 >= filled.length;
    });
}
