import type { FinderContext } from "../finderContext";
import { isOneRow, type RecipeBlock, type TotalApart } from "../recipeBlock";
import { labelOf, summedApart } from "./summedApart";
import { withTotalRowBelow } from "./totalRowBelow";
import { typedAmongSums } from "./typedAmongSums";
import { typedApart } from "./typedApart";
import { typedAsSummed } from "./typedAsSummed";

const isList = (block: RecipeBlock): boolean =>
  block.layout === "down" &&
  block.answers === undefined &&
  block.names.every(({ amountAt }) => amountAt === undefined) &&
  !isOneRow(block);

/**
 * Gives lists the totals that stand apart from them: far below, above, beside, or on one line for several lists.
 * A formula tells by what it adds up, a typed number by its words.
 */
export function withTotalsApart(
  context: FinderContext,
  given: readonly RecipeBlock[],
): RecipeBlock[] {
  const below = given.map((block) => (isList(block) ? withTotalRowBelow(context, block) : block));
  const lists = below.filter(isList);
  if (lists.length === 0) return below;
  const summed = summedApart(context, lists);
  const words = new Set(summed.map(({ total }) => labelOf(context, total)));
  const found = [
    ...summed,
    ...typedApart(context, lists, words),
    ...typedAmongSums(context, lists, summed),
    ...typedAsSummed(context, lists, summed),
  ];
  const byBlock = new Map<RecipeBlock, TotalApart[]>();
  for (const { block, total } of found) {
    const had = byBlock.get(block) ?? block.totalsApart ?? [];
    const isKnown = had.some(({ row, column }) => row === total.row && column === total.column);
    if (!isKnown) byBlock.set(block, [...had, total]);
  }
  return below.map((block) => {
    const totalsApart = byBlock.get(block);
    return totalsApart === undefined ? block : { ...block, totalsApart };
  });
}
