import { textAt } from "./cells";
import type { Role } from "./headerRole";
import type { LabelledPlace, RecipeBlock, RecipeName } from "./recipeBlock";

/** Where a class sheet says something of one solute: in a column of its list or beside a label. */
export function saidOf(block: RecipeBlock, name: RecipeName, role: Role): LabelledPlace | null {
  const own = name.details?.get(role);
  if (own !== undefined) return own;
  const { layout, roles, sheet, headerRow } = block;
  const column = [...roles].find(([, one]) => one === role)?.[0];
  return layout !== "down" || column === undefined
    ? null
    : { row: name.row, column, label: textAt(sheet, headerRow ?? -1, column) };
}
