import { cellName } from "../../workbook/address";
import { isMisread } from "../amounts/isMisread";
import type { AuditContext } from "../context";
import type { Recipe } from "../recipes/recipeBlock";
import { judgeResults } from "./judgeResults";
import type { StatedResult } from "./statedResults";

const known = new WeakMap<AuditContext, ReadonlySet<Recipe>>();

/** The recipes whose stated freezing point is not what their amounts give. */
function withOtherPoints(context: AuditContext): ReadonlySet<Recipe> {
  const before = known.get(context);
  if (before !== undefined) return before;
  const cells = new Set(judgeResults(context).map(({ sheet, cell }) => `${sheet}!${cell}`));
  const recipes = new Set(
    context.results
      .filter(({ role }) => role === "freezing point" || role === "depression")
      .filter(({ sheet, row, column }) => cells.has(`${sheet.name}!${cellName(row, column)}`))
      .map(({ recipe }) => recipe),
  );
  known.set(context, recipes);
  return recipes;
}

/** Whether an answer stands among others that do not fit its recipe, or its recipe has an amount in another unit: its amounts are in doubt, not what the answer is of. */
export const isOfDoubtedRecipe = (context: AuditContext, result: StatedResult): boolean =>
  isMisread(result.block, result.recipe) || withOtherPoints(context).has(result.recipe);
