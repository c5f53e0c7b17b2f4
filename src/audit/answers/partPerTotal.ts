import { textAt } from "../recipes/cells";
import { plainWords } from "../recipes/headings/plainWords";
import type { LabelledAnswer } from "./labelledAnswer";
import type { Part } from "./partLabel";
import { plainPartOf } from "./plainPart";

/** "Wasser je Wanne g", "Sugar per vat (g)". */
const FOR_EACH = /(?<=^\p{L}+) (?:je|pro|per|for each|in each|a) (\p{L}{3,})(?=[ ,]|$)/u;

/** The part that plain words name for each of something; null when they name none. */
export const partOfEach = (label: string): Part | null =>
  FOR_EACH.test(plainWords(label)) ? plainPartOf(plainWords(label).replace(FOR_EACH, "")) : null;

/** The part that a label names for each of what the total of its list is called: of all that is in the list. */
export function partPerTotal({ label, block }: LabelledAnswer): Part | null {
  const { sheet, layout, names, totals } = block;
  const [, each] = FOR_EACH.exec(plainWords(label)) ?? [];
  const column = names[0]?.column;
  if (each === undefined || column === undefined || layout !== "down") return null;
  const wordsIn = (row: number) => plainWords(textAt(sheet, row, column)).split(/\P{L}+/u);
  return totals.some((row) => wordsIn(row).includes(each)) ? partOfEach(label) : null;
}
