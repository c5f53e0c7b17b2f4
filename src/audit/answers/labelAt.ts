import type { WorkbookSheet } from "../../workbook/model";
import { holdsNumber, textAt } from "../recipes/cells";
import { headerRole } from "../recipes/headings/headerRole";
import type { Place } from "../recipes/recipeBlock";
import { isExplanation } from "./isExplanation";
import { isUnit } from "./isUnit";
import { ofThat } from "./ofThat";

/** Whether words are the unit of a label left of them, with the number right of them. */
const isUnitOfLabel = (sheet: WorkbookSheet, { row, column }: Place): boolean =>
  isUnit(textAt(sheet, row, column)) &&
  textAt(sheet, row, column - 1) !== "" &&
  holdsNumber(sheet, row, column + 1);

/** A share, or so much of something, which says what is meant as much as the words before its number. */
const SAYS_OF_WHAT =
  /^(%|per ?cent|prozent)|\b(of|in|by|per|pro|je|auf|on|der|des|vom|von)\b|\/ ?\d/i;

/** "Lowered by | 2.9 | K", "Sets from | −2.9 | °C": only its unit says what that is of a mix. */
const isSaidByUnit = (words: string, unit: string): boolean =>
  /^k$/i.test(unit) ||
  (/^°\s?c$/i.test(unit) && headerRole(`${words}, ${unit}`) === "freezing point");

const saysWhat = (words: string, unit: string): boolean =>
  SAYS_OF_WHAT.test(unit) || (headerRole(words) === null && isSaidByUnit(words, unit));

/** A unit stands behind the numbers of at most so many recipes. */
const MOST_RECIPES = 12;

/** The unit of a label behind its number: "Ice in storage | 54 | % of the mix", or behind those of several recipes; "" where it says nothing of what. */
function unitBehind(sheet: WorkbookSheet, { row, column }: Place): string {
  let last = isExplanation(sheet, { row, column: column + 1 }) ? column + 1 : column;
  // "Fat | 8.7 | 8.6 | %": of several recipes.
  while (
    last < column + MOST_RECIPES &&
    [1, 2].every((step) => holdsNumber(sheet, row, last + step))
  )
    last += 1;
  const unit = textAt(sheet, row, last + 2);
  const isBehind = holdsNumber(sheet, row, last + 1) && !holdsNumber(sheet, row, last + 3);
  return isBehind && isUnit(unit) && saysWhat(textAt(sheet, row, column), unit) ? unit : "";
}

/** What a cell labels: its words with the unit in a cell of its own behind them or their number, and "" for such a unit and for an explanation. */
export function labelAt(sheet: WorkbookSheet, { row, column }: Place): string {
  const words = textAt(sheet, row, column);
  if (words === "" || isUnitOfLabel(sheet, { row, column })) return "";
  if (isExplanation(sheet, { row, column })) return "";
  const unit = { row, column: column + 1 };
  const said = isUnitOfLabel(sheet, unit)
    ? textAt(sheet, row, column + 1)
    : unitBehind(sheet, { row, column });
  return ofThat(sheet, { row, column }, said === "" ? words : `${words}, ${said}`);
}
