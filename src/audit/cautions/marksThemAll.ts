import type { Allergen } from "../../catalogue/ingredient";
import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { allergenCalled } from "./allergensListed";

/** Marks below or beside an allergen's name: it is in it. */
const MARK = /^(x|✓|✔|☑|•|●|\*|!|\+|ja|j|yes|y|drin|in it|contains|enthalten)$/i;
/** So many rows below its headings a table is looked at, and so many rows of words on a sheet. */
const [MOST_LINES, MOST_ROWS] = [30, 2000];

interface Called extends Place {
  readonly allergen: Allergen;
}

/** Whether each of some allergens has a mark at the same distance from its name. */
const areMarked = (
  sheet: WorkbookSheet,
  called: readonly Called[],
  carried: ReadonlySet<Allergen>,
  { row, column }: Place,
): boolean =>
  [...carried].every((allergen) =>
    called.some(
      (one) =>
        one.allergen === allergen &&
        MARK.test(textAt(sheet, one.row + row, one.column + column).trim()),
    ),
  );

const callsAll = (called: readonly Called[], carried: ReadonlySet<Allergen>): boolean =>
  [...carried].every((allergen) => called.some((one) => one.allergen === allergen));

/** Whether a table or a column of allergens on a sheet marks all those that are in some recipes, two at least. */
export function marksThemAll(sheet: WorkbookSheet, carried: ReadonlySet<Allergen>): boolean {
  const { columnsByRow } = sheetTexts(sheet);
  if (carried.size < 2 || columnsByRow.size > MOST_ROWS) return false;
  const below = new Map<number, Called[]>();
  for (const [row, columns] of columnsByRow) {
    const across = columns.flatMap((column): Called[] => {
      const allergen = allergenCalled(textAt(sheet, row, column));
      return allergen === null ? [] : [{ row, column, allergen }];
    });
    const lines = callsAll(across, carried) ? MOST_LINES : 0;
    for (let line = 1; line <= lines; line += 1)
      if (areMarked(sheet, across, carried, { row: line, column: 0 })) return true;
    for (const one of across) below.set(one.column, [...(below.get(one.column) ?? []), one]);
  }
  return [...below.values()].some((called) =>
    [1, 2].some((away) => areMarked(sheet, called, carried, { row: 0, column: away })),
  );
}
