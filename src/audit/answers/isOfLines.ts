import type { WorkbookSheet } from "../../workbook/model";
import { isOneRow, type Place, type RecipeBlock } from "../recipes/recipeBlock";

/**
 * Whether numbers one below the other stand beside most ingredients of a list: they say something of each line ("solids
 * g" of the milk, of the cream), not of the mix.
 */
export function isOfLines(
  block: RecipeBlock,
  sheet: WorkbookSheet,
  places: readonly Place[],
): boolean {
  if (block.sheet !== sheet || block.layout !== "down" || isOneRow(block)) return false;
  if (new Set(places.map(({ column }) => column)).size !== 1) return false;
  const rows = new Set(places.map(({ row }) => row));
  const beside = block.names.filter(({ row }) => rows.has(row)).length;
  return beside > 1 && beside * 2 > block.names.length;
}
