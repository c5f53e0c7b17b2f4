import { eachFormula } from "../../../workbook/eachFormula";
import type { CellRange, Workbook } from "../../../workbook/model";
import { textAt } from "../cells";
import { plainWords } from "../headings/plainWords";
import { unitFromWord } from "../amounts/unit";
import { headerRole } from "../headings/headerRole";
import { sumOfRange } from "../../formulas/sumOfRange";

const NEAR = [-1, 1, -2, -3, 2];
/** A sum above its list stands so near to it: headings may stand between. */
const ABOVE = 3;
/** Where people add up more than this, they do not call it by words of their own. */
const MOST_LABELS = 500;

/** Whether a sum stands right below what it adds up, or above it. */
const isBeside = ({ top, bottom }: CellRange, row: number): boolean =>
  bottom === row - 1 || (top > row && top - row <= ABOVE && bottom > top);

/**
 * What a workbook's owner calls the sums of columns, in plain words: "churn", "all in". Where the same words stand
 * below or above another list, they head its total, typed or not.
 */
export function labelsOfSums({ sheets }: Workbook): ReadonlySet<string> {
  const labels = new Set<string>();
  for (const sheet of sheets) {
    eachFormula(sheet, (row, column, cell) => {
      const range = labels.size >= MOST_LABELS ? null : sumOfRange(cell);
      if (range?.left !== column || range.right !== column || !isBeside(range, row)) return;
      const label = NEAR.map((step) => textAt(sheet, row, column + step)).find(
        (text) => text !== "" && unitFromWord(text) === null,
      );
      if (label !== undefined && headerRole(label) === null) labels.add(plainWords(label));
    });
  }
  return labels;
}
