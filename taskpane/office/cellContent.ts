/** Texts that a spreadsheet could take for a number, a date, a truth value or a formula. */
const COULD_BE_MORE = /\d|^\s*[=+\-@'#]|^(true|false)$/i;

/** A text as it has to be written so that it stays a text; a formula here too is only its letters. */
export const asText = (text: string): string => (COULD_BE_MORE.test(text) ? `'${text}` : text);

/** What was read from a cell, as it has to be written to stand there again. */
export function asReadAgain(content: string | number | boolean): string | number {
  if (typeof content === "boolean") return content ? "=TRUE" : "=FALSE";
  return asInput(content);
}

/** A cell's new content as it is written: "=…" is a formula, any other text stays a text. */
export const asInput = (content: string | number): string | number =>
  typeof content === "number" || content.startsWith("=") ? content : asText(content);

/** Excel writes functions in capitals and may drop spaces: only what is in quotation marks counts as it is. */
const formulaWords = (formula: string): string =>
  formula
    .split(/("[^"]*"|'[^']*')/)
    .map((part, at) => (at % 2 === 1 ? part : part.replace(/\s/g, "").toUpperCase()))
    .join("");

/** Whether a cell still holds what it was shown to hold. */
export const stillHolds = (now: unknown, shown: string | number | boolean): boolean =>
  String(now) === String(shown) ||
  (typeof now === "string" &&
    typeof shown === "string" &&
    now.startsWith("=") &&
    formulaWords(now) === formulaWords(shown));

/** Whether a cell took what was written: a number that became a text has not been taken. */
export const hasTaken = (now: unknown, written: string | number): boolean =>
  typeof now === typeof written &&
  (typeof now === "number" && typeof written === "number"
    ? Math.abs(now - written) <= 1e-14 * Math.abs(written) // Excel keeps 15 digits
    : stillHolds(now, written));
