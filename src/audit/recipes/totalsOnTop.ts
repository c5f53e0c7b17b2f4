import { referencesOf } from "../../workbook/references";
import { textAt } from "./cells";
import type { RecipeBlock } from "./recipeBlock";

/** A total stands at most this far above the heading of its list, among what is said of the batch. */
const REACH = 8;
const SUM = /^\s*(SUM|SUBTOTAL|AGGREGATE)\s*\(/i;

/** Whether a cell adds up most of the amounts below it. */
function isSumOfList({ sheet, names }: RecipeBlock, row: number, column: number): boolean {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  if (!SUM.test(formula)) return false;
  const ranges = referencesOf(formula).filter((read) => read.sheet === null);
  const read = names.filter((name) =>
    ranges.some(
      ({ range }) =>
        range.left === column &&
        range.right === column &&
        name.row >= range.top &&
        name.row <= range.bottom,
    ),
  );
  return read.length * 2 >= names.length;
}

const rowsAbove = ({ range: { top } }: RecipeBlock): number[] =>
  Array.from({ length: Math.min(REACH, top) }, (_, at) => top - 1 - at);

const labelOf = ({ sheet, names }: RecipeBlock, row: number): string =>
  textAt(sheet, row, names[0]?.column ?? 0);

const isList = ({ layout, totals, totalsBeside }: RecipeBlock): boolean =>
  layout === "down" && totals.length === 0 && totalsBeside === undefined;

/**
 * Lists with the totals that stand above their headings: sums of the amounts, and what is typed in the same row
 * under the same words where a list beside has such a sum.
 */
export function withTotalsOnTop(blocks: readonly RecipeBlock[]): RecipeBlock[] {
  const labels = new Map<number, string>();
  const summed = blocks.map((block) => {
    if (!isList(block)) return block;
    const totals = rowsAbove(block).filter((row) =>
      block.recipes.some(({ line }) => isSumOfList(block, row, line)),
    );
    for (const row of totals) labels.set(row, labelOf(block, row));
    return totals.length === 0 ? block : { ...block, totals };
  });
  return summed.map((block) => {
    if (!isList(block)) return block;
    const isTyped = (row: number) =>
      block.recipes.some(({ line }) => typeof block.sheet.cellAt(row, line)?.value === "number");
    const totals = rowsAbove(block).filter((row) => {
      const label = labelOf(block, row);
      return label !== "" && labels.get(row) === label && isTyped(row);
    });
    return totals.length === 0 ? block : { ...block, totals };
  });
}
