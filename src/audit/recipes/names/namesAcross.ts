import { partOf } from "../../answers/partLabel";
import { textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import type { ItemCheck } from "./knownItems";
import { nameInList } from "./nameInList";
import type { RecipeName } from "../recipeBlock";
import { answerRole } from "../headings/answerRole";
import { plainWords } from "../headings/plainWords";
import { unitFromHeader, unitFromWord, type AmountUnit } from "../amounts/unit";
import { unitInTitle } from "../amounts/unitInTitle";

/** The name in a header like "Lemon juice (g)". */
export const itemName = (header: string, check: ItemCheck): string =>
  nameInList(header, check).item;

/** One unit for the whole row of names, by its headers, the row of units below, the corner or the title above. */
export function unitOfNames(
  { sheet, check }: FinderContext,
  names: readonly RecipeName[],
  row: number,
): AmountUnit | null {
  for (const { column } of names) {
    const { unit } = nameInList(textAt(sheet, row, column), check);
    const written = unit ?? unitFromWord(textAt(sheet, row + 1, column));
    if (written !== null) return written;
  }
  const first = names[0]?.column ?? 0;
  // What an answer left of the amounts is in, they are not.
  const corners = [1, 2, 3]
    .map((step) => textAt(sheet, row, first - step))
    .filter((text) => answerRole(plainWords(text)) === null && partOf(text) === null)
    .map(unitFromHeader);
  return corners.find((unit) => typeof unit === "string") ?? unitInTitle(sheet, row, 0, first);
}
