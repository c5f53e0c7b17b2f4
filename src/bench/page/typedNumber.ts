import type { Language } from "./createGrid";

const LIKE_A_NUMBER = /^([€$£¥]?\s*[-+]?[\d.,]*\d[\d.,]*\s*[%€$£¥]?)$/;
const ENGLISH = /^[^\d.,]*(?:\d+|\d{1,3}(?:,\d{3})+)?(?:\.\d*)?[^\d.,]*$/;
const GERMAN = /^[^\d.,]*(?:\d+|\d{1,3}(?:\.\d{3})+)?(?:,\d*)?[^\d.,]*$/;

const swapped = (text: string): string =>
  text.replace(/[.,]/g, (mark) => (mark === "," ? "." : ","));

/**
 * A number as it was typed in a language, in the English notation that the grid reads; null when it looks like
 * a number and is none: the grid alone would take 12,5 for 125.
 */
export function typedNumber(text: string, language: Language): string | null {
  if (!LIKE_A_NUMBER.test(text.trim())) return text;
  if (language === "de") return GERMAN.test(text.trim()) ? swapped(text) : null;
  return ENGLISH.test(text.trim()) ? text : null;
}

/** A number as it is written in a language, to twelve digits. */
export function shownNumber(value: number, language: Language): string {
  const text = String(Number(value.toPrecision(12)));
  return language === "de" ? text.replace(".", ",") : text;
}
