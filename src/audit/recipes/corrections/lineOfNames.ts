import { textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import { itemName } from "../names/namesAcross";
import type { Place } from "../recipeBlock";

/** Of some lines of cells the one with the most known names. */
export function lineOfNames(
  { sheet, check }: FinderContext,
  lines: readonly number[],
  placesIn: (line: number) => readonly Place[],
): number {
  const known = (line: number) =>
    placesIn(line).filter(
      ({ row, column }) => check(itemName(textAt(sheet, row, column), check)).kind !== "unknown",
    ).length;
  const counts = lines.map((line) => ({ line, count: known(line) }));
  return counts.reduce((best, each) => (each.count > best.count ? each : best)).line;
}
