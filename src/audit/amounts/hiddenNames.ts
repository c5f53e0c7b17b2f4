import type { AuditContext } from "../context";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { isFilteredOut } from "./hiddenLines";

/** What a filter hides has a rule of its own. */
const isHidden = ({ sheet, layout }: RecipeBlock, { row, column }: RecipeName): boolean =>
  layout === "down"
    ? sheet.hiddenRows.has(row) && !isFilteredOut(sheet, row)
    : sheet.hiddenColumns.has(column);

/** An ingredient that cannot be seen, in its list. */
export interface HiddenName {
  readonly block: RecipeBlock;
  readonly name: RecipeName;
}

/** The hidden ingredients; a worked example beside a list is hidden with the list's row, which is told. */
export function hiddenNames({ blocks }: AuditContext): readonly HiddenName[] {
  const hidden = blocks.flatMap((block) =>
    block.names.filter((name) => isHidden(block, name)).map((name) => ({ block, name })),
  );
  const listed = hidden.filter(({ block }) => block.answers === undefined);
  const isTold = ({ block, name }: HiddenName) =>
    listed.some((one) => one.block.sheet === block.sheet && one.name.row === name.row);
  return hidden.filter((one) => one.block.answers === undefined || !isTold(one));
}
