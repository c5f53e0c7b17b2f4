import { isBlank, looksNumeric, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import { headerRole, type Role } from "../headings/headerRole";
import type { Recipe, RecipeBlock } from "../recipeBlock";
import { nameInList } from "../names/nameInList";
import { recipeInColumn } from "../recipeInColumn";
import { lineOfNames } from "./lineOfNames";
import { rangeLines } from "./rangeLines";
import { isTotalRow } from "../totals/isTotalRow";
import type { StatedRecipe } from "./statedRecipe";

/** Columns with a number beside a name: those headed as amounts, else those of which nothing is said. */
function columnsOfAmounts(
  { sheet }: FinderContext,
  { range: { top, left, bottom, right } }: StatedRecipe,
  names: number,
): number[] {
  const rows = rangeLines(top, bottom).filter((row) => textAt(sheet, row, names) !== "");
  const numeric = rangeLines(left, right).filter(
    (column) => column !== names && rows.some((row) => looksNumeric(sheet, row, column)),
  );
  const roleOf = (column: number) => headerRole(textAt(sheet, top, column));
  const headed = numeric.filter((column) => roleOf(column) === "amount");
  return headed.length > 0 ? headed : numeric.filter((column) => roleOf(column) === null);
}

/** Whether a row below the range goes on with it: an ingredient that was added, or the total. */
function goesOn(
  { sheet, check }: FinderContext,
  row: number,
  names: number,
  amounts: readonly number[],
): boolean {
  const name = textAt(sheet, row, names);
  if (name === "" || !amounts.some((column) => looksNumeric(sheet, row, column))) return false;
  const role = headerRole(name);
  return check(name).kind !== "unknown" || role === null || role === "total";
}

/** A list that was said to be a recipe, down to its end or the one it has by now. */
export function statedDown(context: FinderContext, stated: StatedRecipe): RecipeBlock {
  const { sheet, ownIngredients, check } = context;
  const { top, left, bottom, right } = stated.range;
  const column =
    stated.names ??
    lineOfNames(context, rangeLines(left, right), (at) =>
      rangeLines(top, bottom).map((row) => ({ row, column: at })),
    );
  const amounts = stated.amounts ?? columnsOfAmounts(context, stated, column);
  const isTotal = (row: number) => {
    const name = textAt(sheet, row, column);
    const above = rangeLines(top, row - 1).filter((at) => textAt(sheet, at, column) !== "");
    const isOne = headerRole(name) === "total" || isTotalRow(sheet, { column }, row, above);
    return isOne && check(name).kind === "unknown";
  };
  let last = bottom;
  while (!isTotal(last) && goesOn(context, last + 1, column, amounts)) last += 1;
  const headerRow = amounts.some((at) => looksNumeric(sheet, top, at)) ? null : top;
  const filled = rangeLines(headerRow === null ? top : top + 1, last).filter(
    (row) => textAt(sheet, row, column) !== "" && amounts.some((at) => !isBlank(sheet, row, at)),
  );
  const items = filled.filter((row) => !isTotal(row));
  const roles = new Map<number, Role>();
  for (const at of headerRow === null ? [] : rangeLines(left, right)) {
    const header = textAt(sheet, top, at);
    if (at !== column && header !== "")
      roles.set(at, amounts.includes(at) ? "amount" : (headerRole(header) ?? "other"));
  }
  const { unit } = stated;
  return {
    sheet,
    layout: "down",
    range: { top, left, bottom: last, right },
    headerRow,
    names: items.map((row) => ({
      row,
      column,
      item: nameInList(textAt(sheet, row, column), check).item,
    })),
    recipes: amounts.map((line): Recipe => {
      const read = recipeInColumn(sheet, headerRow, line, items);
      return unit === null ? read : { ...read, unit, unitAssumed: false, unitStated: true };
    }),
    totals: filled.filter(isTotal),
    unitColumn: [...roles].find(([, role]) => role === "unit")?.[0] ?? null,
    roles,
    ownIngredients,
    stated: true,
  };
}
