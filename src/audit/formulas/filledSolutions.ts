import type { CellRange } from "../../workbook/model";
import { rangeLines } from "../recipes/corrections/rangeLines";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { filledLine, type FilledLine } from "./filledLines";

const LEAST_SOLUTIONS = 3;
/** Solutions beside each other that are still compared. */
const MOST_SOLUTIONS = 60;

const isSame = (one: CellRange, other: CellRange): boolean =>
  one.top === other.top &&
  one.bottom === other.bottom &&
  one.left === other.left &&
  one.right === other.right;

/** Worked examples that share their labels: their values stand in columns beside each other. */
function setsOf(blocks: readonly RecipeBlock[]): readonly (readonly RecipeBlock[])[] {
  const sets: RecipeBlock[][] = [];
  for (const block of blocks) {
    if (block.answers === undefined) continue;
    const last = sets.at(-1);
    const [first] = last ?? [];
    const goesOn = first?.sheet === block.sheet && isSame(first.range, block.range);
    if (goesOn) last?.push(block);
    else sets.push([block]);
  }
  return sets;
}

/** The rows of worked examples in columns that work out the same of each: moles, molality, freezing point. */
export function filledSolutions(blocks: readonly RecipeBlock[]): readonly FilledLine[] {
  return setsOf(blocks).flatMap((set) => {
    const [first] = set;
    const lines = set.flatMap(({ recipes }) => recipes.map(({ line }) => line));
    const columns = [...new Set(lines)].sort((one, other) => one - other);
    if (first === undefined || columns.length < LEAST_SOLUTIONS) return [];
    if (columns.length > MOST_SOLUTIONS) return [];
    const { sheet, range } = first;
    return rangeLines(range.top, range.bottom).flatMap((row) => {
      const placeAt = (at: number) => ({ row, column: columns[at] ?? 0 });
      return filledLine(sheet, { length: columns.length, placeAt }) ?? [];
    });
  });
}
