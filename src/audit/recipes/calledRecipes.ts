import { eachCell } from "../../workbook/eachCell";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { contains, overlaps, referencesOf } from "../../workbook/references";
import { worksheetFunctions } from "../../worksheet/functions";
import { textAt } from "./cells";
import { rangeLines } from "./corrections/rangeLines";
import { statedDown } from "./corrections/statedDown";
import type { FinderContext } from "./finderContext";
import type { RecipeBlock } from "./recipeBlock";
import { recipeInColumn } from "./recipeInColumn";

/** The functions whose first two arguments are the names and the amounts of a mix. */
const OF_A_MIX = worksheetFunctions
  .filter(({ parameters: [first, second] }) => first?.name === "items" && second?.name === "grams")
  .map(({ name }) => name);
const ADDRESS = "\\$?[A-Z]{1,3}\\$?\\d{1,7}:\\$?[A-Z]{1,3}\\$?\\d{1,7}";
const CALL = new RegExp(
  `RIME\\.(?:${OF_A_MIX.join("|")})\\(\\s*(${ADDRESS})\\s*,\\s*(${ADDRESS})\\s*[,)]`,
  "giu",
);

/** A ledger calls once a row; its rows are found without. */
const MOST_CALLS = 300;

/** Names and amounts, each in a column, that a recipe function of the sheet is given. */
interface Call {
  readonly names: CellRange;
  readonly amounts: CellRange;
}

const isColumn = ({ top, bottom, left, right }: CellRange): boolean =>
  left === right && bottom > top;

function callsOn(sheet: WorkbookSheet): readonly Call[] {
  const calls = new Map<string, Call>();
  eachCell(sheet, (_row, _column, cell) => {
    const formula = cell.sharedFormula ?? cell.formula;
    if (formula === undefined || calls.size >= MOST_CALLS || !/RIME\./i.test(formula)) return;
    for (const [, one = "", other = ""] of (cell.formula ?? "").matchAll(CALL)) {
      const [names, amounts] = referencesOf(`${one},${other}`).map(({ range }) => range);
      if (names === undefined || amounts === undefined || !isColumn(names)) continue;
      const isBeside =
        isColumn(amounts) && amounts.top === names.top && amounts.bottom === names.bottom;
      if (isBeside) calls.set(`${one},${other}`.replaceAll("$", ""), { names, amounts });
    }
  });
  return [...calls.values()];
}

const isOf = (block: RecipeBlock, { names }: Call): boolean =>
  block.layout === "down" && block.names.some(({ row, column }) => contains(names, row, column));

/** How far above a list its headings may stand. */
const REACH_UP = 10;

/** The row right above a list, else the first above it, that says something over each column of amounts. */
function headerAbove(sheet: WorkbookSheet, top: number, columns: readonly number[]): number | null {
  const above = rangeLines(Math.max(0, top - REACH_UP), top - 1).filter((row) =>
    columns.every((column) => textAt(sheet, row, column) !== ""),
  );
  return above.includes(top - 1) ? top - 1 : (above[0] ?? null);
}

/** The recipes that some calls with the same names are given. */
function blockFrom(
  context: FinderContext,
  { top, bottom, left: column }: CellRange,
  calls: readonly Call[],
): RecipeBlock[] {
  const { sheet, check } = context;
  const columns = [...new Set(calls.map(({ amounts }) => amounts.left))].sort((a, b) => a - b);
  const [left, right] = [Math.min(column, ...columns), Math.max(column, ...columns)];
  const range = { top, left, bottom, right };
  const layout = "down" as const;
  const block = statedDown(context, {
    ...{ range, layout, names: column, amounts: columns, unit: null },
  });
  const known = block.names.filter(({ item }) => check(item).kind !== "unknown");
  if (known.length < 2 || known.length * 2 < block.names.length) return [];
  const headerRow = headerAbove(sheet, top, columns);
  const rows = block.names.map(({ row }) => row);
  const recipes = columns.map((line) => recipeInColumn(sheet, headerRow, line, rows));
  const roles = new Map(columns.map((each) => [each, "amount" as const]));
  return [{ ...block, headerRow, recipes, roles, stated: false }];
}

/** A list that several calls take apart, by the lines of each. */
function takenApart(block: RecipeBlock, calls: readonly Call[]): readonly RecipeBlock[] {
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

/** A list with the columns of amounts that its calls are given besides those that were found. */
function withColumns(block: RecipeBlock, calls: readonly Call[]): RecipeBlock {
  const { sheet, headerRow, names, recipes } = block;
  const found = new Set(recipes.map(({ line }) => line));
  const missing = [...new Set(calls.map(({ amounts }) => amounts.left))].filter(
    (line) => !found.has(line),
  );
  if (missing.length === 0) return block;
  const rows = names.map(({ row }) => row);
  const more = missing.map((line) => recipeInColumn(sheet, headerRow, line, rows));
  return { ...block, recipes: [...more, ...recipes].sort((one, other) => one.line - other.line) };
}

/**
 * The lists of a sheet by what its recipe functions are given: lists that were not found are added, one that holds
 * several recipes is taken apart, and columns of amounts that were not taken for such are added to theirs.
 */
export function withCalledRecipes(
  context: FinderContext,
  found: readonly RecipeBlock[],
): readonly RecipeBlock[] {
  const calls = callsOn(context.sheet);
  if (calls.length === 0) return found;
  const isUsed = (call: Call) => found.some((block) => isOf(block, call));
  const known = found.flatMap((block) => {
    const own = calls.filter((call) => isOf(block, call));
    return takenApart(block, own).map((part) => withColumns(part, own));
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
