import type { WorkbookSheet } from "../../workbook/model";
import { isBlank } from "../recipes/cells";
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
  // Beyond a free column stands a table of its own.
  const first = block.range.right + 1;
  const last = places[0]?.column ?? first;
  const between = Array.from({ length: Math.max(0, last - first) }, (_, at) => first + at);
  const isFree = (column: number) => [...rows].every((row) => isBlank(sheet, row, column));
  if (between.some(isFree)) return false;
  const beside = block.names.filter(({ row }) => rows.has(row)).length;
  return beside > 1 && beside * 2 > block.names.length;
}
