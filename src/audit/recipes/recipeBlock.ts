import type { Matrix } from "../../foundation/cell";
import type { CellRange, WorkbookSheet } from "../../workbook/model";
import type { Role } from "./headings/headerRole";
import type { AmountUnit } from "./amounts/unit";

/** A place on a sheet, zero-based. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** A labelled number of a worked example. */
export interface LabelledPlace extends Place {
  readonly label: string;
}

/** One that may stand on another sheet than the list. */
export interface DetailPlace extends LabelledPlace {
  readonly sheet?: WorkbookSheet;
}

/** An answer of a worked example, with what it is where its label does not tell. */
export interface ExampleAnswer extends DetailPlace {
  readonly role?: "freezing point" | "depression" | "molality";
}

/** An ingredient's name as it stands on the sheet. */
export interface RecipeName extends Place {
  /** What the recipe functions are asked for: the cell's text, a unit at its end left out. */
  readonly item: string;
  /** A unit that stands with the name, as in "Water (kg)". */
  readonly unit?: AmountUnit;
  /** Where its amount stands when that is not in the recipe's line: the water of a class sheet. */
  readonly amountAt?: Place;
  /** Where a worked example gives its molar mass, its particles or its moles. */
  readonly details?: ReadonlyMap<Role, DetailPlace>;
}

/** One recipe of a block: a column of amounts when names run down, a row of them when names run across. */
export interface Recipe {
  readonly title: string;
  /** Zero-based column (names down) or row (names across) of its amounts. */
  readonly line: number;
  readonly unit: AmountUnit;
  /** True when no header, cell or format named the unit and grams were taken. */
  readonly unitAssumed: boolean;
  /** True when the user said the unit: it holds whatever unit cells and formats say. */
  readonly unitStated?: boolean;
}

/** A total that stands elsewhere than in a line of totals: above the list, beside it, far below. */
export interface TotalApart extends Place {
  /** The recipe's line. */
  readonly line: number;
}

/** Recipes that share their names: what the recipe functions take as `items` and `grams`. */
export interface RecipeBlock {
  readonly sheet: WorkbookSheet;
  readonly layout: "down" | "across";
  /** From the headers to the last name or recipe. */
  readonly range: CellRange;
  readonly headerRow: number | null;
  readonly names: readonly RecipeName[];
  readonly recipes: readonly Recipe[];
  /** Rows that say one of the recipes again in another unit (across only): their totals count, too. */
  readonly repeats?: readonly Recipe[];
  /** Rows (down) or columns (across) that hold totals of the amounts. */
  readonly totals: readonly number[];
  /** Totals that stand apart from the list (down only). */
  readonly totalsApart?: readonly TotalApart[];
  /** True for one of the recipes of a long list. */
  readonly isOneOfMany?: boolean;
  /** Column of a unit for each name (down only). */
  readonly unitColumn: number | null;
  /** What the block's other columns are about (down) or the columns beside the names (across). */
  readonly roles: ReadonlyMap<number, Role>;
  readonly ownIngredients: Matrix | null;
  /** The labelled answers of a worked example; absent for lists. */
  readonly answers?: readonly ExampleAnswer[];
  /** What the formulas of a table's row give where the words above them do not say it. */
  readonly worked?: readonly ExampleAnswer[];
  /** True when the user said how it lies. */
  readonly stated?: boolean;
}

/** Where the amount of one name in one recipe stands. */
export const amountPlace = (block: RecipeBlock, recipe: Recipe, name: RecipeName): Place =>
  name.amountAt ??
  (block.layout === "down"
    ? { row: name.row, column: recipe.line }
    : { row: recipe.line, column: name.column });

/** Whether a list is one row of a table: a solution a row, its solute beside its water. */
export const isOneRow = ({ layout, names, answers }: RecipeBlock): boolean =>
  answers === undefined &&
  layout === "down" &&
  names.length === 2 &&
  names[0]?.row === names[1]?.row;
