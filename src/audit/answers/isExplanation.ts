import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { isAnswer } from "./labelledAnswer";
import { saysAnswer } from "./saysAnswer";

/** Whether a row has words, more words and a number one beside the other, the second words in a column. */
const isOfThree = (sheet: WorkbookSheet, { row, column }: Place): boolean =>
  isAnswer(sheet, row, column + 1) &&
  textAt(sheet, row, column) !== "" &&
  textAt(sheet, row, column - 1) !== "";

/**
 * Whether words between what is asked and its number say how it is found, line by line: "Freezing point | 0 °C minus
 * the depression | −2.3". Whatever they name, they are no label.
 */
export const isExplanation = (sheet: WorkbookSheet, { row, column }: Place): boolean =>
  isOfThree(sheet, { row, column }) &&
  [row - 1, row + 1].some((other) => isOfThree(sheet, { row: other, column })) &&
  saysAnswer(textAt(sheet, row, column - 1));
