import { eachFormula } from "../../workbook/eachFormula";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import { contains, overlaps } from "../../workbook/references";
import type { AuditContext } from "../context";
import { rangeOfAll } from "../formulas/sumFormulas";
import { sumOfRange } from "../formulas/sumOfRange";
import type { Place, RecipeBlock } from "../recipes/recipeBlock";
import type { FilledTotal } from "./filledTotals";
import type { Summand } from "./totalledLines";

const MOST_SUMMANDS = 400;

interface ColumnSum extends Place {
  readonly formula: string;
  readonly range: CellRange;
}

/** The sums of a sheet over what stands above them in their column, by their row. */
function columnSums(sheet: WorkbookSheet): ReadonlyMap<number, readonly ColumnSum[]> {
  const byRow = new Map<number, ColumnSum[]>();
  eachFormula(sheet, (row, column, cell) => {
    const range = sumOfRange(cell);
    const { formula } = cell;
    if (formula === undefined || range === null) return;
    if (range.left !== column || range.right !== column || range.bottom >= row) return;
    const sums = byRow.get(row) ?? [];
    byRow.set(row, sums);
    sums.push({ row, column, formula, range });
  });
  return byRow;
}

/** The numbers in some rows of a column; null where one of the cells holds none. */
function numbersIn(sheet: WorkbookSheet, column: number, { top, bottom }: CellRange) {
  const numbers: Summand[] = [];
  for (let row = top; row <= bottom; row += 1) {
    const cell = sheet.cellAt(row, column);
    if (typeof cell?.value !== "number") return null;
    const counts = cell.value !== 0 || cell.formula !== undefined;
    numbers.push({ place: { row, column }, value: cell.value, counts });
  }
  return numbers;
}

const sizeOf = ({ top, bottom }: CellRange): number => bottom - top + 1;

/** A sum that leaves out what the widest sum in its row counts, and all of it numbers. */
function shorterSum(sheet: WorkbookSheet, sum: ColumnSum, rows: CellRange): FilledTotal[] {
  const { row, column, formula, range } = sum;
  const stored = sheet.cellAt(row, column)?.value;
  const isWithin = range.top >= rows.top && range.bottom <= rows.bottom;
  // Far fewer rows are a part that is summed up by itself.
  const isMostOfIt = 2 * sizeOf(range) > sizeOf(rows) && sizeOf(range) < sizeOf(rows);
  if (typeof stored !== "number" || !isWithin || !isMostOfIt) return [];
  const summands = numbersIn(sheet, column, rows) ?? [];
  const missing = summands.filter(
    ({ counts, place }) => counts && !contains(range, place.row, place.column),
  );
  const total = {
    ...{ sheet, place: { row, column }, stored, formula, summands, recipe: null, unit: "" },
    ...{ textSum: 0, byFormula: true, mayHoldMore: false, otherTotals: [] },
  };
  return missing.length > 0 ? [{ total, missing }] : [];
}

function shorterOnSheet(sheet: WorkbookSheet, lists: readonly CellRange[]): FilledTotal[] {
  return [...columnSums(sheet).values()].flatMap((sums) => {
    const widest = sums.reduce<CellRange | null>(
      (most, { range }) => (most === null || sizeOf(range) > sizeOf(most) ? range : most),
      null,
    );
    if (widest === null || sizeOf(widest) > MOST_SUMMANDS) return [];
    return sums
      .flatMap((sum) => shorterSum(sheet, sum, widest))
      .filter(({ total: { summands } }) => {
        const read = rangeOfAll(summands.map(({ place }) => place));
        return !lists.some((list) => overlaps(list, read));
      });
  });
}

/** Costs stand right of a list. */
const withBeside = ({ range }: RecipeBlock): CellRange => ({ ...range, right: range.right + 1 });

/**
 * Sums in a row below a table that is no recipe, of which one counts more rows than another: portions and kilograms
 * of a week. What a recipe's totals should count is known better from the recipe.
 */
export const shorterSums = ({ workbook, blocks }: AuditContext): FilledTotal[] =>
  workbook.sheets.flatMap((sheet) => {
    const lists = blocks.flatMap((block) => (block.sheet === sheet ? [withBeside(block)] : []));
    return shorterOnSheet(sheet, lists);
  });
