import type { AuditContext } from "../context";
import type { Recipe } from "../recipes/recipeBlock";
import { resultsThatDiffer } from "./resultsThatDiffer";
import { unfitGroups } from "./unfitGroups";

const known = new WeakMap<AuditContext, ReadonlySet<Recipe>>();

/** The recipes to which no answer fits: until it is seen why, nothing else is told of their mix. */
export function unfitRecipes(context: AuditContext): ReadonlySet<Recipe> {
  const found =
    known.get(context) ??
    new Set(unfitGroups(context, resultsThatDiffer(context)).flatMap(({ recipes }) => recipes));
  known.set(context, found);
  return found;
}
