import { columnName, rangeName } from "../../workbook/address";
import type { Recipe, RecipeBlock } from "./recipeBlock";
import { unitText } from "./amounts/unit";

function namesRange({ names }: RecipeBlock): string {
  const rows = names.map(({ row }) => row);
  const columns = names.map(({ column }) => column);
  return rangeName({
    top: Math.min(...rows),
    left: Math.min(...columns),
    bottom: Math.max(...rows),
    right: Math.max(...columns),
  });
}

const lineName = ({ layout }: RecipeBlock, { line }: Recipe): string =>
  layout === "down" ? `column ${columnName(line)}` : `row ${line + 1}`;

/** One sentence that says what was taken for what. */
export function describeBlock(block: RecipeBlock): string {
  const [first] = block.recipes;
  const last = block.recipes.at(-1);
  if (first === undefined || last === undefined) return "No recipe.";
  const lines =
    block.recipes.length === 1
      ? lineName(block, first)
      : `${lineName(block, first)} to ${lineName(block, last)} (${block.recipes.length} recipes)`;
  const unit =
    block.unitColumn === null || !first.unitAssumed
      ? unitText(first.unit)
      : `unit in column ${columnName(block.unitColumn)}`;
  const assumed =
    first.unitAssumed && block.unitColumn === null ? ", assumed: no unit is written" : "";
  const what = `${namesRange(block)} for the ingredients and ${lines} for the amounts (${unit}${assumed})`;
  return block.stated === true ? `As it was said, took ${what}.` : `Took ${what}.`;
}
