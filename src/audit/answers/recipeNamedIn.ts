import { findTarget } from "../../catalogue/findTarget";
import { normalName } from "../../catalogue/normalName";
import type { WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import { isBlank, looksNumeric, textAt } from "../recipes/cells";
import { rangeLines } from "../recipes/corrections/rangeLines";
import { headerRole } from "../recipes/headings/headerRole";
import { saysRecipe } from "../recipes/headings/saysRecipe";
import { withoutUnitBehind } from "../recipes/headings/withoutUnitBehind";
import { isOneRow, type Place, type RecipeBlock, type RecipeName } from "../recipes/recipeBlock";
import { sheetTexts } from "../recipes/sheetTexts";
import { mainRecipe } from "./mainRecipe";
import type { RecipeInBlock } from "./recipeInBlock";

/** The title of a list stands at most this far above it. */
const ROWS_ABOVE = 4;
/** And so far left of its names, or farther where each line of many lists says it. */
const [COLUMNS_LEFT, COLUMNS_LEFT_OF_EACH] = [3, 6];
/** A table's headings stand at most this far above its answers. */
const MOST_ROWS = 20;
/** "A) Lemon ice", "2. Lemon ice", "Recipe 3: lemon ice". */
const NUMBERING = /^((no|nr|recipe|rezept)\b\.? ?)?(\d{1,2}|[a-z])\s?[.):–-]\s+(?=\p{L}{2})/iu;

/** The rows right above a list with something in them, up to the next blank one: beyond it ends another list. */
function rowsOfTitle({ sheet, range }: RecipeBlock): number[] {
  const { columnsByRow } = sheetTexts(sheet);
  const above = rangeLines(Math.max(0, range.top - ROWS_ABOVE), range.top - 1).reverse();
  const first = above.findIndex((row) => columnsByRow.has(row));
  const end = above.findIndex((row, at) => at > first && !columnsByRow.has(row));
  return first < 0 ? [] : above.slice(first, end < 0 ? undefined : end);
}

/**
 * Whether words have a number or a target right behind them, or a number before them in the columns of a list: those of
 * another one.
 */
const isOfOther = ({ sheet, range: { left } }: RecipeBlock, row: number, column: number) =>
  looksNumeric(sheet, row, column + 1) ||
  findTarget(textAt(sheet, row, column + 1)) !== undefined ||
  rangeLines(left, column - 1).some((at) => looksNumeric(sheet, row, at));

/** The words above the columns of a list that have no number beside them: one of them is its title; of many lists each is above the next. */
const wordsAbove = (block: RecipeBlock): string[] => {
  const { sheet, range, isOneOfMany } = block;
  if (isOneOfMany === true) return [];
  return rowsOfTitle(block).flatMap((row) =>
    (sheetTexts(sheet).columnsByRow.get(row) ?? [])
      .filter((column) => column >= range.left && column <= range.right)
      .filter((column) => !isOfOther(block, row, column))
      .map((column) => textAt(sheet, row, column)),
  );
};

/**
 * The words left of a list's first line, where its other lines have none there, or the same: "Lemon ice | 3 | Water | 600",
 * "26-001 | Lemon ice | Water | 600".
 */
function wordsBeside({ sheet, layout, headerRow, names, isOneOfMany }: RecipeBlock): string[] {
  const [first, ...others] = names;
  if (layout !== "down" || first === undefined || first.column === 0) return [];
  const columns = rangeLines(Math.max(0, first.column - COLUMNS_LEFT_OF_EACH), first.column - 1);
  return columns.flatMap((column) => {
    const words = textAt(sheet, first.row, column);
    const saysSame = ({ row }: RecipeName) => textAt(sheet, row, column) === words;
    const saysNothing = ({ row }: RecipeName) => textAt(sheet, row, column) === "";
    const isHeaded = saysRecipe(textAt(sheet, headerRow ?? -1, column));
    const mayBeBlank = first.column - column <= COLUMNS_LEFT;
    const isOfAll =
      (isOneOfMany === true && others.every(saysSame)) ||
      (mayBeBlank && others.every((name) => saysNothing(name) || (isHeaded && saysSame(name))));
    return words !== "" && isOfAll ? words : [];
  });
}

const known = new WeakMap<RecipeBlock, ReadonlyMap<number, ReadonlySet<string>>>();

/** What the recipes of a list are called, by line: in their headings, above the list and on its sheet's tab. */
function namesOf(block: RecipeBlock): ReadonlyMap<number, ReadonlySet<string>> {
  const before = known.get(block);
  if (before !== undefined) return before;
  const main = mainRecipe(block);
  const names = new Map(
    block.recipes.map((recipe) => {
      const ofList =
        recipe === main ? [...wordsAbove(block), ...wordsBeside(block), block.sheet.name] : [];
      const words = [recipe.title, withoutUnitBehind(recipe.title), ...ofList];
      const bare = words.map((each) => each.replace(NUMBERING, ""));
      return [recipe.line, new Set([...words, ...bare].map(normalName))];
    }),
  );
  known.set(block, names);
  return names;
}

const isCalled = ({ block, recipe }: RecipeInBlock, name: string): boolean =>
  namesOf(block).get(recipe.line)?.has(name) === true;

/** The cells with words left of a place, from the left, then those of its column up to the first blank cell. */
function wordsOf(sheet: WorkbookSheet, { row, column }: Place): Place[] {
  const { columnsByRow } = sheetTexts(sheet);
  const left = (columnsByRow.get(row) ?? []).filter((at) => at < column);
  const places = left.map((at) => ({ row, column: at }));
  for (let at = row - 1; at >= row - MOST_ROWS && !isBlank(sheet, at, column); at -= 1)
    if (columnsByRow.get(at)?.includes(column) === true) places.push({ row: at, column });
  return places;
}

/** Whether words are in a line of a list beside which a place has a label of its own: they name what is in the list. */
function isLineBeside(
  recipes: readonly RecipeInBlock[],
  sheet: WorkbookSheet,
  words: Place,
  { row, column }: Place,
): boolean {
  const labels = sheetTexts(sheet).columnsByRow.get(row) ?? [];
  return (
    words.row === row &&
    recipes.some(({ block }) => {
      if (block.sheet !== sheet || isOneRow(block) || block.layout !== "down") return false;
      const { range } = block;
      const isLabelled = labels.some((at) => at > range.right && at < column);
      return isLabelled && contains(range, row, words.column);
    })
  );
}

/** The one recipe that a table's words left of a place or above it name; null where they name none or several. */
export function recipeNamedIn(
  recipes: readonly RecipeInBlock[],
  sheet: WorkbookSheet,
  place: Place,
): RecipeInBlock | null {
  for (const at of wordsOf(sheet, place)) {
    const words = textAt(sheet, at.row, at.column);
    if (headerRole(words) !== null || isLineBeside(recipes, sheet, at, place)) continue;
    const [only, ...more] = recipes.filter((each) => isCalled(each, normalName(words)));
    if (only !== undefined && more.length === 0) return only;
  }
  return null;
}
