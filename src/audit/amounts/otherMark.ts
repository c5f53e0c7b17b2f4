import type { WorkbookSheet } from "../../workbook/model";
import { looksNumeric, textAt } from "../recipes/cells";
import {
  amountPlace,
  type Place,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipes/recipeBlock";
import { unitColumnOf } from "../recipes/amounts/unitColumnOf";
import {
  isMass,
  isShare,
  unitFromFormat,
  unitFromWord,
  unitText,
  type AmountUnit,
} from "../recipes/amounts/unit";

/** A unit by which an amount is marked though its column has another. */
export interface OtherMark {
  readonly unit: AmountUnit;
  /** The cell with the mark; null where the amount's own format shows it. */
  readonly at: Place | null;
}

/** The amount that a mark belongs to stands before it; grams beyond it have been worked out from both. */
const ownerOf = (sheet: WorkbookSheet, row: number, unitColumn: number): number =>
  looksNumeric(sheet, row, unitColumn - 1) ? unitColumn - 1 : unitColumn + 1;

/** The unit that stands beside an amount or in its own format, where the header says another; else null. */
export function otherMark(block: RecipeBlock, recipe: Recipe, name: RecipeName): OtherMark | null {
  const { sheet, layout } = block;
  const unitColumn = unitColumnOf(block, recipe);
  const { unit, unitAssumed } = recipe;
  // The values of a worked example have no column of which one could be unlike the others.
  if (block.answers !== undefined) return null;
  if (typeof unit !== "string" || !isMass(unit) || unitAssumed) return null;
  const place = amountPlace(block, recipe, name);
  const isOther = (one: AmountUnit | null): one is AmountUnit =>
    one !== null && !(typeof one === "string" && isShare(one)) && unitText(one) !== unit;
  const shown = unitFromFormat(sheet.cellAt(place.row, place.column)?.format);
  if (shown !== null) return isOther(shown) ? { unit: shown, at: null } : null;
  const isMarks = unitColumn !== null && ownerOf(sheet, place.row, unitColumn) === place.column;
  const columns = layout === "down" ? [isMarks ? unitColumn : null, place.column + 1] : [];
  for (const column of columns) {
    const at = { row: place.row, column: column ?? -1 };
    const beside = unitFromWord(textAt(sheet, at.row, at.column));
    if (beside !== null) return isOther(beside) ? { unit: beside, at } : null;
  }
  return null;
}
