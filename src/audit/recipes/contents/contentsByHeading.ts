import type { WorkbookSheet } from "../../../workbook/model";
import { textAt } from "../cells";
import type { Recipe, RecipeBlock } from "../recipeBlock";
import { unitFromWord } from "../amounts/unit";
import { saysContent } from "./saysContent";

/** What heads a column; above a row of units, what stands there. */
function headingOf(
  sheet: WorkbookSheet,
  headerRow: number | null,
  { title, line }: Recipe,
): string {
  const isUnit = title === "" || unitFromWord(title) !== null;
  return isUnit && headerRow !== null && headerRow > 0 ? textAt(sheet, headerRow - 1, line) : title;
}

/**
 * The lines of a balance, or of a table of what foods are made of, by their headings: "water", "fat", "sugars" and
 * "other solids" beside each other are no recipes. One of them alone may be called so.
 */
export function contentsByHeading({
  sheet,
  layout,
  headerRow,
  recipes,
}: RecipeBlock): readonly Recipe[] {
  const said = recipes.map((one) => {
    const heading = layout === "across" ? one.title : headingOf(sheet, headerRow, one);
    return { one, says: saysContent(heading) };
  });
  const contents = said.filter(({ says }) => says !== null);
  const isBalance = contents.length > 1 && contents.some(({ says }) => says === "surely");
  return isBalance ? contents.map(({ one }) => one) : [];
}
