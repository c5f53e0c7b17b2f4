import { findTarget } from "../catalogue/findTarget";
import type { ServingTarget } from "../catalogue/target";
import { textAt } from "./recipes/cells";
import { headerRole } from "./recipes/headerRole";
import type { Place, Recipe, RecipeBlock } from "./recipes/recipeBlock";
import { sheetTexts } from "./recipes/sheetTexts";

/** A serving target that stands beside a recipe. */
export interface NamedTarget {
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
  readonly place: Place;
  /** As written on the sheet. */
  readonly name: string;
  readonly wanted: ServingTarget;
}

function targetAt(block: RecipeBlock, recipe: Recipe, row: number, column: number): NamedTarget[] {
  const name = textAt(block.sheet, row, column);
  const wanted = name === "" ? undefined : findTarget(name);
  return wanted === undefined ? [] : [{ block, recipe, place: { row, column }, name, wanted }];
}

function besideRows(block: RecipeBlock): NamedTarget[] {
  const column = [...block.roles].find(([, role]) => role === "target")?.[0];
  if (column === undefined || block.headerRow === null) return [];
  return block.recipes.flatMap((recipe) => targetAt(block, recipe, recipe.line, column));
}

/** Whether a column belongs to another list than the block's own, side by side with it. */
const isOfOther = (block: RecipeBlock, all: readonly RecipeBlock[], column: number): boolean =>
  (column < block.range.left || column > block.range.right) &&
  all.some(
    ({ sheet, layout, range }) =>
      sheet === block.sheet &&
      layout === "down" &&
      column >= range.left &&
      column <= range.right &&
      range.top <= block.range.bottom &&
      block.range.top <= range.bottom,
  );

function aboveOrBelow(block: RecipeBlock, all: readonly RecipeBlock[]): NamedTarget[] {
  const { sheet, recipes } = block;
  const [from, to] = [Math.max(0, block.range.top - 6), block.range.bottom + 40];
  const rows = [...sheetTexts(sheet).columnsByRow].filter(([row]) => row >= from && row <= to);
  return rows.flatMap(([row, columns]) => {
    const label = columns.find(
      (column) =>
        headerRole(textAt(sheet, row, column)) === "target" && !isOfOther(block, all, column),
    );
    if (label === undefined) return [];
    return recipes.flatMap((recipe) => {
      const places = recipes.length > 1 ? [recipe.line] : [recipe.line, label + 1, label + 2];
      const own = places.filter((column) => !isOfOther(block, all, column));
      return own.flatMap((column) => targetAt(block, recipe, row, column)).slice(0, 1);
    });
  });
}

const known = new WeakMap<RecipeBlock, readonly NamedTarget[]>();

/** The styles named in a column beside an across block, or below or above the amounts of a down block. */
export function namedTargets(
  block: RecipeBlock,
  all: readonly RecipeBlock[],
): readonly NamedTarget[] {
  const found =
    known.get(block) ?? (block.layout === "across" ? besideRows(block) : aboveOrBelow(block, all));
  known.set(block, found);
  return found;
}
