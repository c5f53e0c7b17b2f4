import { eachFormula } from "../../../workbook/eachFormula";
import type { CellRange, Workbook, WorkbookSheet } from "../../../workbook/model";
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

/** The headings stand so many rows above the first sum of a column at most: a row of units may come between. */
const HEADING = [-1, -2];

/** What heads the sum of all that stands right left of it. */
function headingOf(sheet: WorkbookSheet, range: CellRange, row: number, column: number) {
  const isOfRow = range.top === row && range.bottom === row && range.right === column - 1;
  return isOfRow
    ? HEADING.map((step) => textAt(sheet, row + step, column)).find((text) => text !== "")
    : undefined;
}

/**
 * What a workbook's owner calls the sums of columns and rows, in plain words: "churn", "all in". Where the same words
 * stand below, above or over another list, they head its total, typed or not.
 */
export function labelsOfSums({ sheets }: Workbook): ReadonlySet<string> {
  const labels = new Set<string>();
  for (const sheet of sheets) {
    eachFormula(sheet, (row, column, cell) => {
      const range = labels.size >= MOST_LABELS ? null : sumOfRange(cell);
      if (range === null) return;
      const isOfColumn = range.left === column && range.right === column && isBeside(range, row);
      const label = isOfColumn
        ? NEAR.map((step) => textAt(sheet, row, column + step)).find(
            (text) => text !== "" && unitFromWord(text) === null,
          )
        : headingOf(sheet, range, row, column);
      if (label !== undefined && headerRole(label) === null) labels.add(plainWords(label));
    });
  }
  return labels;
}
