import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { rangesRead } from "../formulas/rangesRead";
import { readsAmounts, type RecipeInBlock } from "./recipeInBlock";
import { isBlank } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";

/** Answers of one recipe stand together: so far up and down. */
const REACH = 5;

/** The formulas above and below a place, up to the next blank cell. */
function formulasAround(sheet: WorkbookSheet, { row, column }: Place): string[] {
  return [-1, 1].flatMap((step) => {
    const formulas: string[] = [];
    for (let away = 1; away <= REACH; away += 1) {
      const at = row + step * away;
      if (isBlank(sheet, at, column)) break;
      formulas.push(sheet.cellAt(at, column)?.formula ?? "");
    }
    return formulas.filter((formula) => formula !== "");
  });
}

/** The one recipe whose amounts the formulas right above and below an answer read: a typed answer is about it, too. */
export function recipeOfNeighbours(
  workbook: Workbook,
  recipes: readonly RecipeInBlock[],
  sheet: WorkbookSheet,
  place: Place,
): RecipeInBlock | null {
  const ranges = formulasAround(sheet, place).flatMap((formula) =>
    rangesRead(workbook)(sheet, formula),
  );
  const [only, ...more] = recipes.filter((each) => readsAmounts(ranges, each));
  return only !== undefined && more.length === 0 ? only : null;
}
