import type { WorkbookSheet } from "../../../workbook/model";
import { contains, referencesOf } from "../../../workbook/references";
import { partOf } from "../../answers/partLabel";
import type { Place } from "../recipeBlock";
import type { Form } from "./form";
import type { LabelledPair } from "./labelledPairs";

/** Whether a label says how much of something there is to so much water. */
export function isPerWater(label: string): boolean {
  const per = partOf(label)?.per ?? null;
  return per !== null && per !== "share" && per.of === "water";
}

/** The one number of a pair, where it was typed. */
function typedIn(sheet: WorkbookSheet, pair: LabelledPair | null): Place | null {
  const [only, ...more] = pair?.values ?? [];
  if (only === undefined || more.length > 0) return null;
  const cell = sheet.cellAt(only.row, only.column);
  return typeof cell?.value === "number" && cell.formula === undefined ? only : null;
}

/**
 * Whether a form tells how strong a syrup or brine is: one substance and its water are typed, something is asked per
 * so much water, and a formula reads both.
 */
export function isOfStrength(sheet: WorkbookSheet, { solutes, water, others }: Form): boolean {
  const [solute, ...more] = solutes;
  const [mass, poured] = [typedIn(sheet, solute?.mass ?? null), typedIn(sheet, water)];
  if (mass === null || poured === null || more.length > 0) return false;
  const readsBoth = ({ row, column }: Place): boolean => {
    const read = referencesOf(sheet.cellAt(row, column)?.formula ?? "");
    return [mass, poured].every((place) =>
      read.some(
        ({ range, sheet: other }) => other === null && contains(range, place.row, place.column),
      ),
    );
  };
  return (
    others.some(({ label }) => isPerWater(label)) &&
    others.some(({ values }) => values.some(readsBoth))
  );
}
