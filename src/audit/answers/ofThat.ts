import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import type { Place } from "../recipes/recipeBlock";
import { partOf } from "./partLabel";

const GERMAN = /^(davon|hiervon)\b.*\b(eis|gefroren|ausgefroren)\b/i;
const ENGLISH = /^(of|out of) (that|it|which|this)\b.*\b(ice|frozen)\b/i;

/** "Water in 100 g", below it "of that frozen": the share of ice with the words above that say of what; as it is where they do not. */
export function ofThat(sheet: WorkbookSheet, { row, column }: Place, words: string): string {
  const [isGerman, isEnglish] = [GERMAN.test(words), ENGLISH.test(words)];
  if (!isGerman && !isEnglish) return words;
  if (partOf(textAt(sheet, row - 1, column))?.part !== "water") return words;
  return isGerman ? `vom Wasser gefroren (${words})` : `of the water frozen (${words})`;
}
