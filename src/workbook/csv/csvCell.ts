import type { ShortCell } from "../sheetFromRows";
import type { DecimalMark } from "./decimalMark";

const SIGN = "([-+−]?)";
const SPACES = " \\u00a0\\u202f'’";

const pattern = (group: string, mark: string): RegExp =>
  new RegExp(
    `^${SIGN}(\\d{1,3}(?:[${group}${SPACES}]\\d{3})+|\\d+)(?:${mark}(\\d+))?(e[-+]?\\d{1,3})?(\\s?%)?$`,
    "i",
  );

const PATTERNS: Readonly<Record<DecimalMark, RegExp>> = {
  ",": pattern(".", ","),
  ".": pattern(",", "\\."),
};

/** A field as a cell: a number where it is one by the file's decimal mark, "12 %" as 0.12, else its text. */
export function csvCell(field: string, mark: DecimalMark): ShortCell {
  const text = field.trim();
  const [matched, sign = "", whole = "", decimals = "", exponent = "", percent] =
    PATTERNS[mark].exec(text) ?? [];
  if (matched === undefined) return field;
  const digits = whole.replace(/\D/g, "");
  const size = Number(`${digits}.${decimals === "" ? "0" : decimals}${exponent}`);
  if (!Number.isFinite(size)) return field;
  const value = sign === "-" || sign === "−" ? -size : size;
  return percent === undefined ? value : { value: value / 100, format: "0.00%" };
}
