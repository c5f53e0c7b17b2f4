import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { contains, overlaps } from "../../workbook/references";
import { unitOfList } from "./amounts/unitOfList";
import { isBlank, textAt } from "./cells";
import { rangeLines } from "./corrections/rangeLines";
import { statedDown } from "./corrections/statedDown";
import type { FinderContext } from "./finderContext";
import type { MixCall } from "./mixCalls";
import { nameInList } from "./names/nameInList";
import type { RecipeBlock, RecipeName } from "./recipeBlock";
import { recipeInColumn } from "./recipeInColumn";

/** Names and amounts beside each other, each in a column. */
const isOfColumns = ({ names, amounts }: MixCall): boolean =>
  [names, amounts].every(({ left, right, top, bottom }) => left === right && bottom > top) &&
  amounts.top === names.top &&
  amounts.bottom === names.bottom;

const isOf = (block: RecipeBlock, { names }: MixCall): boolean =>
  block.layout === "down" &&
  block.names.some(
    ({ row, column, amountAt }) => amountAt === undefined && contains(names, row, column),
  );

/** How far above a list its headings may stand. */
const REACH_UP = 10;

/** The row right above a list, else the first above it, that says something over each column of amounts. */
function headerAbove(sheet: WorkbookSheet, top: number, columns: readonly number[]): number | null {
  const above = rangeLines(Math.max(0, top - REACH_UP), top - 1).filter((row) =>
    columns.every((column) => textAt(sheet, row, column) !== ""),
  );
  return above.includes(top - 1) ? top - 1 : (above[0] ?? null);
}

/** The first row below a list that is the first of another call's names in the same column. */
function beginningBelow({ calls }: FinderContext, { bottom, left }: CellRange): number {
  const begins = calls
    .filter(({ names }) => names.left === left && names.top > bottom)
    .map(({ names }) => names.top);
  return Math.min(...begins);
}

/** A list without what stands in a row and below. */
const before = (block: RecipeBlock, end: number): RecipeBlock => ({
  ...block,
  names: block.names.filter(({ row }) => row < end),
  totals: block.totals.filter((row) => row < end),
  range: { ...block.range, bottom: Math.min(block.range.bottom, end - 1) },
});

/** The recipes that some calls with the same names are given. */
function blockFrom(
  context: FinderContext,
  called: CellRange,
  calls: readonly MixCall[],
): RecipeBlock[] {
  const { sheet, check } = context;
  const { top, bottom, left: column } = called;
  const columns = [...new Set(calls.map(({ amounts }) => amounts.left))].sort((a, b) => a - b);
  const [left, right] = [Math.min(column, ...columns), Math.max(column, ...columns)];
  const range = { top, left, bottom, right };
  const layout = "down" as const;
  const whole = statedDown(context, {
    ...{ range, layout, names: column, amounts: columns, unit: null },
  });
  const block = before(whole, beginningBelow(context, called));
  const known = block.names.filter(({ item }) => check(item).kind !== "unknown");
  if (known.length < 2 || known.length * 2 < block.names.length) return [];
  const headerRow = headerAbove(sheet, top, columns);
  const rows = block.names.map(({ row }) => row);
  const unit = unitOfList(
    sheet,
    { column, headerRow, rows },
    block.names,
    block.totals,
    columns[0] ?? column,
  );
  const recipes = columns.map((line) => recipeInColumn(sheet, headerRow, line, rows, unit));
  const roles = new Map(columns.map((each) => [each, "amount" as const]));
  return [{ ...block, headerRow, recipes, roles, stated: false }];
}

/** A list that several calls take apart, by the lines of each. */
function takenApart(block: RecipeBlock, calls: readonly MixCall[]): readonly RecipeBlock[] {
  const parts = [...new Map(calls.map((call) => [call.names.top, call.names])).values()];
  const isApart = parts.every((one) =>
    parts.every((other) => one === other || !overlaps(one, other)),
  );
  const isWhole = block.names.every(({ row, column }) =>
    parts.some((part) => contains(part, row, column)),
  );
  if (parts.length < 2 || !isApart || !isWhole) return [block];
  return parts.map((part) => ({
    ...block,
    // What is worked out of a recipe is kept by it: each part has its own.
    recipes: block.recipes.map((recipe) => ({ ...recipe })),
    names: block.names.filter(({ row, column }) => contains(part, row, column)),
    range: { ...block.range, top: part.top, bottom: part.bottom },
    totals: block.totals.filter((row) => row === part.bottom + 1),
  }));
}

/** Names among those that calls are given which have an amount in one of some columns only. */
function namesFor(
  { sheet, check }: FinderContext,
  { names, totals }: RecipeBlock,
  calls: readonly MixCall[],
  lines: readonly number[],
): RecipeName[] {
  const known = new Set([...names.map(({ row }) => row), ...totals]);
  const places = calls.flatMap(({ names: { left, top, bottom } }) =>
    rangeLines(top, bottom).map((row) => ({ row, column: left })),
  );
  return places.flatMap(({ row, column }) => {
    const text = textAt(sheet, row, column);
    if (text === "" || known.has(row) || lines.every((line) => isBlank(sheet, row, line)))
      return [];
    known.add(row);
    const { item, unit } = nameInList(text, check);
    return { row, column, item, ...(unit !== null && { unit }) };
  });
}

/** A list with the columns of amounts that its calls are given besides those that were found. */
function withColumns(
  context: FinderContext,
  block: RecipeBlock,
  calls: readonly MixCall[],
): RecipeBlock {
  const { sheet, headerRow, recipes, range } = block;
  const found = new Set(recipes.map(({ line }) => line));
  const missing = [...new Set(calls.map(({ amounts }) => amounts.left))].filter(
    (line) => !found.has(line),
  );
  if (missing.length === 0) return block;
  const names = [...block.names, ...namesFor(context, block, calls, missing)];
  names.sort((one, other) => one.row - other.row);
  const rows = names.map(({ row }) => row);
  const column = names[0]?.column ?? 0;
  const unit = unitOfList(sheet, { column, headerRow, rows }, names, block.totals, column);
  const more = missing.map((line) => recipeInColumn(sheet, headerRow, line, rows, unit));
  const [bottom, right] = [Math.max(range.bottom, ...rows), Math.max(range.right, ...missing)];
  const all = [...more, ...recipes].sort((one, other) => one.line - other.line);
  return { ...block, names, recipes: all, range: { ...range, bottom, right } };
}

/**
 * The lists of a sheet by what recipe functions are given: lists that were not found are added, one that holds
 * several recipes is taken apart, and columns of amounts that were not taken for such are added to theirs.
 */
export function withCalledRecipes(
  context: FinderContext,
  found: readonly RecipeBlock[],
): readonly RecipeBlock[] {
  const calls = context.calls.filter(isOfColumns);
  if (calls.length === 0) return found;
  const isUsed = (call: MixCall) => found.some((block) => isOf(block, call));
  const known = found.flatMap((block) => {
    const own = calls.filter((call) => isOf(block, call));
    return takenApart(block, own).map((part) => withColumns(context, part, own));
  });
  const unused = calls.filter((call) => !isUsed(call));
  const lists = new Map(
    unused.map(({ names }) => [`${names.left},${names.top},${names.bottom}`, names]),
  );
  const added = [...lists.values()].flatMap((names) =>
    blockFrom(
      context,
      names,
      unused.filter((call) => contains(names, call.names.top, call.names.left)),
    ),
  );
  return [...known, ...added];
}
