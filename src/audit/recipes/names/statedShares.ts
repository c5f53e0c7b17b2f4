import { partOf } from "../../answers/partLabel";
import { isMass } from "../amounts/unit";
import { textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import type { RecipeName } from "../recipeBlock";
import { unitOfNames } from "./namesAcross";

/**
 * Columns among amounts in grams that say what share of each mix something is, like "Sugar (% of the mass)": answers,
 * although an ingredient is called so, too.
 */
export function statedShares(
  context: FinderContext,
  row: number,
  names: readonly RecipeName[],
): readonly number[] {
  const isStated = ({ column }: RecipeName) =>
    partOf(textAt(context.sheet, row, column))?.per === "share";
  const [shares, others] = [names.filter(isStated), names.filter((name) => !isStated(name))];
  if (shares.length === 0 || shares.length * 2 > names.length) return [];
  const unit = unitOfNames(context, others, row);
  return unit !== null && isMass(unit) ? shares.map(({ column }) => column) : [];
}
