import { eachCell } from "../../workbook/eachCell";
import type { WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { saysAnswer } from "../answers/saysAnswer";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { saidInSentences } from "./saidInSentences";

/** Whether a number in a formula is said where a person who reads the formula in its cell looks. */
export type IsSaid = (formula: string, value: number, place: Place) => boolean;

/** "Recipe for 50 (g)", "je 12 Stück": for how many or how much the numbers below are. */
const FOR_SO_MANY =
  /\b(?:for|per|makes|serves|für|je|pro|auf)(?: (?:every|each|the))? (\d+(?:[.,]\d+)?)\b/giu;
/** "Out of 50", "von 40 Punkten", "max. 30": the most that the numbers of a row can come to. */
const OUT_OF =
  /\b(?:out of|of|von|aus|max\.?|maximum|maximal|höchstens)(?: (?:a |the )?(?:possible |maximum |insgesamt |total of ))?\s*(\d+(?:[.,]\d+)?)(?![\d\s]*[°%]|\s*k?g\b)/giu;
/** "Tubs of 500 g", "Becher à 120 ml", "80-g-Kugeln": how much each has of what a formula counts. */
const OF_EACH =
  /(?<![\p{L}\d.,])(\d+(?:[.,]\d+)?)[ -]?(?:k?g|[mc]?l|oz|lb|grams?|gramm|kilos?|lit(?:re|er)s?)(?!\p{L})/giu;
/** "At 2.80 € per kg", "£4 each": what one of what a formula counts costs. */
const COSTS =
  /(?<![\p{L}\d.,])((?<=\p{Sc} ?)\d+(?:[.,]\d+)?|\d+(?:[.,]\d+)?(?= ?(?:\p{Sc}|eur|euros?|usd|chf|gbp|cents?|ct|pence|p)(?!\p{L})))/giu;
/** A label stands at most so far left of its number. */
const MOST_LEFT = 12;
/** A heading stands at most so many rows above the line that a formula reads. */
const MOST_LINES = 40;

const numbersIn = (text: string, pattern: RegExp): readonly number[] =>
  [...text.matchAll(pattern)].map(([, digits = ""]) => Number(digits.replace(",", ".")));

/** The nearest heading above a cell. */
function headingAbove(sheet: WorkbookSheet, { row, column }: Place): string {
  for (let above = row - 1; above >= Math.max(0, row - MOST_LINES); above -= 1) {
    const heading = textAt(sheet, above, column);
    if (heading !== "") return heading;
  }
  return "";
}

/** The nearest label left of a cell. */
function labelLeft(sheet: WorkbookSheet, { row, column }: Place): string {
  for (let left = column - 1; left >= Math.max(0, column - MOST_LEFT); left -= 1) {
    const label = textAt(sheet, row, left);
    if (label !== "") return label;
  }
  return "";
}

/** The numbers that the words beside the cells which a formula reads say: for how many they are, out of how many. */
const saidOfRead = (sheet: WorkbookSheet, formula: string): readonly number[] =>
  referencesOf(formula).flatMap(({ sheet: other, range: { top: row, left: column } }) =>
    other !== null
      ? []
      : [
          ...numbersIn(headingAbove(sheet, { row, column }), FOR_SO_MANY),
          ...numbersIn(labelLeft(sheet, { row, column }), OUT_OF),
        ],
  );

/** The numbers that the words beside a formula's own cell say: how much each has of what it counts. */
const saidOfOwn = (sheet: WorkbookSheet, place: Place): readonly number[] =>
  [headingAbove(sheet, place), labelLeft(sheet, place)].flatMap((words) =>
    [OF_EACH, COSTS].flatMap((pattern) => numbersIn(words, pattern)),
  );

/** The numbers that have a cell with words left of it, as inputs do; no amounts of recipes nor what comes of them. */
function labelledInputs(sheet: WorkbookSheet, amounts?: ReadonlySet<string>): Set<number> {
  const inputs = new Set<number>();
  eachCell(sheet, (row, column, { value, formula }) => {
    if (typeof value !== "number" || formula !== undefined) return;
    if (amounts?.has(`${row},${column}`) === true) return;
    const label = textAt(sheet, row, column - 1);
    if (label !== "" && !saysAnswer(label)) inputs.add(value);
  });
  return inputs;
}

/**
 * Whether the heading or label of what a formula reads says a number of it, as a recipe "for 50" that is divided by
 * 50, or marks "out of 50", or that of its own cell does, as "tubs of 500 g", or a sentence above: that number belongs
 * to the words, unless the sheet has a cell for it.
 */
export function basisOfHeadings(
  sheet: WorkbookSheet,
  // Of a long ledger they are many: only where they are needed.
  amounts: () => ReadonlySet<string> | undefined,
): IsSaid {
  let inputs: ReadonlySet<number> | null = null;
  return (formula, value, place) => {
    const isInWords = [
      saidOfOwn(sheet, place),
      saidOfRead(sheet, formula),
      saidInSentences(sheet, formula, place),
    ].some((numbers) => numbers.includes(value));
    if (!isInWords) return false;
    inputs ??= labelledInputs(sheet, amounts());
    return !inputs.has(value);
  };
}
