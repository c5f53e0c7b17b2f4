import type { WorkbookSheet } from "../../workbook/model";
import { isListOfDrinks } from "../alcohol/isListOfDrinks";
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

/** The hidden ingredients but for drinks that are poured beside; a worked example beside a list is hidden with the list's row, which is told. */
export function hiddenNames({ blocks }: AuditContext): readonly HiddenName[] {
  const mixes = blocks.filter((block) => !isListOfDrinks(block));
  const hidden = mixes.flatMap((block) =>
    block.names.filter((name) => isHidden(block, name)).map((name) => ({ block, name })),
  );
  const listed = hidden.filter(({ block }) => block.answers === undefined);
  const isTold = ({ block, name }: HiddenName) =>
    listed.some((one) => one.block.sheet === block.sheet && one.name.row === name.row);
  return hidden.filter((one) => one.block.answers === undefined || !isTold(one));
}

/** Ingredients of lists side by side are hidden with one row, those of lists one below the other with one column. */
export function hiddenTogether(hidden: readonly HiddenName[]): readonly (readonly HiddenName[])[] {
  const lines = new Map<WorkbookSheet, Map<string, HiddenName[]>>();
  for (const one of hidden) {
    const { sheet, layout } = one.block;
    const onSheet = lines.get(sheet) ?? new Map<string, HiddenName[]>();
    lines.set(sheet, onSheet);
    const line = layout === "down" ? `row ${one.name.row}` : `column ${one.name.column}`;
    const together = onSheet.get(line) ?? [];
    onSheet.set(line, together);
    together.push(one);
  }
  return [...lines.values()].flatMap((onSheet) => [...onSheet.values()]);
}
