import { contains, referencesOf } from "../../workbook/references";
import { isBlank } from "../recipes/cells";
import type { Recipe, RecipeBlock } from "../recipes/recipeBlock";
import { answerAt, type LabelledAnswer } from "./labelledAnswer";
import { mainRecipe } from "./mainRecipe";

/** The recipe of a list whose amounts a formula reads; null when it reads none, or several. */
function recipeRead({ sheet, names, recipes }: RecipeBlock, formula: string): Recipe | null {
  const ranges = referencesOf(formula).flatMap(({ sheet: other, range }) =>
    other === null || other === sheet.name ? range : [],
  );
  const [only, ...more] = recipes.filter(({ line }) =>
    names.some(({ row }) => ranges.some((range) => contains(range, row, line))),
  );
  return only !== undefined && more.length === 0 ? only : null;
}

/** What is said once of a list that is one mix, right behind the label: of the recipe that its formula reads, else of the mix. */
export function answerOfMix(block: RecipeBlock, label: string, row: number): LabelledAnswer | null {
  const { sheet, names, range } = block;
  const main = mainRecipe(block);
  const first = (names[0]?.column ?? 0) + 1;
  let column = first;
  while (column <= range.right && isBlank(sheet, row, column)) column += 1;
  if (main === null || column > range.right) return null;
  const formula = sheet.cellAt(row, column)?.formula;
  const recipe = formula === undefined ? main : recipeRead(block, formula);
  return recipe === null ? null : answerAt(block, recipe, label, { row, column });
}
