import { textAt } from "../recipes/cells";
import { plainWords } from "../recipes/headings/plainWords";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { isAllergenList } from "./allergenList";

/** "Milk in the inner bag", "Ei ist im Boden". */
const IN_LIST =
  /^\W*(.+?)(?: is| are| ist| sind)? (?:in|im)(?: the| our| der| dem| unserem| unserer)? ([\p{L}][\p{L} -]{2,30})$/iu;
const IN_BRACKETS = /\s*\([^)]*\)/g;

/** What a list is called in the heading over its names and beside its totals. */
const calledBy = ({ sheet, headerRow, names, totals, layout }: RecipeBlock): readonly string[] =>
  layout === "across"
    ? []
    : [headerRow ?? -1, ...totals].map((row) =>
        plainWords(textAt(sheet, row, names[0]?.column ?? 0).replaceAll(IN_BRACKETS, "")),
      );

/** Whether a text says that allergens and nothing else are in one of some lists, by what that is called. */
export const saysInList = (text: string, blocks: readonly RecipeBlock[]): boolean =>
  text.split(/[.;!]/).some((sentence) => {
    const [, said, list] = IN_LIST.exec(sentence.trim()) ?? [];
    if (said === undefined || list === undefined || !isAllergenList(said)) return false;
    return blocks.some((block) => calledBy(block).includes(plainWords(list)));
  });
