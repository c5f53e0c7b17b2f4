import type { Workbook, WorkbookSheet } from "../../workbook/model";
import { contains } from "../../workbook/references";
import { mainRecipe } from "./mainRecipe";
import { precedentsOf } from "../formulas/precedents";
import { rangesRead, type RangeRead } from "../formulas/rangesRead";
import { readsAmounts, type RecipeInBlock } from "./recipeInBlock";
import { hasInputsOfItsOwn } from "./inputsOfItsOwn";
import { recipeOfNeighbours } from "./recipeOfNeighbours";
import { isOverBefore } from "./isOverBefore";
import { isPartOfMore } from "./isPartOfMore";
import { headsList } from "../recipes/headings/headsList";
import { isExtract } from "../recipes/names/isExtract";
import { isBlank, textAt } from "../recipes/cells";
import { isLedger } from "../recipes/isLedger";
import { isOneRow, type Place, type RecipeBlock } from "../recipes/recipeBlock";

/** Answers stand at most this far below their list. */
const REACH_DOWN = 40;
/** Or so far above it, where no list stands above them. */
const REACH_UP = 6;

/** Whether a range is the column in which a list says its amounts once more, as shares. */
const readsShares = ({ sheet, range }: RangeRead, block: RecipeBlock): boolean =>
  sheet === block.sheet &&
  block.layout === "down" &&
  block.roles.get(range.left) === "amount" &&
  block.names.every(({ row }) => contains(range, row, range.left));

/** A row of answers goes on at most this far beyond the ingredients above it. */
const REACH_RIGHT = 12;

/** Whether a row of numbers or words goes on without a gap from below a list that runs across to a place right of it. */
function goesOnTo({ sheet, layout, range }: RecipeBlock, { row, column }: Place): boolean {
  const beyond = column - range.right;
  if (layout !== "across" || beyond <= 0 || beyond > REACH_RIGHT) return false;
  const before = Array.from({ length: beyond }, (_, at) => range.right + at);
  return before.every((at) => !isBlank(sheet, row, at));
}

/** Whether a place is right of words below the last column of a list: of names that stand right of their amounts. */
const isBehindLastColumn = ({ sheet, layout, range }: RecipeBlock, { row, column }: Place) =>
  layout === "down" && column === range.right + 1 && textAt(sheet, row, range.right) !== "";

/** The list beside which or below which a cell stands; null when several do. */
function nearestBlock(blocks: readonly RecipeBlock[], place: Place): RecipeBlock | null {
  const { row, column } = place;
  const rowsAbove = ({ range }: RecipeBlock) => Math.max(0, row - range.bottom);
  // What begins right of an answer has its own beside or below it.
  const begun = blocks.filter(({ range }) => range.left <= column);
  const all = (begun.length > 0 ? begun : blocks).filter(
    (block) =>
      row >= block.range.top &&
      rowsAbove(block) <= REACH_DOWN &&
      !isOverBefore(block, blocks, place),
  );
  // What is said of a solution stands in its row: below a table of them begins something else.
  const lists = all.filter((block) => !isOneRow(block) || rowsAbove(block) === 0);
  const below = lists.length > 0 ? lists : all;
  const isIn = (block: RecipeBlock) =>
    (column >= block.range.left && column <= block.range.right) || isBehindLastColumn(block, place);
  const inColumns = below.filter((block) => isIn(block) || goesOnTo(block, place));
  const above = inColumns.length > 0 ? inColumns : below;
  const least = Math.min(...above.map(rowsAbove));
  const near = above.filter((block) => rowsAbove(block) === least);
  const left = near.filter(({ range }) => range.right < column);
  const [only] = near.length > 1 ? left : near;
  if (only === undefined || (near.length > 1 && left.length > 1)) return null;
  return only;
}

/** The list that begins right below a cell that no list stands above: answers may stand over their mix. */
function blockBelow(blocks: readonly RecipeBlock[], { row, column }: Place): RecipeBlock | null {
  const begun = blocks.filter(
    ({ layout, range: { top, left, right } }) =>
      layout === "down" && top > row && top - row <= REACH_UP && left <= column && right >= column,
  );
  const [only, ...more] = begun;
  const isFirst = blocks.every(({ range }) => range.top > row);
  return only !== undefined && more.length === 0 && isFirst ? only : null;
}

/** Whether another list, which was not read as one, begins between a list and a row below it. */
function isParted({ sheet, range }: RecipeBlock, row: number): boolean {
  for (let at = range.bottom + 1; at < row; at += 1) {
    if (headsList(sheet, at)) return true;
  }
  return false;
}

/** The recipe that a place belongs to by where it stands. */
function recipeByPlace(blocks: readonly RecipeBlock[], place: Place): RecipeInBlock | null {
  const [only, ...more] = blocks;
  const block =
    more.length === 0 ? only : (nearestBlock(blocks, place) ?? blockBelow(blocks, place));
  if (block === undefined || block === null || isParted(block, place.row)) return null;
  if (isPartOfMore(block, blocks)) return null;
  const recipe = mainRecipe(block);
  return recipe === null ? null : { block, recipe };
}

/**
 * The recipe that an answer is about: the one whose amounts its formula reads, else the one that the answers
 * right above and below it or in its row are about, else the one it stands beside or below. Null when that is not
 * clear. `isByFormulas` leaves out where it stands.
 */
export function recipeBehind(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  sheet: WorkbookSheet,
  place: Place,
  isByFormulas = false,
): RecipeInBlock | null {
  // The answers of a ledger stand in its rows.
  const few = blocks.filter((block) => !isLedger(block));
  const all = few.flatMap((block) => block.recipes.map((recipe) => ({ block, recipe })));
  const formula = sheet.cellAt(place.row, place.column)?.formula;
  const direct = formula === undefined ? [] : rangesRead(workbook)(sheet, formula);
  const isLong = ({ range }: RangeRead) => range.bottom > range.top || range.right > range.left;
  const behind = precedentsOf(workbook, sheet, place);
  for (const ranges of [direct, behind]) {
    const read = all.filter((each) => readsAmounts(ranges, each));
    if (read.length > 0) return read.length === 1 ? (read[0] ?? null) : null;
  }
  const ofShares = few.filter((block) => direct.some((read) => readsShares(read, block)));
  const [block] = ofShares;
  const main = block === undefined || ofShares.length > 1 ? null : mainRecipe(block);
  if (block !== undefined && main !== null) return { block, recipe: main };
  // What reads a list that is no recipe is not about the recipe beside it.
  if (direct.some(isLong) || hasInputsOfItsOwn(behind, few)) return null;
  const neighbours = recipeOfNeighbours(workbook, all, sheet, place);
  if (neighbours !== null || isByFormulas) return neighbours;
  return recipeByPlace(
    few.filter((block) => block.sheet === sheet && !isExtract(block, blocks)),
    place,
  );
}
