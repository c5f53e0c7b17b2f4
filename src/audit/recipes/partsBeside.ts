import { textAt } from "./cells";
import { plainWords } from "./headings/plainWords";
import type { RecipeBlock, RecipeName } from "./recipeBlock";

/** A part of a list by its name: "filling", "base". */
export interface Part {
  readonly words: string;
  readonly names: readonly RecipeName[];
}

/** The words that say of a line to which part it belongs stand at most this far left of its name. */
const REACH_LEFT = 3;
/** Longer lists are ledgers. */
const LONGEST = 100;

/** The parts that a column gives to the lines of a list; a blank goes with the line above. */
function partsIn({ sheet, names }: RecipeBlock, column: number): Part[] {
  const parts = new Map<string, RecipeName[]>();
  let words = "";
  for (const name of names) {
    words = plainWords(textAt(sheet, name.row, column)) || words;
    parts.set(words, [...(parts.get(words) ?? []), name]);
  }
  return [...parts].map(([said, lines]) => ({ words: said, names: lines }));
}

/** The parts that columns left of a list's names give to its lines. */
export function partsBeside(block: RecipeBlock): readonly Part[] {
  const { names, layout } = block;
  if (layout !== "down" || names.length > LONGEST) return [];
  const first = names[0]?.column ?? 0;
  const left = Array.from({ length: REACH_LEFT }, (_, step) => first - 1 - step);
  return left
    .filter((column) => column >= 0)
    .flatMap((column) => partsIn(block, column))
    .filter((part) => /\p{L}{3}/u.test(part.words) && part.names.length < names.length);
}
