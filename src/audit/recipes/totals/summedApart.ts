import { eachFormula } from "../../../workbook/eachFormula";
import type { CellRange } from "../../../workbook/model";
import { referencesOf } from "../../../workbook/references";
import { partOf } from "../../answers/partLabel";
import { isBlank, looksNumeric, textAt } from "../cells";
import type { FinderContext } from "../finderContext";
import { headerRole } from "../headings/headerRole";
import { isAddedSoFar } from "./runningSums";
import type { Place, RecipeBlock, TotalApart } from "../recipeBlock";

const PLAIN_SUM = /^\s*(SUM|SUBTOTAL|AGGREGATE)\s*\([$A-Z0-9:,;\s]+\)\s*$/i;
/** No recipe is longer. */
const LONGEST = 400;
/** "Without fruit", "ohne Obst": a sum that leaves something out on purpose. */
const OF_PART =
  /\b(without|except|before|excluding|excl|less|only|base|dry|liquids?|wet|fruits?|ohne|vor|nur|basis|flüssig\w*|trocken\w*|obst|früchte|frucht)\b|grundm/i;

interface Line {
  readonly block: RecipeBlock;
  readonly line: number;
}

const listedTotals = (lists: readonly RecipeBlock[]): ReadonlySet<string> =>
  new Set(
    lists.flatMap(({ recipes, totals }) =>
      recipes.flatMap(({ line }) => totals.map((row) => keyOf(row, line))),
    ),
  );

interface Sum extends Place {
  readonly ranges: readonly CellRange[];
}

/** The lines of the lists on a sheet by the places of their amounts. */
type Amounts = ReadonlyMap<string, Line>;

const keyOf = (row: number, column: number): string => `${row},${column}`;

function amountsOf(lists: readonly RecipeBlock[]): Amounts {
  const amounts = new Map<string, Line>();
  for (const block of lists) {
    for (const { line } of block.recipes) {
      for (const { row } of block.names) {
        if (!isBlank(block.sheet, row, line)) amounts.set(keyOf(row, line), { block, line });
      }
    }
  }
  return amounts;
}

/** Plain sums on the sheet that are no amounts themselves, nor added up so far line by line. */
function sumsOn({ sheet }: FinderContext, amounts: Amounts): ReadonlyMap<string, Sum> {
  const sums = new Map<string, Sum>();
  eachFormula(sheet, (row, column, { formula, value }) => {
    const isSum = formula !== undefined && typeof value === "number" && PLAIN_SUM.test(formula);
    if (!isSum || amounts.has(keyOf(row, column)) || isAddedSoFar(sheet, row, column)) return;
    const ranges = referencesOf(formula).map(({ range }) => range);
    const isOfColumn = ({ top, bottom, left, right }: CellRange) =>
      left === right && bottom - top < LONGEST;
    if (ranges.length > 0 && ranges.every(isOfColumn))
      sums.set(keyOf(row, column), { row, column, ranges });
  });
  return sums;
}

/** The one line of amounts that a sum reads, and how many of them; null when it reads other numbers, too. */
function readBy(
  { sheet }: FinderContext,
  { ranges }: Sum,
  amounts: Amounts,
  isTotal: (key: string) => boolean,
): (Line & { readonly count: number }) | null {
  let read: Line | null = null;
  let count = 0;
  for (const { top, bottom, left } of ranges) {
    for (let row = top; row <= bottom; row += 1) {
      const line = amounts.get(keyOf(row, left));
      if (line === undefined && (!looksNumeric(sheet, row, left) || isTotal(keyOf(row, left))))
        continue;
      if (
        line === undefined ||
        (read !== null && (read.block !== line.block || read.line !== line.line))
      )
        return null;
      read = line;
      count += 1;
    }
  }
  return read === null ? null : { ...read, count };
}

/** The words nearest to the left of a number, else those above it. */
export const labelOf = ({ sheet }: FinderContext, { row, column }: Place): string =>
  [1, 2, 3].map((step) => textAt(sheet, row, column - step)).find((text) => text !== "") ??
  textAt(sheet, row - 1, column);

/** The first words above a number in its column, with nothing but numbers between. */
function headingOf({ sheet }: FinderContext, { row, column }: Place): string {
  let at = row - 1;
  while (row - at < LONGEST && looksNumeric(sheet, at, column)) at -= 1;
  return textAt(sheet, at, column);
}

/** Whether a sum that leaves an amount out is still meant to be the total. */
function isMeantAsTotal(context: FinderContext, label: string, left: number, of: number): boolean {
  const role = headerRole(label);
  const isOther = role !== null && role !== "total" && role !== "amount";
  if (isOther || partOf(label) !== null || OF_PART.test(label)) return false;
  if (context.check(label).kind !== "unknown") return false;
  return role === null ? left === 1 && of > 3 : left * 2 <= of;
}

/** A total with the list that it belongs to. */
export interface FoundTotal {
  readonly block: RecipeBlock;
  readonly total: TotalApart;
}

/** The sums of a sheet's lists that stand apart from them. */
export function summedApart(context: FinderContext, lists: readonly RecipeBlock[]): FoundTotal[] {
  const amounts = amountsOf(lists);
  const listed = listedTotals(lists);
  const sums = sumsOn(context, amounts);
  const isTotal = (key: string) => listed.has(key) || sums.has(key);
  const read = [...sums].flatMap(([key, sum]) => {
    const line = listed.has(key) ? null : readBy(context, sum, amounts, isTotal);
    if (line === null) return [];
    const { block, line: at, count } = line;
    const filled = block.names.filter(({ row }) => amounts.has(keyOf(row, at))).length;
    return {
      block,
      total: { row: sum.row, column: sum.column, line: at },
      left: filled - count,
      filled,
    };
  });
  const whole = read.filter(({ left }) => left === 0);
  const hasWhole = ({ block, total }: FoundTotal) =>
    whole.some((other) => other.block === block && other.total.line === total.line);
  const mayLack = read.filter((one) => {
    const { block, total, left, filled } = one;
    const isOnly = left > 0 && block.totals.length === 0 && !hasWhole(one);
    if (!isOnly) return false;
    const isHeaded = headerRole(headingOf(context, total)) === "total" && left * 2 <= filled;
    return isHeaded || isMeantAsTotal(context, labelOf(context, total), left, filled);
  });
  return [...whole, ...mayLack].map(({ block, total }) => ({ block, total }));
}
