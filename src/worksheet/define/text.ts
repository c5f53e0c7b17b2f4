import { badInput } from "../../foundation/problem";
import type { Result } from "../../foundation/result";
import { shownCell } from "../../recipe/shownCell";
import type { Argument } from "./argument";
import { cellArgument, type Value } from "./cellArgument";

/** A cell's text; a number or a truth value there is an error. */
export function textOf(cell: Value, place: string, expected: string): Result<string> {
  if (typeof cell === "string") return cell.trim();
  return badInput(`${place}: ${shownCell(cell)} is not a text; ${expected} is expected.`);
}

/** A text; with a default it may be left out. */
export function text(
  description: string,
  expected: string,
  options?: { readonly default: string },
): Argument<string> {
  return cellArgument({
    description,
    optional: options !== undefined,
    fallback: options && { value: options.default },
    expected,
    valueOf: (cell, place) => textOf(cell, place, expected),
  });
}
