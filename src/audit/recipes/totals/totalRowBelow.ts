import { partOf } from "../../answers/partLabel";
import { unitOfHeading } from "../amounts/unitOfHeading";
import { isBlank, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import { headerRole } from "../headings/headerRole";
import type { RecipeBlock } from "../recipeBlock";
import { addsList } from "./addsList";
import { isOfSome } from "./isOfSome";

/** A list may be left room for more lines. */
const REACH = 12;

/** The row of the next words below a list's names; null when there are none near. */
function nextRow({ sheet, range, names }: RecipeBlock): number | null {
  const column = names[0]?.column ?? 0;
  for (let row = range.bottom + 1; row <= range.bottom + REACH; row += 1) {
    if (!isBlank(sheet, row, column)) return row;
  }
  return null;
}

/** A list whose amounts are in the unit that the label of their total says, "grams in all", where nothing else says one. */
function withUnitOf(label: string, block: RecipeBlock): RecipeBlock {
  const unit = unitOfHeading(label);
  if (unit === null) return block;
  const recipes = block.recipes.map((recipe) =>
    recipe.unitAssumed ? { ...recipe, unit, unitAssumed: false } : recipe,
  );
  return { ...block, recipes };
}

/**
 * Gives a list without totals the row of the next words below it, blank rows between, when one of its columns is
 * added up there: what is typed there in its other columns is a total, too.
 */
export function withTotalRowBelow({ check }: FinderContext, block: RecipeBlock): RecipeBlock {
  const { sheet, range, names, totals, recipes, roles } = block;
  const row = totals.length === 0 ? nextRow(block) : null;
  if (row === null) return block;
  const label = textAt(sheet, row, names[0]?.column ?? 0);
  const role = headerRole(label);
  const isOther = role !== null && role !== "total" && role !== "amount";
  if (isOther || isOfSome(label) || partOf(label) !== null || check(label).kind !== "unknown")
    return block;
  const items = names.map((name) => name.row);
  const columns = new Set([...recipes.map(({ line }) => line), ...roles.keys()]);
  const isOwn = (column: number) => column >= range.left && column <= range.right;
  const isSummed = [...columns].some((at) => isOwn(at) && addsList(sheet, row, at, items));
  return isSummed
    ? withUnitOf(label, { ...block, totals: [row], range: { ...range, bottom: row } })
    : block;
}
