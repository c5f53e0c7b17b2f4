import { partOf } from "../../answers/partLabel";
import { isBlank, looksNumeric, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import { headerRole } from "../headings/headerRole";
import { isAboutSum } from "./isAboutSum";
import { sumOfLine } from "./sumOfLine";
import type { RecipeBlock } from "../recipeBlock";
import type { FoundTotal } from "./summedApart";
import { sheetTexts } from "../sheetTexts";

const REACH = 3;
/** The number left of a label that nothing stands right of, in a column of amounts that stand left of their names. */
function numberBefore(
  { sheet }: FinderContext,
  row: number,
  label: number,
  lines: ReadonlySet<number>,
) {
  const isLast = isBlank(sheet, row, label + 1) && lines.has(label - 1);
  return isLast && looksNumeric(sheet, row, label - 1) ? [label - 1] : [];
}

/** The numbers right of a label: the first near it, and those under the amounts of lists. */
function numbersOf(
  { sheet }: FinderContext,
  row: number,
  label: number,
  lines: ReadonlySet<number>,
) {
  const columns: number[] = [];
  for (let column = label + 1; column < sheet.columnCount; column += 1) {
    const isNear = columns.length === 0 && column <= label + REACH;
    const value = sheet.cellAt(row, column)?.value;
    if (typeof value === "number" && (isNear || lines.has(column))) columns.push(column);
    if (typeof value === "string" && value.length > 3) break;
  }
  return columns;
}

/** The line of amounts that a total belongs to: the one above or below it, else the only one of the sheet. */
function lineOf(
  lists: readonly RecipeBlock[],
  row: number,
  column: number,
): { readonly block: RecipeBlock; readonly line: number } | null {
  const lines = lists.flatMap((block) => block.recipes.map(({ line }) => ({ block, line })));
  const apart = ({ range: { top, bottom } }: RecipeBlock) => Math.max(top - row, row - bottom);
  const same = lines.filter(({ line }) => line === column);
  const [nearest] = same.sort((one, other) => apart(one.block) - apart(other.block));
  return nearest ?? (lines.length === 1 ? (lines[0] ?? null) : null);
}

/** The total in a cell, where it is about the sum of a list that it stands apart from. */
function totalAt(
  { sheet }: FinderContext,
  lists: readonly RecipeBlock[],
  row: number,
  column: number,
): FoundTotal | null {
  const cell = sheet.cellAt(row, column);
  const owner = lineOf(lists, row, column);
  if (owner === null || typeof cell?.value !== "number" || cell.formula !== undefined) return null;
  const { block, line } = owner;
  const { top, bottom } = block.range;
  const isInside = top <= row && row <= bottom && column === line;
  const isTotal = !isInside && isAboutSum(cell.value, sumOfLine(block, line));
  return isTotal ? { block, total: { row, column, line } } : null;
}

/** The cells of the names and the words of totals of lists. */
const wordsOfLists = (lists: readonly RecipeBlock[]): ReadonlySet<string> =>
  new Set(
    lists.flatMap(({ names, totals }) =>
      [...names.map(({ row }) => row), ...totals].map((row) => `${row},${names[0]?.column ?? 0}`),
    ),
  );

/**
 * Typed totals that stand apart from their lists: by their words, or by those of a sum of another list, and because
 * they are about the sum.
 */
export function typedApart(
  context: FinderContext,
  lists: readonly RecipeBlock[],
  words: ReadonlySet<string>,
): FoundTotal[] {
  const { sheet } = context;
  const lines = new Set(lists.flatMap(({ recipes }) => recipes.map(({ line }) => line)));
  const listed = wordsOfLists(lists);
  const saysTotal = (label: string): boolean =>
    (headerRole(label) === "total" || words.has(label)) && partOf(label) === null;
  return [...sheetTexts(sheet).columnsByRow].flatMap(([row, columns]) =>
    columns
      .filter((column) => !listed.has(`${row},${column}`))
      .filter((column) => saysTotal(textAt(sheet, row, column)))
      .flatMap((label) => {
        const right = numbersOf(context, row, label, lines);
        return right.length > 0 ? right : numberBefore(context, row, label, lines);
      })
      .flatMap((column) => totalAt(context, lists, row, column) ?? []),
  );
}
