import type { WorkbookSheet } from "../../workbook/model";
import {
  amountPlace,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipes/recipeBlock";
import { isShare, type AmountUnit } from "../recipes/amounts/unit";
import { recipeInColumn } from "../recipes/recipeInColumn";
import type { Summand } from "./totalledLines";

/** What one ingredient is of the mix, as it stands in its cell. */
export interface Share extends Omit<Summand, "counts"> {
  readonly name: RecipeName;
}

/** The shares of the mix, one for each ingredient: a column of a list, a row of a table. */
export interface ShareLine {
  readonly sheet: WorkbookSheet;
  /** Null where they stand beside the amounts in grams. */
  readonly recipe: Recipe | null;
  readonly line: number;
  readonly shares: readonly Share[];
  /** What the shares should come to: 100, or 1 for fractions. */
  readonly whole: 1 | 100;
}

/** A ledger of thousands of recipes is looked at by its first ones. */
const MOST_RECIPES = 1000;

const unitOf = ({ sheet, headerRow, names }: RecipeBlock, column: number): AmountUnit | null => {
  const rows = names.map(({ row }) => row);
  const { unit, unitAssumed } = recipeInColumn(sheet, headerRow, column, rows);
  return unitAssumed ? null : unit;
};

/** Columns of shares beside amounts in grams; they are typed, for a formula's mistake is told as such. */
function besideAmounts(block: RecipeBlock): { column: number; unit: AmountUnit }[] {
  const { roles, recipes, sheet, names, layout } = block;
  const taken = new Set(recipes.map(({ line }) => line));
  return [...(layout === "down" ? roles : [])].flatMap(([column, role]) => {
    const unit = role === "amount" && !taken.has(column) ? unitOf(block, column) : null;
    const isTyped = names.every(({ row }) => sheet.cellAt(row, column)?.formula === undefined);
    return unit !== null && isShare(unit) && isTyped ? [{ column, unit }] : [];
  });
}

const wholeOf = (unit: AmountUnit): 1 | 100 => (unit === "fraction" ? 1 : 100);

/** The lines of a block that say how much of the mix each ingredient is. */
export function shareLines(block: RecipeBlock): ShareLine[] {
  const { sheet, unitColumn, recipes, names } = block;
  if (unitColumn !== null) return [];
  const read = (placeOf: (name: RecipeName) => Summand["place"]): Share[] =>
    names.flatMap((name) => {
      const place = placeOf(name);
      const value = sheet.cellAt(place.row, place.column)?.value;
      return typeof value === "number" ? [{ name, place, value }] : [];
    });
  const own = recipes
    .slice(0, MOST_RECIPES)
    .filter(({ unit }) => isShare(unit))
    .map((recipe): ShareLine => {
      const shares = read((name) => amountPlace(block, recipe, name));
      return { sheet, recipe, line: recipe.line, shares, whole: wholeOf(recipe.unit) };
    });
  const beside = besideAmounts(block).map(({ column, unit }): ShareLine => {
    const shares = read(({ row }) => ({ row, column }));
    return { sheet, recipe: null, line: column, shares, whole: wholeOf(unit) };
  });
  return [...own, ...beside];
}
