import { pureSolute } from "../../solutions/pureSolute";
import { holdsNumber, isBlank, textAt } from "../cells";
import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";
import type { Place } from "../recipeBlock";

const MOST_NAMES = 12;
/** A column of units, empty here, may stand between the label and the names. */
const BETWEEN = 1;

function namesFrom({ sheet }: FinderContext, row: number, first: number): string[] {
  const names: string[] = [];
  for (let at = first; textAt(sheet, row, at) !== "" && at < first + MOST_NAMES; at += 1)
    names.push(textAt(sheet, row, at));
  return names;
}

/** Whether a name of a substance, and no number, stands right of a label: so it says what is dissolved. */
export function asksForSolute(context: FinderContext, { row, column }: Place): boolean {
  const { sheet, check } = context;
  const isEmpty = isBlank(sheet, row, column + 1);
  const first = column + 1 + (isEmpty ? BETWEEN : 0);
  const names = namesFrom(context, row, first);
  const isSubstance = (name: string) => {
    const item = chemicalName(name, check);
    return item !== null && pureSolute(item) !== null;
  };
  const isFollowed = holdsNumber(sheet, row, first + names.length);
  const least = isEmpty ? 2 : 1;
  const isAll = names.length >= least && !isFollowed && names.every(isSubstance);
  return isAll && chemicalName(textAt(sheet, row, column), check) === null;
}
