import type { AuditContext } from "../context";
import { textAt } from "../recipes/cells";
import { unitFromWord } from "../recipes/amounts/unit";
import type { LabelledLine } from "./labelledLine";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";

/** What stands for the drink of one row (or column) of a table. */
export interface Drink {
  readonly name: string;
  readonly own: RecipeBlock["ownIngredients"];
  /** Where it is an ingredient of a recipe. */
  readonly block: RecipeBlock | null;
  readonly ingredient: RecipeName | null;
}

const REACH = 12;

/** The words nearest to a place along its row or column, units left out. */
function wordsNear({ sheet, at, isDown }: LabelledLine, index: number): string {
  const base = isDown ? at.column : at.row;
  for (let step = 1; step <= REACH; step += 1) {
    for (const other of [base - step, base + step]) {
      const words = isDown ? textAt(sheet, index, other) : textAt(sheet, other, index);
      const isName = /\p{L}{3}/u.test(words.replace(/% ?vol\b/i, "")) && words.length < 60;
      if (isName && unitFromWord(words) === null) return words;
    }
  }
  return "";
}

/** The drink that a number of a line is about: an ingredient of a recipe, or the words beside. */
export function drinkAt({ blocks }: AuditContext, line: LabelledLine, index: number): Drink {
  for (const block of blocks) {
    if (block.sheet !== line.sheet) continue;
    const [from, to] = line.isDown
      ? [block.range.left - REACH, block.range.right + REACH]
      : [block.range.top - REACH, block.range.bottom + REACH];
    const along = line.isDown ? line.at.column : line.at.row;
    const ingredient = block.names.find((name) => (line.isDown ? name.row : name.column) === index);
    const isOfThem = line.isDown === (block.layout === "down") && along >= from && along <= to;
    if (ingredient !== undefined && isOfThem)
      return { name: ingredient.item, own: block.ownIngredients, block, ingredient };
  }
  return { name: wordsNear(line, index), own: null, block: null, ingredient: null };
}
