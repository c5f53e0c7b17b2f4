import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { rangesRead, type RangeRead } from "../formulas/rangesRead";
import { readsAmounts, readsTotal, type RecipeInBlock } from "./recipeInBlock";
import { recipeNamedIn } from "./recipeNamedIn";
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

interface Neighbours {
  readonly recipe: RecipeInBlock;
  /** How many formulas read it. */
  readonly formulas: number;
}

/** The one recipe whose amounts or total some formulas read. */
function recipeReadBy(
  workbook: Workbook,
  recipes: readonly RecipeInBlock[],
  sheet: WorkbookSheet,
  formulas: readonly string[],
): Neighbours[] {
  const read = formulas.map((formula) => rangesRead(workbook)(sheet, formula));
  const isRead = (each: RecipeInBlock, ranges: readonly RangeRead[]) =>
    readsAmounts(ranges, each) || readsTotal(ranges, each);
  const all = read.flat();
  const [recipe, ...more] = recipes.filter((each) => isRead(each, all));
  if (recipe === undefined || more.length > 0) return [];
  return [{ recipe, formulas: read.filter((ranges) => isRead(recipe, ranges)).length }];
}

/**
 * The one recipe whose amounts or total the formulas beside an answer read, above and below it or in its row: it is
 * about that, too; where both read one, that which more of them read. Where one side alone reads one, or none does, the
 * one that the words of its row or column name.
 */
export function recipeOfNeighbours(
  workbook: Workbook,
  recipes: readonly RecipeInBlock[],
  sheet: WorkbookSheet,
  place: Place,
): RecipeInBlock | null {
  const directions = [
    [1, 0],
    [0, 1],
  ] as const;
  const [first, second] = directions.flatMap((direction) =>
    recipeReadBy(workbook, recipes, sheet, formulasAround(sheet, place, direction)),
  );
  const named = second === undefined ? recipeNamedIn(recipes, sheet, place) : null;
  if (first === undefined) return named;
  if (named !== null && named.block !== first.recipe.block) return named;
  return (second !== undefined && second.formulas > first.formulas ? second : first).recipe;
}
