import { eachFormula } from "../../../workbook/eachFormula";
import type { Workbook } from "../../../workbook/model";
import { textAt } from "../cells";
import { plainWords } from "../headings/plainWords";
import { unitFromWord } from "../amounts/unit";
import { headerRole } from "../headings/headerRole";
import { sumOfRange } from "../../formulas/sumOfRange";

const NEAR = [-1, 1, -2, -3];
/** Where people add up more than this, they do not call it by words of their own. */
const MOST_LABELS = 500;

/**
 * What a workbook's owner calls the sums of columns, in plain words: "churn", "all in". Where the same words stand
 * below another list, they head its total, typed or not.
 */
export function labelsOfSums({ sheets }: Workbook): ReadonlySet<string> {
  const labels = new Set<string>();
  for (const sheet of sheets) {
    eachFormula(sheet, (row, column, cell) => {
      const range = labels.size >= MOST_LABELS ? null : sumOfRange(cell);
      if (range?.left !== column || range.right !== column || range.bottom !== row - 1) return;
      const label = NEAR.map((step) => textAt(sheet, row, column + step)).find(
        (text) => text !== "" && unitFromWord(text) === null,
      );
      if (label !== undefined && headerRole(label) === null) labels.add(plainWords(label));
    });
  }
  return labels;
}
