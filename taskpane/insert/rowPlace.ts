import { cellName, parseRangeName } from "../../src/workbook/address";
import type { RecognisedRecipe } from "../bowl/recognised";

/** Where a new line of a recipe goes. */
export interface RowPlace {
  /** A1: the cell of its name, and that of its amount. */
  readonly cells: readonly [name: string, amount: string];
  /** True where the line lies outside the recipe's lines as they were read. */
  readonly isBeyond: boolean;
}

/** The cells of the selected row in the recipe's columns; of the selected column in its rows, across. */
export function rowPlace(
  { direction, nameRange, amountRange }: RecognisedRecipe,
  { row, column }: { readonly row: number; readonly column: number },
): RowPlace | null {
  const [names, amounts] = [parseRangeName(nameRange), parseRangeName(amountRange)];
  if (names === null || amounts === null) return null;
  return direction === "down"
    ? {
        cells: [cellName(row, names.left), cellName(row, amounts.left)],
        isBeyond: row < names.top || row > names.bottom,
      }
    : {
        cells: [cellName(names.top, column), cellName(amounts.top, column)],
        isBeyond: column < names.left || column > names.right,
      };
}
