import type { WorkbookSheet } from "../../workbook/model";
import type { Place, Recipe, RecipeBlock } from "../recipes/recipeBlock";

/** A cell with a number, or an error instead of one, that is labelled as something of a recipe. */
export interface LabelledAnswer extends Place {
  readonly sheet: WorkbookSheet;
  readonly label: string;
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
}

export type IsWanted = (label: string) => boolean;

export const isAnswer = (sheet: WorkbookSheet, row: number, column: number): boolean => {
  const value = sheet.cellAt(row, column)?.value ?? null;
  return typeof value === "number" || (typeof value === "object" && value !== null);
};

export const answerAt = (
  block: RecipeBlock,
  recipe: Recipe,
  label: string,
  { row, column }: Place,
  sheet: WorkbookSheet = block.sheet,
): LabelledAnswer | null =>
  isAnswer(sheet, row, column) ? { sheet, row, column, label, block, recipe } : null;
