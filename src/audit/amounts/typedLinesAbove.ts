import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { labelColumn } from "./labelColumn";
import type { Summand } from "./totalledLines";

const MOST_LINES = 100;

/** A typed number with the label in the column of its sum's own. */
export interface LabelledLine extends Summand {
  readonly label: string;
}

/** The typed numbers right above a sum, the lowest first, as far as each has a label where the sum has its own. */
export function typedLinesAbove(
  sheet: WorkbookSheet,
  { row, column }: Place,
): readonly LabelledLine[] {
  const labels = labelColumn(sheet, { row, column });
  const lines: LabelledLine[] = [];
  if (labels === undefined) return lines;
  for (let at = row - 1; at >= 0 && lines.length < MOST_LINES; at -= 1) {
    const cell = sheet.cellAt(at, column);
    const label = textAt(sheet, at, labels);
    if (typeof cell?.value !== "number" || cell.formula !== undefined || label === "") break;
    lines.push({ place: { row: at, column }, value: cell.value, counts: true, label });
  }
  return lines;
}
