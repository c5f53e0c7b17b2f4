import { eachCell } from "../../workbook/eachCell";
import type { WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { saysAnswer } from "../answers/saysAnswer";
import { looksNumeric, textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { numbersSaid } from "./numbersSaid";
import { factorsOfUnits } from "./factorsOfUnits";
import { saidInSentences } from "./saidInSentences";
import { sharesInSentences } from "./sharesInSentences";

/** Whether a number in a formula is said where a person who reads the formula in its cell looks. */
export type IsSaid = (formula: string, value: number, place: Place) => boolean;

/** A label stands at most so far left of its number. */
const MOST_LEFT = 12;
/** A heading stands at most so many rows above the line that a formula reads. */
const MOST_LINES = 40;

/** A sheet's titles stand in its first rows. */
const [ROWS_OF_TITLES, MOST_COLUMNS] = [2, 20];

/** Words, and where they stand. */
interface Words extends Place {
  readonly text: string;
}

/** The nearest heading above a cell. */
function headingAbove(sheet: WorkbookSheet, { row, column }: Place): Words {
  for (let above = row - 1; above >= Math.max(0, row - MOST_LINES); above -= 1) {
    const text = textAt(sheet, above, column);
    if (text !== "") return { row: above, column, text };
  }
  return { row: -1, column, text: "" };
}

/** The nearest label left of a cell. */
function labelLeft(sheet: WorkbookSheet, { row, column }: Place): Words {
  for (let left = column - 1; left >= Math.max(0, column - MOST_LEFT); left -= 1) {
    const text = textAt(sheet, row, left);
    if (text !== "") return { row, column: left, text };
  }
  return { row, column: -1, text: "" };
}

/** The titles of a sheet: words in its first rows, where no number stands. */
function titlesOf(sheet: WorkbookSheet): readonly string[] {
  const rows = Array.from({ length: ROWS_OF_TITLES }, (_, row) => row);
  return rows.flatMap((row) => {
    const columns = Array.from({ length: MOST_COLUMNS }, (_, column) => column);
    const hasNumber = columns.some((column) => looksNumeric(sheet, row, column));
    return hasNumber ? [] : columns.map((column) => textAt(sheet, row, column));
  });
}

/** The cells on its own sheet that a formula reads, the first of each range. */
const readBy = (formula: string): readonly Place[] =>
  referencesOf(formula).flatMap(({ sheet, range: { top, left } }) =>
    sheet === null ? [{ row: top, column: left }] : [],
  );

/** The numbers that the words beside the cells which a formula reads say: for how many they are, out of how many. */
const saidOfRead = (sheet: WorkbookSheet, formula: string): readonly number[] =>
  readBy(formula).flatMap((place) => [
    ...numbersSaid.counts(headingAbove(sheet, place).text),
    ...numbersSaid.shares(headingAbove(sheet, place).text),
    ...numbersSaid.outOf(labelLeft(sheet, place).text),
    ...numbersSaid.shares(labelLeft(sheet, place).text),
  ]);

/** How many times as many the numbers below a heading are for as those that their formulas read: "for 30" after "for 10", be that in the title. */
function timesSaid(
  sheet: WorkbookSheet,
  formula: string,
  place: Place,
  titles: readonly string[],
): readonly number[] {
  const own = numbersSaid.counts(headingAbove(sheet, place).text);
  const read = readBy(formula).map((at) => headingAbove(sheet, at).text);
  const others = [...read, ...titles].flatMap(numbersSaid.counts);
  return own.flatMap((count) => others.map((other) => count / other));
}

/** The numbers that the words around a formula's own cell say: of how many, of how much, for what it sells. */
function saidOfOwn(
  sheet: WorkbookSheet,
  place: Place,
  titles: readonly string[],
): readonly number[] {
  const [heading, label] = [headingAbove(sheet, place), labelLeft(sheet, place)];
  const behind = textAt(sheet, place.row, place.column + 1);
  const own = [heading.text, label.text, behind].flatMap((words) => [
    ...numbersSaid.counts(words),
    ...numbersSaid.masses(words),
    ...numbersSaid.money(words),
    ...numbersSaid.shares(words),
    ...numbersSaid.more(words),
    ...factorsOfUnits(words),
  ]);
  // Over the labels "for 12 batches", over all "for 16 guests".
  const over = [textAt(sheet, heading.row, label.column), ...titles];
  return [
    ...own,
    ...over.flatMap((words) => [...numbersSaid.counts(words), ...numbersSaid.masses(words)]),
  ];
}

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
 * Whether the words of a formula's own cell, of what it reads or over all or a sentence above say a number of it: "for 50"
 * of a recipe that is divided by 50, "out of 50" of marks, "tubs of 500 g": that number belongs to the words, unless
 * the sheet has a cell for it.
 */
export function basisOfHeadings(
  sheet: WorkbookSheet,
  // Of a long ledger they are many: only where they are needed.
  amounts: () => ReadonlySet<string> | undefined,
): IsSaid {
  let inputs: ReadonlySet<number> | null = null;
  let titles: readonly string[] | null = null;
  return (formula, value, place) => {
    const over = (titles ??= titlesOf(sheet));
    const isInWords = [
      () => saidOfOwn(sheet, place, over),
      () => saidOfRead(sheet, formula),
      () => timesSaid(sheet, formula, place, over),
      () => saidInSentences(sheet, place),
      () => sharesInSentences(sheet),
    ].some((said) => said().some((number) => Math.abs(number - value) <= 1e-9 * value));
    if (!isInWords) return false;
    inputs ??= labelledInputs(sheet, amounts());
    return !inputs.has(value);
  };
}
