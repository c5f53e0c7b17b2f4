import { eachCell } from "../../workbook/eachCell";
import type { WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { textAt } from "../recipes/cells";

/** Whether a number in a formula is said where a person who reads the formula looks. */
export type IsSaid = (formula: string, value: number) => boolean;

/** "Recipe for 50 (g)", "je 12 Stück": for how many or how much the numbers below are. */
const FOR_SO_MANY =
  /\b(?:for|per|makes|serves|für|je|pro|auf)(?: (?:every|each|the))? (\d+(?:[.,]\d+)?)\b/giu;
/** A heading stands at most so many rows above the line that a formula reads. */
const MOST_LINES = 40;

/** For how many the nearest heading above a cell says that its column is. */
function basesAbove(sheet: WorkbookSheet, row: number, column: number): readonly number[] {
  for (let above = row - 1; above >= Math.max(0, row - MOST_LINES); above -= 1) {
    const heading = textAt(sheet, above, column);
    if (heading !== "")
      return [...heading.matchAll(FOR_SO_MANY)].map(([, digits = ""]) =>
        Number(digits.replace(",", ".")),
      );
  }
  return [];
}

/** The numbers that have a cell with words left of it, as inputs do; no amounts of recipes. */
function labelledInputs(sheet: WorkbookSheet, amounts?: ReadonlySet<string>): Set<number> {
  const inputs = new Set<number>();
  eachCell(sheet, (row, column, { value, formula }) => {
    if (typeof value !== "number" || formula !== undefined) return;
    if (amounts?.has(`${row},${column}`) === true) return;
    if (textAt(sheet, row, column - 1) !== "") inputs.add(value);
  });
  return inputs;
}

/**
 * Whether the heading of what a formula reads says a number of it, as a recipe "for 50" that is divided by 50: that
 * number belongs to the heading, unless the sheet has a cell for it.
 */
export function basisOfHeadings(
  sheet: WorkbookSheet,
  // Of a long ledger they are many: only where they are needed.
  amounts: () => ReadonlySet<string> | undefined,
): IsSaid {
  let inputs: ReadonlySet<number> | null = null;
  return (formula, value) => {
    const isInHeading = referencesOf(formula).some(
      (read) =>
        read.sheet === null && basesAbove(sheet, read.range.top, read.range.left).includes(value),
    );
    if (!isInHeading) return false;
    inputs ??= labelledInputs(sheet, amounts());
    return !inputs.has(value);
  };
}
