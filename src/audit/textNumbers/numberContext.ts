import type { WorkbookSheet } from "../../workbook/model";
import { isUnit } from "../answers/isUnit";
import { isBlank, looksNumeric, textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { saysOf, type Says } from "./saysNumber";
import { numberText } from "./numberText";

/** Why a text is taken for a number: the label that asks for one, or what stands beside it. */
export interface NumberContext {
  readonly label: string;
  readonly says: Says;
  /** Numbers among the cells of its column or row. */
  readonly numbers: number;
  readonly texts: number;
  readonly words: number;
}

const FAR = 200;
/** A label stands at most so many cells to the left of its value. */
const BESIDE = 3;

interface Walked {
  numbers: number;
  texts: number;
  words: number;
  label: string;
}

const stepped = ({ row, column }: Place, down: number, right: number): Place => ({
  row: row + down,
  column: column + right,
});

/** A heading that asks for a number, above the one cell that a row of prices leaves blank in its column. */
function labelAbove(sheet: WorkbookSheet, { row, column }: Place): string {
  const label = textAt(sheet, row - 1, column);
  return saysOf(label) === "a number" ? label : "";
}

/** Counts cells one way up to a blank one; backwards the first word is the label. */
function walk(
  sheet: WorkbookSheet,
  from: Place,
  [down, right]: readonly [number, number],
  into: Walked,
): void {
  const isBack = down + right < 0;
  let at = stepped(from, down, right);
  for (let step = 0; step < FAR && at.row >= 0 && at.column >= 0; step += 1) {
    const value = sheet.cellAt(at.row, at.column)?.value ?? "";
    if (value === "") {
      if (down < 0) into.label = labelAbove(sheet, at);
      break;
    }
    if (typeof value === "number" || typeof value === "object") into.numbers += 1;
    else if (numberText(value) !== null) into.texts += 1;
    else if (isBack) {
      into.label = textAt(sheet, at.row, at.column);
      break;
    } else into.words += 1;
    at = stepped(at, down, right);
  }
}

const contextOf = ({ label, numbers, texts, words }: Walked): NumberContext => ({
  ...{ label, numbers, texts, words, says: saysOf(label) },
});

/** The column of a cell: its heading, and what stands there. */
export function columnContext(sheet: WorkbookSheet, place: Place): NumberContext {
  const found: Walked = { numbers: 0, texts: 1, words: 0, label: "" };
  walk(sheet, place, [-1, 0], found);
  walk(sheet, place, [1, 0], found);
  return contextOf(found);
}

/** The row of a cell: its label, and what stands there. */
export function rowContext(sheet: WorkbookSheet, place: Place): NumberContext {
  const found: Walked = { numbers: 0, texts: 1, words: 0, label: "" };
  walk(sheet, place, [0, -1], found);
  walk(sheet, place, [0, 1], found);
  if (found.label === "") {
    const label = labelBeyond(sheet, place);
    // Beyond a gap beside numbers may be another table.
    if (found.numbers === 0 || saysOf(label) === "a number") found.label = label;
  }
  const context = contextOf(found);
  // A unit in the next cell asks for a number as much as one in the label.
  const isMeasured = found.label !== "" && isUnit(textAt(sheet, place.row, place.column + 1));
  return isMeasured ? { ...context, says: "a number" } : context;
}

/** The first words left of a cell and the numbers beside it, where a few blank cells lie between, or one between any two. */
function labelBeyond(sheet: WorkbookSheet, { row, column }: Place): string {
  // In a column of numbers others of its table may stand beyond a free one.
  const isOfColumn = [row - 1, row + 1].some((beside) => looksNumeric(sheet, beside, column));
  const isBridged = (at: number) =>
    isOfColumn && isBlank(sheet, row, at) && looksNumeric(sheet, row, at - 1);
  let at = column - 1;
  while (at >= 0 && column - at < FAR && (looksNumeric(sheet, row, at) || isBridged(at))) at -= 1;
  const steps = Array.from({ length: BESIDE }, (_, step) => at - step);
  return steps.map((each) => textAt(sheet, row, each)).find((text) => text !== "") ?? "";
}

/** A line of numbers with a few texts among them. */
export const isMostlyNumbers = ({ numbers, texts, words }: NumberContext, least: number): boolean =>
  numbers >= least && numbers >= 2 * texts && words * 4 <= numbers;
