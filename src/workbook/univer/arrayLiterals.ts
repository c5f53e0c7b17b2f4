import {
  ArrayValueObject,
  ErrorType,
  ErrorValueObject,
  StringValueObject,
  ValueObjectFactory,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { plainNumber } from "./numberLiterals";

/** What is private in the engine's array: how it is built from the text of a literal. */
interface ArrayInternals {
  _formatValue: (this: ArrayInternals, raw: unknown) => BaseValueObject[][];
  _rowCount: number;
  _columnCount: number;
}

function elementOf(text: string): BaseValueObject {
  const trimmed = text.trim();
  return trimmed.startsWith('"')
    ? StringValueObject.create(trimmed.slice(1, -1))
    : ValueObjectFactory.create(plainNumber(trimmed), true);
}

// The engine's lexer has made one quote of each doubled one already: a text ends with the quote before a
// separator or the end.
const PIECES = /\s*"[\s\S]*?"(?=\s*(?:[,;]|$))|[,;]|[^,;]+/g;

/** Cuts at a separator outside quotes. */
const cut = (text: string, separator: "," | ";"): string[] =>
  (text.match(PIECES) ?? []).reduce<string[]>(
    (parts, piece) => {
      if (piece === separator) parts.push("");
      else parts.push((parts.pop() ?? "") + piece);
      return parts;
    },
    [""],
  );

/** Rows of an array literal such as {"cream, 36 %",2;"x",TRUE}; a missing element is #N/A. */
export function parseArrayLiteral(literal: string): BaseValueObject[][] {
  const rows = cut(literal.trim().slice(1, -1), ";").map((row) => cut(row, ",").map(elementOf));
  const width = Math.max(...rows.map((row) => row.length));
  return rows.map((row) =>
    Array.from(
      { length: width },
      (_, column) => row[column] ?? ErrorValueObject.create(ErrorType.NA),
    ),
  );
}

let repaired = false;

/** The engine splits an array literal at every comma, also inside quotes; this makes it read the text. */
export function repairArrayLiterals(): void {
  if (repaired) return;
  repaired = true;
  const internals = ArrayValueObject.prototype as unknown as ArrayInternals;
  const original = internals._formatValue;
  internals._formatValue = function (raw) {
    if (typeof raw !== "string") return original.call(this, raw);
    const rows = parseArrayLiteral(raw);
    this._rowCount = rows.length;
    this._columnCount = rows[0]?.length ?? 0;
    return rows;
  };
}
