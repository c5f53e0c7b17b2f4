import { referencesOf } from "../../workbook/references";
import type { Place } from "../recipes/recipeBlock";

/** A running sum: what begins it has nothing before it to read. */
export function readsBefore({ row, column }: Place, pattern: string): boolean {
  return (
    /#REF!/.test(pattern) ||
    referencesOf(pattern).some(({ range }) => range.top === row - 1 && range.left === column)
  );
}
