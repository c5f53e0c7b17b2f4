import { isErrorValue, type BookValue } from "../book";
import type { GridBlock, GridInput } from "../grid";
import { HostError } from "./hostError";

/** A value as Excel hands it to an add-in: blank is "", an error is its text. */
export function hostValue(value: BookValue): string | number | boolean {
  if (value === null) return "";
  return isErrorValue(value) ? value.error : value;
}

export function valueType(value: BookValue): string {
  if (value === null) return "Empty";
  if (isErrorValue(value)) return "Error";
  return { string: "String", number: "Double", boolean: "Boolean" }[
    typeof value as "string" | "number" | "boolean"
  ];
}

/** Formulas where there are some, else the constants, as Excel's `formulas`. */
export const hostFormulas = ({ values, formulas }: GridBlock): (string | number | boolean)[][] =>
  values.map((row, r) => row.map((value, c) => formulas[r]?.[c] || hostValue(value)));

/** What a text becomes when it is put into a cell, as if it were typed. */
function typed(text: string): GridInput {
  if (text.startsWith("'")) return text.slice(1);
  if (/^\s*[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?\s*$/i.test(text)) return Number(text);
  if (/^(true|false)$/i.test(text)) return text.toLowerCase() === "true";
  return text;
}

function inputOf(value: unknown): GridInput {
  if (value === null || value === undefined) return null; // Excel leaves such a cell alone
  if (typeof value === "string") return typed(value);
  if (typeof value === "boolean") return value;
  if (typeof value === "number" && Number.isFinite(value)) return value;
  throw new HostError("InvalidArgument", `A cell cannot hold ${JSON.stringify(value)}.`);
}

/** Rows of exactly the range's size, or one value for all of it; anything else is refused as in Excel. */
export function sized<T>(
  given: unknown,
  rows: number,
  columns: number,
  convert: (value: unknown) => T,
): T[][] {
  if (!Array.isArray(given)) {
    return Array.from({ length: rows }, () => new Array<T>(columns).fill(convert(given)));
  }
  const fits =
    given.length === rows &&
    given.every((row: unknown) => Array.isArray(row) && row.length === columns);
  if (!fits) {
    throw new HostError(
      "InvalidArgument",
      `The number of rows or columns in the input array doesn't match the range of ${rows} × ${columns} cells.`,
    );
  }
  return (given as unknown[][]).map((row) => row.map(convert));
}

export const inputs = (given: unknown, rows: number, columns: number): GridInput[][] =>
  sized(given, rows, columns, inputOf);

export const formats = (given: unknown, rows: number, columns: number): string[][] =>
  sized(given, rows, columns, String);
