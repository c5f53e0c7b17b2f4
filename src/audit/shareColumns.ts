import type { WorkbookSheet } from "../workbook/model";
import { textAt } from "./recipes/cells";
import type { RecipeBlock } from "./recipes/recipeBlock";
import { isShare, unitFromFormat, unitFromHeader, type AmountUnit } from "./recipes/unit";
import type { Summand } from "./totalledLines";

/** A column of shares of the mix, one for each ingredient. */
export interface ShareColumn {
  readonly sheet: WorkbookSheet;
  readonly column: number;
  readonly shares: readonly Summand[];
  /** What the shares should come to: 100, or 1 where a format shows fractions in percent. */
  readonly whole: 1 | 100;
}

function unitOf({ sheet, headerRow, names }: RecipeBlock, column: number): AmountUnit | null {
  const [first] = names;
  const format = unitFromFormat(sheet.cellAt(first?.row ?? 0, column)?.format);
  return format ?? (headerRow === null ? null : unitFromHeader(textAt(sheet, headerRow, column)));
}

/** Columns of shares beside amounts in grams; they are typed, for a formula's mistake is told as such. */
function besideAmounts(block: RecipeBlock): { column: number; unit: AmountUnit }[] {
  const { roles, recipes, sheet, names } = block;
  const taken = new Set(recipes.map(({ line }) => line));
  return [...roles].flatMap(([column, role]) => {
    const unit = role === "amount" && !taken.has(column) ? unitOf(block, column) : null;
    const isTyped = names.every(({ row }) => sheet.cellAt(row, column)?.formula === undefined);
    return unit !== null && isShare(unit) && isTyped ? [{ column, unit }] : [];
  });
}

/** The columns of a list that say how much of the mix each ingredient is. */
export function shareColumns(block: RecipeBlock): ShareColumn[] {
  const { sheet, layout, unitColumn, recipes, names } = block;
  if (layout === "across" || unitColumn !== null) return [];
  const own = recipes.map(({ line, unit }) => ({ column: line, unit }));
  return [...own, ...besideAmounts(block)].flatMap(({ column, unit }): ShareColumn[] => {
    if (!isShare(unit)) return [];
    const shares = names.flatMap(({ row }): Summand[] => {
      const value = sheet.cellAt(row, column)?.value;
      return typeof value === "number" ? [{ place: { row, column }, value }] : [];
    });
    return [{ sheet, column, shares, whole: unit === "fraction" ? 1 : 100 }];
  });
}
