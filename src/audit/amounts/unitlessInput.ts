import type { CellRange, WorkbookSheet } from "../../workbook/model";
import type { Place } from "../recipes/recipeBlock";

/** A labelled number that someone typed for formulas, or people, to work with, and that names no unit. */
export interface UnitlessInput extends Place {
  readonly sheet: WorkbookSheet;
  /** The cell, or the row of numbers that share a label. */
  readonly range: CellRange;
  readonly label: string;
  readonly value: number;
  readonly isTemperature: boolean;
}
