import { textAt } from "../recipes/cells";
import type { CellOnSheet } from "./powerOfMass";

/** The words for a cell stand at most so far before it. */
const REACH_BESIDE = 4;
const REACH_ABOVE = 60;

/** The nearest words left of a cell. */
function wordsBefore({ sheet, row, column }: CellOnSheet): string {
  for (let at = column - 1; at >= Math.max(0, column - REACH_BESIDE); at -= 1) {
    const text = textAt(sheet, row, at);
    if (text !== "") return text;
  }
  return "";
}

/** The heading of the column a cell stands in. */
function wordsAbove({ sheet, row, column }: CellOnSheet): string {
  for (let at = row - 1; at >= Math.max(0, row - REACH_ABOVE); at -= 1) {
    const text = textAt(sheet, at, column);
    if (text !== "") return text;
  }
  return "";
}

/** The words that may say what a cell is: the nearest left of it and the nearest above it, "" where there are none. */
export const wordsOfCell = (cell: CellOnSheet) => ({
  before: wordsBefore(cell),
  above: wordsAbove(cell),
});
