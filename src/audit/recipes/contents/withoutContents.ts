import { amountPlace, type RecipeBlock } from "../recipeBlock";
import { saysOnlyAmount } from "../headings/saysOnlyAmount";
import { contentsByFormula } from "./contentsByFormula";
import { contentsByHeading } from "./contentsByHeading";

/** A list without the lines that say what its amounts are made of; nothing where no other line is left. */
export function withoutContents(block: RecipeBlock): readonly RecipeBlock[] {
  const { sheet, names, recipes } = block;
  const headed = contentsByHeading(block);
  const workedOut = contentsByFormula(sheet, recipes.length, (at) => {
    const recipe = recipes[at];
    return recipe === undefined ? [] : names.map((name) => amountPlace(block, recipe, name));
  });
  if (headed.length + workedOut.size === 0) return [block];
  const left = recipes.filter(
    (one, at) => !headed.includes(one) && (saysOnlyAmount(one.title) || !workedOut.has(at)),
  );
  return left.length === 0 ? [] : [{ ...block, recipes: left }];
}
