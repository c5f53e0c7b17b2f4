import type { WorkbookSheet } from "../../workbook/model";
import { amountColumns } from "./amountColumns";
import { chemicalName } from "./chemicalName";
import { isBlank, looksNumeric, textAt } from "./cells";
import { headerRole, type Role } from "./headerRole";
import { isClassSheet, withItsWater } from "./classSheet";
import type { FinderContext } from "./finderContext";
import { isOfRemarks, isSaidOf } from "./remarks";
import { nameInList } from "./nameInList";
import type { RecipeBlock, RecipeName } from "./recipeBlock";
import { recipeInColumn } from "./recipeInColumn";
import { recipesInList } from "./recipesInList";
import {
  isEmptyBeside,
  columnsBeside,
  guessedHeader,
  itemsAndTotals,
  segmentsOf,
  type Segment,
} from "./segments";
import { runs, type SheetTexts } from "./sheetTexts";
import { totalsInDisguise } from "./totalsInDisguise";
import { isShare, unitFromHeader, type AmountUnit } from "./unit";
import { unitInTitle } from "./unitInTitle";
import { withoutRemarks } from "./withoutRemarks";
import { withoutSums } from "./withoutSums";

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

/** At least half of the names with an amount must be known, and two of them, or it is no recipe. */
function isRecipe(
  context: FinderContext,
  names: readonly RecipeName[],
  columns: readonly number[],
  least: number,
): boolean {
  const used = names.filter(({ row }) =>
    columns.some((column) => !isBlank(context.sheet, row, column)),
  );
  const known = used.filter(({ item }) => context.check(item).kind !== "unknown").length;
  return known >= least && known * 2 >= used.length;
}

function nameAt({ sheet, check }: FinderContext, row: number, column: number): RecipeName {
  const { item, unit } = nameInList(textAt(sheet, row, column), check);
  return { row, column, item, ...(unit !== null && { unit }) };
}

/** A unit that all names carry, or their header ("Ingredient (g)"), or their total ("Total, kg"). */
function unitOfList(
  sheet: WorkbookSheet,
  { headerRow, column }: Segment,
  names: readonly RecipeName[],
  totals: readonly number[],
): AmountUnit | null {
  const first = names[0]?.unit;
  if (first !== undefined && names.every(({ unit }) => unit === first)) return first;
  const labels = [headerRow ?? -1, ...totals].map((row) => textAt(sheet, row, column));
  const labelled = labels.map(unitFromHeader).find((unit) => typeof unit === "string");
  const top = headerRow ?? names[0]?.row ?? 0;
  return labelled ?? unitInTitle(sheet, top, Math.max(0, column - 1), column + 1);
}

function blockOf(context: FinderContext, found: Segment): RecipeBlock | null {
  const { sheet, ownIngredients } = context;
  const segment = found.headerRow === null ? guessedHeader(sheet, found) : found;
  if (isOfRemarks(sheet, segment)) return null;
  const { items, totals: said } = itemsAndTotals(context, segment);
  const roles = rolesBeside(sheet, segment, items);
  const beside = columnsOfList(sheet, segment, items);
  const columns = withoutSums(
    sheet,
    items,
    amountColumns(sheet, segment, items, { roles, beside }),
  );
  const { column, headerRow } = segment;
  const unsaid = totalsInDisguise(context, column, items, columns);
  const totals = [...said, ...unsaid].sort((one, other) => one - other);
  const isClass = isClassSheet(roles);
  const listed = items
    .filter((row) => !unsaid.includes(row))
    .filter((row) => columns.some((amounts) => !isBlank(sheet, row, amounts)))
    .map((row) => nameAt(context, row, column))
    .map((name) =>
      isClass ? { ...name, item: chemicalName(name.item, context.check) ?? name.item } : name,
    );
  const names = withoutRemarks(context, listed, columns);
  const least = isClass ? 1 : 2;
  if (columns.length === 0 || names.length < least || !isRecipe(context, names, columns, least))
    return null;
  const rows = names.map(({ row }) => row);
  const unit = unitOfList(sheet, segment, names, totals);
  const recipes = columns.map((line) => recipeInColumn(sheet, headerRow, line, rows, unit));
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
        if (block === null || blocks.some((other) => isSaidOf(other, block))) continue;
        blocks.push(...(isClassSheet(block.roles) ? withItsWater(block) : recipesInList(block)));
      }
    }
  }
  return blocks;
}
