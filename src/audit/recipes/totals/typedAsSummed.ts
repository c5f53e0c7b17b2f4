import { textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import type { Place, RecipeBlock } from "../recipeBlock";
import { isAboutSum } from "./isAboutSum";
import { sumOfLine } from "./sumOfLine";
import type { FoundTotal } from "./summedApart";

/** How a sum stands to its list: rows above the first amount or below the last, columns beside them, between which words. */
interface Standing {
  readonly isAbove: boolean;
  readonly rows: number;
  readonly columns: number;
  readonly words: string;
}

const wordsBeside = ({ sheet }: FinderContext, { row, column }: Place): string =>
  [column - 1, column + 1].map((at) => textAt(sheet, row, at)).join("|");

/** The ways in which sums stand apart from their lists, each once. */
function standingsOf(context: FinderContext, summed: readonly FoundTotal[]): Iterable<Standing> {
  const standings = new Map<string, Standing>();
  for (const { block, total } of summed) {
    const [first, last] = [block.names[0]?.row ?? 0, block.names.at(-1)?.row ?? 0];
    const isAbove = total.row < first;
    const words = wordsBeside(context, total);
    if (words === "|" || (!isAbove && total.row <= last)) continue;
    const rows = total.row - (isAbove ? first : last);
    const one = { isAbove, rows, columns: total.column - total.line, words };
    standings.set(JSON.stringify(one), one);
  }
  return standings.values();
}

/** The typed total that stands to a list of one recipe as a sum does to its own. */
function typedAt(
  context: FinderContext,
  block: RecipeBlock,
  { isAbove, rows, columns, words }: Standing,
): FoundTotal | null {
  const [recipe, ...more] = block.recipes;
  const end = isAbove ? block.names[0] : block.names.at(-1);
  if (recipe === undefined || end === undefined || more.length > 0) return null;
  const { line } = recipe;
  const place = { row: end.row + rows, column: line + columns };
  if (place.row < 0 || place.column < 0) return null;
  const cell = context.sheet.cellAt(place.row, place.column);
  if (typeof cell?.value !== "number" || cell.formula !== undefined) return null;
  const isTotal = isAboutSum(cell.value, sumOfLine(block, line));
  return isTotal && wordsBeside(context, place) === words
    ? { block, total: { ...place, line } }
    : null;
}

/**
 * Typed totals that stand to their lists, and to the same words, as the sum of another list does to its own:
 * "855 | all in" above one, =SUM above the other.
 */
export function typedAsSummed(
  context: FinderContext,
  lists: readonly RecipeBlock[],
  summed: readonly FoundTotal[],
): FoundTotal[] {
  const isSummed = new Set(summed.map(({ block }) => block));
  const left = lists.filter((block) => block.totals.length === 0 && !isSummed.has(block));
  const standings = left.length === 0 ? [] : [...standingsOf(context, summed)];
  return left.flatMap((block) => {
    const found = standings.map((standing) => typedAt(context, block, standing));
    return found.find((one) => one !== null) ?? [];
  });
}
