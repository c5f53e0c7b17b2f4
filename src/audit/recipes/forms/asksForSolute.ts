import { pureSolute } from "../../solutions/pureSolute";
import { massIn } from "../amounts/unit";
import { holdsNumber, isBlank, looksNumeric, textAt } from "../cells";
import { chemicalName } from "../names/chemicalName";
import type { FinderContext } from "../finderContext";
import { formKind } from "./formLabels";
import type { Place } from "../recipeBlock";

const MOST_NAMES = 12;
/** A column of units, empty here, may stand between the label and the names. */
const BETWEEN = 1;

/** Whether words that are no name have a number of their own beside them, as on a card: "Substance | salt | grams of it | 15". */
function labelsOwnNumber({ sheet, check }: FinderContext, row: number, column: number): boolean {
  const text = textAt(sheet, row, column);
  return (
    looksNumeric(sheet, row, column + 1) &&
    (formKind(text) !== null || massIn(text) !== null) &&
    chemicalName(text, check) === null
  );
}

function namesFrom(context: FinderContext, row: number, first: number): string[] {
  const names: string[] = [];
  for (let at = first; at < first + MOST_NAMES; at += 1) {
    const text = textAt(context.sheet, row, at);
    if (text === "" || (at > first && labelsOwnNumber(context, row, at))) break;
    names.push(text);
  }
  return names;
}

/** Whether names of substances, and no number, stand right of a label: so it says what is dissolved. */
export function asksForSolute(context: FinderContext, { row, column }: Place): boolean {
  const { sheet, check } = context;
  const isEmpty = isBlank(sheet, row, column + 1);
  const first = column + 1 + (isEmpty ? BETWEEN : 0);
  const items = namesFrom(context, row, first).map((name) => chemicalName(name, check));
  const known = items.filter((item) => item !== null);
  const pure = known.filter((item) => pureSolute(item) !== null);
  const least = isEmpty ? 2 : 1;
  return (
    known.length === items.length &&
    pure.length >= least &&
    // Of several one may be a food by mistake.
    pure.length >= items.length - 1 &&
    !holdsNumber(sheet, row, first + items.length) &&
    chemicalName(textAt(sheet, row, column), check) === null
  );
}
