import { looksNumeric, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import { headerRole, type Role } from "../headings/headerRole";
import { itemName, unitOfNames } from "../names/namesAcross";
import type { RecipeBlock, RecipeName } from "../recipeBlock";
import { isSummaryTitle } from "../totals/summaryRow";
import { titleOfRow } from "../names/titleOfRow";
import { lineOfNames } from "./lineOfNames";
import { rangeLines } from "./rangeLines";
import type { StatedRecipe } from "./statedRecipe";

/** Sorts the headers of the names' row: what is known, or says nothing else, is an ingredient. */
function namesAndRoles({ sheet, check }: FinderContext, row: number, columns: readonly number[]) {
  const names: RecipeName[] = [];
  const roles = new Map<number, Role>();
  for (const column of columns) {
    const item = itemName(textAt(sheet, row, column), check);
    const role = check(item).kind === "unknown" ? headerRole(item) : null;
    if (role !== null) roles.set(column, role);
    else if (item !== "") names.push({ row, column, item });
  }
  return { names, roles };
}

/** Rows that were said to hold a recipe each, and those that were added below them since. */
export function statedAcross(context: FinderContext, stated: StatedRecipe): RecipeBlock {
  const { sheet, ownIngredients } = context;
  const { top, left, bottom, right } = stated.range;
  const columns = rangeLines(left, right);
  const row =
    stated.names ??
    lineOfNames(context, rangeLines(top, bottom), (at) =>
      columns.map((column) => ({ row: at, column })),
    );
  const { names: headed, roles } = namesAndRoles(context, row, columns);
  const isFilled = (at: number) => headed.some(({ column }) => looksNumeric(sheet, at, column));
  const titleOf = (at: number) => titleOfRow(sheet, at, left, headed[0]?.column ?? left);
  const isRecipe = (at: number) => isFilled(at) && !isSummaryTitle(titleOf(at));
  const lines = [...(stated.amounts ?? rangeLines(row + 1, bottom).filter(isRecipe))];
  if (lines.at(-1) === bottom) {
    for (let next = bottom + 1; isRecipe(next); next += 1) lines.push(next);
  }
  const names = headed.filter(({ column }) => lines.some((at) => looksNumeric(sheet, at, column)));
  const unit = stated.unit ?? unitOfNames(context, names, row);
  return {
    sheet,
    layout: "across",
    range: { top, left, bottom: Math.max(bottom, ...lines.slice(-1)), right },
    headerRow: row,
    names,
    recipes: lines.map((line) => ({
      title: titleOf(line),
      line,
      unit: unit ?? "g",
      unitAssumed: unit === null,
      ...(stated.unit === null ? {} : { unitStated: true }),
    })),
    totals: [...roles].filter(([, role]) => role === "total").map(([column]) => column),
    unitColumn: null,
    roles,
    ownIngredients,
    stated: true,
  };
}
