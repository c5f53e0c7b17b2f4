import { withLines, type MadeRecipe } from "../recipes";
import type { Language, StockLine } from "../stock";

export interface Group {
  readonly title: string;
  readonly lines: readonly StockLine[];
}

const DAIRY = /milk|cream|yogurt|lactose/;
const SUGARS = /sugar|sucrose|dextrose|syrup|honey|fructose|erythritol|mannitol/;

const TITLES: Readonly<Record<Language, readonly string[]>> = {
  en: ["Dairy", "Sugars", "Fruit and the rest"],
  de: ["Milch", "Zucker", "Frucht und Übriges"],
};

const kindOf = ({ en }: StockLine): number => {
  if (SUGARS.test(en)) return 1;
  return DAIRY.test(en) && !en.includes("coconut") ? 0 : 2;
};

/** The lines by what they are; groups without a line are left out. */
export const grouped = ({ lines, language }: MadeRecipe): Group[] =>
  TITLES[language]
    .map((title, kind) => ({ title, lines: lines.filter((each) => kindOf(each) === kind) }))
    .filter((group) => group.lines.length > 0);

export const inGroups = (made: MadeRecipe, groups: readonly Group[]): MadeRecipe =>
  withLines(
    made,
    groups.flatMap(({ lines }) => lines),
  );
