/**
 * What the user says of a range: that it is no recipe, or how the recipe in it lies. What is left out is read
 * from the cells. Plain texts throughout, so that a file, a sheet's row and a form hold it alike.
 */
export interface RecipeCorrection {
  readonly sheet: string;
  /** "A1:C9", headers included. */
  readonly range: string;
  /** Names one below the other, names along a row, or no recipe at all. */
  readonly recipe: "down" | "across" | "none";
  /** The column of the names, "A"; for a recipe across their row, "3". */
  readonly names?: string | undefined;
  /** The columns of the amounts, "B, D:F"; for a recipe across their rows, "4:9". */
  readonly amounts?: string | undefined;
  /** "g", "kg", "%", "cup"…: of all amounts, whatever headers and formats say. */
  readonly unit?: string | undefined;
  /** The words in the range's first row: where they have changed, the correction is not followed. */
  readonly heading?: string | undefined;
}

/** In the first cell of the sheet that keeps them, in every language: by it that sheet is found again. */
export const CORRECTIONS_MARK = "Rimeline: what is a recipe";

/** Its parts in the order in which a sheet keeps them, one to a column. */
export const CORRECTION_FIELDS = [
  "sheet",
  "range",
  "recipe",
  "names",
  "amounts",
  "unit",
  "heading",
] as const satisfies readonly (keyof RecipeCorrection)[];
