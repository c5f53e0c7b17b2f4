import { overlaps } from "../../workbook/references";
import type { AuditContext } from "../context";
import { rangesRead } from "../formulas/rangesRead";
import { isLedger } from "../recipes/isLedger";
import { amountPlace, type Recipe, type RecipeBlock } from "../recipes/recipeBlock";
import { namedTargets } from "../targets/namedTargets";

/** Of a long list the first lines tell what it is. */
const MOST_LINES = 50;
const FROM_ELSEWHERE = /!/;

/** The formulas of a recipe's first amounts; none where one of them was typed. */
function formulasOf(block: RecipeBlock, recipe: Recipe): readonly string[] {
  const formulas: string[] = [];
  for (const name of block.names.slice(0, MOST_LINES)) {
    const { row, column } = amountPlace(block, recipe, name);
    const formula = block.sheet.cellAt(row, column)?.formula;
    if (formula === undefined || !FROM_ELSEWHERE.test(formula)) return [];
    formulas.push(formula);
  }
  return formulas;
}

/**
 * Whether each amount is taken over from other sheets, and all together from several recipes, and nobody says when
 * it freezes or what it is to be like: that is what has to be bought, and no mix.
 */
export function isShoppingList(context: AuditContext, block: RecipeBlock, recipe: Recipe): boolean {
  const { workbook, blocks, results } = context;
  if (isLedger(block)) return false;
  const formulas = formulasOf(block, recipe);
  if (formulas.length === 0 || results.some((result) => result.recipe === recipe)) return false;
  if (namedTargets(context, block).some((target) => target.recipe === recipe)) return false;
  const read = formulas.flatMap((formula) => rangesRead(workbook)(block.sheet, formula));
  const isRead = (other: RecipeBlock) =>
    other !== block &&
    read.some(({ sheet, range }) => sheet === other.sheet && overlaps(range, other.range));
  const sources = blocks.filter(isRead);
  return sources.reduce((count, { recipes }) => count + recipes.length, 0) > 1;
}
