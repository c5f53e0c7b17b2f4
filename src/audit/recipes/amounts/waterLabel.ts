import type { WorkbookSheet } from "../../../workbook/model";
import { looksNumeric, textAt } from "../cells";
import { formKind } from "../forms/formLabels";
import type { RecipeBlock, RecipeName } from "../recipeBlock";
import { sheetTexts } from "../sheetTexts";
import { massIn } from "./unit";

/** The number stands at most this far from its label. */
const REACH = 3;

/** A label "Water (g)" with its number, anywhere on the sheet but in the list itself. */
export function waterLabel(sheet: WorkbookSheet, block: RecipeBlock): RecipeName | null {
  const { top, bottom, left, right } = block.range;
  for (const [row, columns] of sheetTexts(sheet).columnsByRow) {
    for (const column of columns) {
      const text = textAt(sheet, row, column);
      const isInside = row >= top && row <= bottom && column >= left && column <= right;
      if (isInside || formKind(text) !== "water") continue;
      for (let at = column + 1; at <= column + REACH; at += 1) {
        if (!looksNumeric(sheet, row, at)) continue;
        // More numbers beside the first are those of another table.
        if (looksNumeric(sheet, row, at + 1)) break;
        const beside = [at - 1, at + 1].filter((one) => one !== column);
        const marks = [text, ...beside.map((one) => textAt(sheet, row, one))];
        const unit = marks.map(massIn).find((one) => one !== null) ?? null;
        const amountAt = { row, column: at };
        return { row, column, item: "water", amountAt, ...(unit !== null && { unit }) };
      }
    }
  }
  return null;
}
