import type { WorkbookSheet } from "../../workbook/model";
import { isBlank, looksNumeric, textAt } from "./cells";
import { headerRole, type Role } from "./headerRole";
import type { FinderContext } from "./finderContext";
import type { RecipeBlock, RecipeName } from "./recipeBlock";
import { recipeInColumn } from "./recipeInColumn";
import {
  isEmptyBeside,
  columnsBeside,
  guessedHeader,
  itemsAndTotals,
  segmentsOf,
  type Segment,
} from "./segments";
import { runs, type SheetTexts } from "./sheetTexts";
import { isShare } from "./unit";

/**
 * The columns that belong to a list: to the right up to the first empty one after the amounts have begun, so
 * that another table beside it stays apart.
 */
function columnsOfList(
  sheet: WorkbookSheet,
  segment: Segment,
  items: readonly number[],
): readonly number[] {
  const columns: number[] = [];
  let hasNumbers = false;
  for (const column of columnsBeside(segment)) {
    const isRight = column > segment.column;
    if (isEmptyBeside(sheet, segment, items, column)) {
      if (isRight && hasNumbers) break;
      continue;
    }
    hasNumbers ||= isRight && items.some((row) => looksNumeric(sheet, row, column));
    columns.push(column);
  }
  return columns;
}

function rolesBeside(
  sheet: WorkbookSheet,
  segment: Segment,
  items: readonly number[],
): Map<number, Role> {
  const roles = new Map<number, Role>();
  const { headerRow } = segment;
  if (headerRow === null) return roles;
  for (const column of columnsOfList(sheet, segment, items)) {
    const header = textAt(sheet, headerRow, column);
    const role = headerRole(header);
    // Another list of names begins: what stands beyond belongs to it.
    if (column > segment.column && role === "name") break;
    if (header !== "") roles.set(column, role ?? "other");
  }
  return roles;
}

/** The columns of amounts: those whose header says so; without such a header the only column of numbers. */
function amountColumns(
  sheet: WorkbookSheet,
  segment: Segment,
  items: readonly number[],
  roles: Map<number, Role>,
): number[] {
  const filled = (column: number) => items.filter((row) => looksNumeric(sheet, row, column)).length;
  const beside = columnsOfList(sheet, segment, items).filter((column) => filled(column) > 0);
  const named = beside.filter((column) => roles.get(column) === "amount");
  if (named.length > 0) return named;
  const plain = beside.filter(
    (column) => (roles.get(column) ?? "other") === "other" && filled(column) * 2 >= items.length,
  );
  const unspoken = plain.filter(
    (column) => headerRole(textAt(sheet, segment.headerRow ?? -1, column)) === null,
  );
  const numbers = beside.filter((column) => filled(column) * 2 >= items.length);
  return unspoken.length === 1 && numbers.length === 1 ? unspoken : [];
}

/** At least half of the names with an amount must be known, and two of them, or it is no recipe. */
function isRecipe(
  context: FinderContext,
  names: readonly RecipeName[],
  columns: readonly number[],
): boolean {
  const used = names.filter(({ row }) =>
    columns.some((column) => !isBlank(context.sheet, row, column)),
  );
  const known = used.filter(({ item }) => context.check(item).kind !== "unknown").length;
  return known >= 2 && known * 2 >= used.length;
}

function blockOf(context: FinderContext, found: Segment): RecipeBlock | null {
  const { sheet, ownIngredients } = context;
  const segment = found.headerRow === null ? guessedHeader(sheet, found) : found;
  const { items, totals } = itemsAndTotals(context, segment);
  const roles = rolesBeside(sheet, segment, items);
  const columns = amountColumns(sheet, segment, items, roles);
  const { column, headerRow } = segment;
  const names = items
    .filter((row) => columns.some((amounts) => !isBlank(sheet, row, amounts)))
    .map((row) => ({ row, column, item: textAt(sheet, row, column) }));
  if (columns.length === 0 || names.length < 2 || !isRecipe(context, names, columns)) return null;
  const recipes = columns.map((line) =>
    recipeInColumn(
      sheet,
      headerRow,
      line,
      names.map(({ row }) => row),
    ),
  );
  const masses = recipes.filter(({ unit }) => !isShare(unit));
  return {
    sheet,
    layout: "down",
    range: {
      top: headerRow ?? names[0]?.row ?? 0,
      left: Math.min(column, ...columns),
      bottom: Math.max(...names.map(({ row }) => row), ...totals),
      right: Math.max(column, ...columns, ...roles.keys()),
    },
    headerRow,
    names,
    // A share column beside one of grams says the same recipe again.
    recipes: masses.length > 0 ? masses : recipes,
    totals,
    unitColumn: [...roles].find(([, role]) => role === "unit")?.[0] ?? null,
    roles,
    ownIngredients,
  };
}

/** Longer lists than any recipe are ledgers; they are cut at their blank rows and what stays long is left. */
const LONGEST = 300;

const shortened = (run: number[]): number[][] => (run.length <= LONGEST ? [run] : runs(run, 0));

/** Finds recipes whose ingredients stand one below the other. */
export function blocksDown(context: FinderContext, texts: SheetTexts): RecipeBlock[] {
  const blocks: RecipeBlock[] = [];
  for (const [column, rows] of texts.rowsByColumn) {
    for (const run of runs(rows, 1).flatMap(shortened)) {
      for (const segment of segmentsOf(context.sheet, column, run)) {
        if (segment.rows.length > LONGEST) continue;
        const block = blockOf(context, segment);
        if (block !== null) blocks.push(block);
      }
    }
  }
  return blocks;
}
