import { badInput, outsideValidity } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { shownCell } from "../../recipe/shownCell";
import type { Argument } from "./argument";
import { cellArgument, type Value } from "./cellArgument";

export interface NumberRange {
  /** Smallest and largest value that makes sense; beyond it the cell is wrong (#VALUE!). */
  readonly from: number;
  readonly to: number;
  /** Set when `from` itself is not allowed. */
  readonly above?: boolean;
  /** The narrower range that is answered; beyond it we decline (#N/A). */
  readonly answeredFrom?: number;
  readonly answeredTo?: number;
  /** Unit as the user reads it, "" when there is none. */
  readonly unit?: string;
}

const unitText = ({ unit = "" }: NumberRange) => (unit === "" ? "" : ` ${unit}`);

/** 1e9 rather than a row of zeros. */
const shownLimit = (limit: number): string =>
  limit >= 1e6 ? limit.toExponential().replace("+", "") : String(limit);

/** What is asked for: the range that is answered. */
function rangeText(range: NumberRange): string {
  const { answeredFrom: from = range.from, answeredTo = range.to, above = false } = range;
  const to = shownLimit(answeredTo);
  return `${above ? `above ${from} and up to ${to}` : `from ${from} to ${to}`}${unitText(range)}`;
}

/** Checks a cell against a range; the sentence names place, value and limit. */
export function numberWithin(cell: Value, place: string, range: NumberRange): Result<number> {
  if (typeof cell !== "number") {
    const shown = shownCell(cell);
    return badInput(`${place}: this is ${shown}; a number ${rangeText(range)} is expected.`);
  }
  const { from, to, above = false } = range;
  if (cell < from || cell > to || (above && cell === from)) {
    return badInput(
      `${place}: ${cell}${unitText(range)} is out of range; it must be ${rangeText(range)}.`,
    );
  }
  const { answeredFrom = from, answeredTo = to } = range;
  if (cell < answeredFrom || cell > answeredTo) {
    return outsideValidity(
      `${place}: ${cell}${unitText(range)} is not answered; the checked range is ${answeredFrom} to ${answeredTo}${unitText(range)}.`,
    );
  }
  return cell;
}

/** A number within a range; with a default it may be left out. */
export function number(
  description: string,
  range: NumberRange,
  options?: { readonly default: number },
): Argument<number> {
  return cellArgument({
    description: `${description}, ${rangeText(range)}`,
    optional: options !== undefined,
    fallback: options && { value: options.default },
    expected: `a number ${rangeText(range)}`,
    valueOf: (cell, place) => numberWithin(cell, place, range),
  });
}

/** A number that may be left out and then is null: the function decides what that means. */
export function optionalNumber(description: string, range: NumberRange): Argument<number | null> {
  return cellArgument<number | null>({
    description: `${description}, ${rangeText(range)}`,
    optional: true,
    fallback: { value: null },
    expected: `a number ${rangeText(range)}`,
    valueOf: (cell, place) => numberWithin(cell, place, range),
  });
}
