import type { RecipeCorrection } from "../../src/audit/recipes/corrections/recipeCorrection";
import { placeCorrected } from "./correctionRows";
import { useKept } from "./useKept";

/** What the user said of recipes: of one place the last word holds. */
export const useCorrections = () =>
  useKept<RecipeCorrection>(({ sheet, range }) => placeCorrected(sheet, range));
