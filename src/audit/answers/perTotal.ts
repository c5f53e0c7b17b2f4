import { textAt } from "../recipes/cells";
import { plainWords } from "../recipes/headings/plainWords";
import type { LabelledAnswer } from "./labelledAnswer";

/** "Wasser je Wanne g", "Sugar per vat (g)": of all that is in it, where the total of the amounts is called so. */
const FOR_EACH = /(?<=^\p{L}+) (?:je|pro|per|for each|in each|a) (\p{L}{3,})(?=[ ,]|$)/u;

/** Plain words without what they are for each of. */
export const withoutEach = (plain: string): string => plain.replace(FOR_EACH, "");

/** Whether a label says for each of what the total of its list is called. */
export function isPerTotal({ label, block }: LabelledAnswer): boolean {
  const { sheet, layout, names, totals } = block;
  const [, each] = FOR_EACH.exec(plainWords(label)) ?? [];
  const column = names[0]?.column;
  if (each === undefined || column === undefined || layout !== "down") return false;
  const wordsIn = (row: number) => plainWords(textAt(sheet, row, column)).split(/\P{L}+/u);
  return totals.some((row) => wordsIn(row).includes(each));
}
