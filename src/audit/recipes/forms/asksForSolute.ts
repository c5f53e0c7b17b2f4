import { pureSolute } from "../../solutions/pureSolute";
import { holdsNumber, textAt } from "../cells";
import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";
import type { Place } from "../recipeBlock";

const MOST_NAMES = 12;

/** Whether a name of a substance, and no number, stands right of a label: so it says what is dissolved. */
export function asksForSolute({ sheet, check }: FinderContext, { row, column }: Place): boolean {
  const names: string[] = [];
  for (let at = column + 1; textAt(sheet, row, at) !== "" && at <= column + MOST_NAMES; at += 1)
    names.push(textAt(sheet, row, at));
  const isSubstance = (name: string) => {
    const item = chemicalName(name, check);
    return item !== null && pureSolute(item) !== null;
  };
  const isFollowed = holdsNumber(sheet, row, column + names.length + 1);
  const isAll = names.length > 0 && !isFollowed && names.every(isSubstance);
  return isAll && chemicalName(textAt(sheet, row, column), check) === null;
}
