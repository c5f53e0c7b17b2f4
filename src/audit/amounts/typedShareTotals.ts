import type { WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import { isLedger } from "../recipes/isLedger";
import type { RecipeBlock } from "../recipes/recipeBlock";
import { totalPlaces } from "../recipes/totals/totalPlaces";
import type { FilledTotal } from "./filledTotals";
import { isFarFromSum } from "./isFarFromSum";
import { totalElsewhere } from "./totalElsewhere";
import { agrees, sumOf, type Summand } from "./totalledLines";

/** Rounded shares come to 100 within so much. */
const ROUNDING = 0.5;

/** The numbers of a list's lines in a column, where each follows from a formula and they come to 100 in all. */
function sharesIn({ sheet, names }: RecipeBlock, column: number): readonly Summand[] {
  const shares = names.flatMap(({ row }): Summand[] => {
    const cell = sheet.cellAt(row, column);
    const isWorkedOut = typeof cell?.value === "number" && cell.formula !== undefined;
    return isWorkedOut ? [{ place: { row, column }, value: cell.value, counts: true }] : [];
  });
  return shares.length === names.length && Math.abs(sumOf(shares) - 100) <= ROUNDING ? shares : [];
}

function wrongAt(sheet: WorkbookSheet, row: number, shares: readonly Summand[]): FilledTotal[] {
  const column = shares[0]?.place.column ?? 0;
  const cell = sheet.cellAt(row, column);
  if (typeof cell?.value !== "number" || cell.formula !== undefined) return [];
  const total = totalElsewhere(sheet, { row, column }, cell.value, shares);
  return agrees(total, sumOf(shares)) || isFarFromSum(total) ? [] : [{ total, missing: [] }];
}

function wrongIn(block: RecipeBlock): FilledTotal[] {
  const { sheet, layout, range, recipes } = block;
  if (layout !== "down" || isLedger(block)) return [];
  const places = recipes.flatMap((recipe) => totalPlaces(block, recipe));
  const rows = new Set(places.map(({ row }) => row));
  const taken = new Set(recipes.map(({ line }) => line));
  const columns = [...block.roles.keys()].filter(
    (column) => !taken.has(column) && column >= range.left && column <= range.right,
  );
  return columns.flatMap((column) => {
    const shares = rows.size === 0 ? [] : sharesIn(block, column);
    return shares.length < 2 ? [] : [...rows].flatMap((row) => wrongAt(sheet, row, shares));
  });
}

/** Numbers typed beside the total of a list, below or above shares that are worked out and come to 100, and other than that. */
export const typedShareTotals = ({ blocks }: AuditContext): FilledTotal[] =>
  blocks.flatMap(wrongIn);
