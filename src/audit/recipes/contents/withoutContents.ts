import { amountPlace, type RecipeBlock } from "../recipeBlock";
import { saysOnlyAmount } from "../headings/saysOnlyAmount";
import { contentsByFormula } from "./contentsByFormula";
import { contentsByHeading } from "./contentsByHeading";

/** A list without the lines that say what its amounts are made of; nothing where no other line is left. */
export function withoutContents(block: RecipeBlock): readonly RecipeBlock[] {
  const lines = block.recipes.map((recipe) =>
    block.names.map((name) => amountPlace(block, recipe, name)),
  );
  const [headed, workedOut] = [contentsByHeading(block), contentsByFormula(block.sheet, lines)];
  if (headed.length + workedOut.length === 0) return [block];
  const isContent = (line: (typeof lines)[number] | undefined) =>
    line !== undefined && workedOut.includes(line);
  const recipes = block.recipes.filter(
    (one, at) => !headed.includes(one) && (saysOnlyAmount(one.title) || !isContent(lines[at])),
  );
  return recipes.length === 0 ? [] : [{ ...block, recipes }];
}
