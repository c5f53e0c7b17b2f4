import { rangeName } from "../../../workbook/address";
import type { RecipeBlock } from "../recipeBlock";
import { unitText } from "../amounts/unit";
import { headingOf } from "./headingOf";
import { linesText, type LineKind } from "./lines";
import type { RecipeCorrection } from "./recipeCorrection";

/** What would have to be said for a block to be read as it was: the user changes from there. */
export function correctionOf(block: RecipeBlock): RecipeCorrection {
  const { sheet, layout, range, names, recipes } = block;
  const kind: LineKind = layout === "down" ? "columns" : "rows";
  const [name] = names;
  const [recipe] = recipes;
  const line = layout === "down" ? name?.column : name?.row;
  return {
    sheet: sheet.name,
    range: rangeName(range),
    recipe: layout,
    names: linesText(line === undefined ? [] : [line], kind),
    amounts: linesText(
      recipes.map((each) => each.line),
      kind,
    ),
    ...(recipe?.unitStated === true ? { unit: unitText(recipe.unit) } : {}),
    heading: headingOf(sheet, range),
  };
}
