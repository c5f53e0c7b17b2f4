import { remembered } from "../../../foundation/remembered";

/** Most texts are clean: they are not written anew. */
const NEEDS_CLEANING = /\s{2}|[^\S ]|^\s|[\s:*†‡]$|:\s?[([]/;

const TEXTS_KEPT = 1000;

/**
 * The words of a cell in the one form in which the audit reads them: blanks and line breaks as one space each, no
 * colon at the end or before a unit in brackets, no mark of a note below. Letters stay as they are typed.
 */
export const cleanText = remembered(TEXTS_KEPT, (text) => {
  if (!NEEDS_CLEANING.test(text)) return text;
  return text
    .replace(/\s+/g, " ")
    .trim()
    .replace(/(?<=[^\s*†‡]) ?[*†‡]{1,3}$/, "")
    .replace(/ ?:$/, "")
    .replace(/ ?: ?(?=[([][^()[\]]+[)\]]$)/, " ")
    .trim();
});
