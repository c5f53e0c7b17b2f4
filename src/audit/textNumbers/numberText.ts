import { amountText, type AmountText } from "../recipes/amounts/amountText";

/** "007" and "0664 123" are codes, "20241126" is a date or an article, "2024" a year. */
const CODE = /^[-+]?0\d|^\d{7,}$|^(19|20)\d\d$|\d \d{1,2}( |$)|^\d+(\.\d+){2,}$/;

/** A plain number that is a text; null for words, codes and amounts with a unit. */
export function numberText(value: unknown): AmountText | null {
  if (typeof value !== "string" || !/^\s*[-+−]?\d/.test(value)) return null;
  const read = CODE.test(value.trim()) ? null : amountText(value);
  return read === null || read.unit !== null ? null : read;
}

/** "1,200" may be a thousand: then a person decides. */
export const isPlainText = (text: string): boolean => !/[.,]\d{3}\s*$/.test(text.trim());
