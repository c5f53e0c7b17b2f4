import type { Workbook, WorkbookSheet } from "../../workbook/model";
import type { RecipeInBlock } from "./recipeInBlock";
import { recipeNamedIn } from "./recipeNamedIn";
import { recipeReadBy } from "./recipeReadBy";
import { isBlank } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";

/** Answers of one recipe stand together: so far up and down, or to both sides. */
const REACH = 6;

/** The formulas on both sides of a place along its column or its row, up to the next blank cell. */
function formulasAround(
  sheet: WorkbookSheet,
  { row, column }: Place,
  [down, right]: readonly [number, number],
): string[] {
  return [-1, 1].flatMap((step) => {
    const formulas: string[] = [];
    for (let away = step; Math.abs(away) <= REACH; away += step) {
      const at = [row + down * away, column + right * away] as const;
      if (at[0] < 0 || at[1] < 0 || isBlank(sheet, ...at)) break;
      formulas.push(sheet.cellAt(...at)?.formula ?? "");
    }
    return formulas.filter((formula) => formula !== "");
  });
}

/** Whether a row is one of a list's lines, whose words say what each is of. */
const isOfList = (recipes: readonly RecipeInBlock[], sheet: WorkbookSheet, row: number): boolean =>
  recipes.some(
    ({ block: { sheet: home, range } }) =>
      home === sheet && row >= range.top && row <= range.bottom,
  );

/**
 * The one recipe whose amounts or total the formulas beside an answer read, above and below it or in its row: it is
 * about that, too; where both read one, that which more of them read. Where only those above or below read one, or none
 * does, the one that the words of its row or column name.
 */
export function recipeOfNeighbours(
  workbook: Workbook,
  recipes: readonly RecipeInBlock[],
  sheet: WorkbookSheet,
  place: Place,
): RecipeInBlock | null {
  const readBeside = (direction: readonly [number, number]) =>
    recipeReadBy(workbook, recipes, sheet, formulasAround(sheet, place, direction));
  const [ofColumn, ofRow] = [readBeside([1, 0]), readBeside([0, 1])];
  if (ofRow === null) {
    const isNamed = ofColumn === null || !isOfList(recipes, sheet, place.row);
    const named = isNamed ? recipeNamedIn(recipes, sheet, place) : null;
    return named ?? ofColumn?.recipe ?? null;
  }
  const isOfColumn = ofColumn !== null && ofRow.formulas <= ofColumn.formulas;
  return isOfColumn ? ofColumn.recipe : ofRow.recipe;
}
