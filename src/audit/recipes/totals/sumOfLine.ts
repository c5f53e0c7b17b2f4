import type { RecipeBlock } from "../recipeBlock";

/** What the numbers of a list in one of its columns come to. */
export const sumOfLine = ({ sheet, names }: RecipeBlock, line: number): number =>
  names.reduce((sum, { row }) => {
    const value = sheet.cellAt(row, line)?.value;
    return typeof value === "number" ? sum + value : sum;
  }, 0);
