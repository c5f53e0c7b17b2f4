import { unitFromWord, type AmountUnit } from "./unit";

/** A number someone typed as text. */
export interface AmountText {
  readonly number: number;
  readonly unit: AmountUnit | null;
  /** Why the sheet does not see a number. */
  readonly why: "decimal comma" | "unit in the cell" | "stored as text";
}

const TEXT_NUMBER = /^([-+−]?)(\d[\d\s'’.,]*)\s*([^\d\s].{0,12})?$/;

/** Reads the digits: with both marks the last one is the decimal mark; a lone comma is one. */
function readDigits(digits: string): number | null {
  const tight = digits.replace(/[\s'’]/g, "");
  const comma = tight.lastIndexOf(",");
  const point = tight.lastIndexOf(".");
  const decimal = comma > point ? "," : ".";
  const thousands = decimal === "," ? "." : ",";
  const plain = tight.replaceAll(thousands, "").replace(decimal, ".");
  // "3.5." is a day in May.
  return /^\d+(\.\d*)?$/.test(plain) ? Number(plain) : null;
}

/** The number a text shows ("12,5", "12.5 g", "1 200"), or null when it is a word or a date. */
export function amountText(text: string): AmountText | null {
  const [, sign, digits, word] = TEXT_NUMBER.exec(text.trim().replaceAll("\u00a0", " ")) ?? [];
  if (digits === undefined) return null;
  const size = readDigits(digits);
  const unit = word === undefined ? null : unitFromWord(word);
  if (size === null || (word !== undefined && unit === null)) return null;
  const why =
    unit !== null ? "unit in the cell" : digits.includes(",") ? "decimal comma" : "stored as text";
  return { number: sign === "-" || sign === "−" ? -size : size, unit, why };
}
