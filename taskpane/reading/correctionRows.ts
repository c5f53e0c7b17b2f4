import {
  CORRECTION_FIELDS,
  CORRECTIONS_MARK,
} from "../../src/audit/recipes/corrections/recipeCorrection";
import type { RecipeCorrection } from "../../src/audit/recipes/corrections/recipeCorrection";
import type { KeptRow, KeptSheet } from "./keptSheet";

/** What a correction is about: the corner of its cells, so that one with other bounds takes its place. */
export const placeCorrected = (sheet: unknown, range: unknown): string =>
  `${String(sheet)}!${String(range).split(":", 1)[0] ?? ""}`;

/** The sheet of what was said of recipes, as the audit reads it. */
export const correctionSheet: KeptSheet = {
  mark: CORRECTIONS_MARK,
  columns: CORRECTION_FIELDS.length,
  keyOf: ([sheet, range]) => placeCorrected(sheet, range),
};

/** What is kept of the user's words on recipes. */
export const correctionRows = (corrections: readonly RecipeCorrection[]): readonly KeptRow[] =>
  corrections.map((correction) => {
    const cells = CORRECTION_FIELDS.map((field) => correction[field] ?? "");
    return {
      key: placeCorrected(correction.sheet, correction.range),
      cells,
      isSaidBy: (standing) => cells.every((text, at) => String(standing[at] ?? "") === text),
    };
  });
