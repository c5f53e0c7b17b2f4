import { eachCell } from "../../workbook/eachCell";
import type { WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { textAt } from "../recipes/cells";

/** Whether a number in a formula is said where a person who reads the formula looks. */
export type IsSaid = (formula: string, value: number) => boolean;

/** "Recipe for 50 (g)", "je 12 Stück": for how many or how much the numbers below are. */
const FOR_SO_MANY =
  /\b(?:for|per|makes|serves|für|je|pro|auf)(?: (?:every|each|the))? (\d+(?:[.,]\d+)?)\b/giu;
/** "Out of 50", "von 40 Punkten", "max. 30": the most that the numbers of a row can come to. */
const OUT_OF =
  /\b(?:out of|of|von|aus|max\.?|maximum|maximal|höchstens)(?: (?:a |the )?(?:possible |maximum |insgesamt |total of ))?\s*(\d+(?:[.,]\d+)?)(?![\d\s]*[°%]|\s*k?g\b)/giu;
/** A label stands at most so far left of its number. */
const MOST_LEFT = 12;
/** A heading stands at most so many rows above the line that a formula reads. */
const MOST_LINES = 40;

const numbersIn = (text: string, pattern: RegExp): readonly number[] =>
  [...text.matchAll(pattern)].map(([, digits = ""]) => Number(digits.replace(",", ".")));

/** For how many the nearest heading above a cell says that its column is. */
function basesAbove(sheet: WorkbookSheet, row: number, column: number): readonly number[] {
  for (let above = row - 1; above >= Math.max(0, row - MOST_LINES); above -= 1) {
    const heading = textAt(sheet, above, column);
    if (heading !== "") return numbersIn(heading, FOR_SO_MANY);
  }
  return [];
}

/** Out of how many the label left of a cell says that its row is. */
function mostSaidLeft(sheet: WorkbookSheet, row: number, column: number): readonly number[] {
  for (let left = column - 1; left >= Math.max(0, column - MOST_LEFT); left -= 1) {
    const label = textAt(sheet, row, left);
    if (label !== "") return numbersIn(label, OUT_OF);
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
 * Whether the heading or label of what a formula reads says a number of it, as a recipe "for 50" that is divided by
 * 50, or marks "out of 50": that number belongs to the words, unless the sheet has a cell for it.
 */
export function basisOfHeadings(
  sheet: WorkbookSheet,
  // Of a long ledger they are many: only where they are needed.
  amounts: () => ReadonlySet<string> | undefined,
): IsSaid {
  let inputs: ReadonlySet<number> | null = null;
  return (formula, value) => {
    const isInWords = referencesOf(formula).some(
      ({ sheet: other, range: { top, left } }) =>
        other === null &&
        (basesAbove(sheet, top, left).includes(value) ||
          mostSaidLeft(sheet, top, left).includes(value)),
    );
    if (!isInWords) return false;
    inputs ??= labelledInputs(sheet, amounts());
    return !inputs.has(value);
  };
}
