import { cellName } from "../../src/workbook/address";
import type { BlockValue, CellBlock } from "../host";

/** A block of cells that can be looked at either way round: names down a column, or across a row. */
export interface Lattice {
  readonly direction: "down" | "across";
  readonly rowCount: number;
  readonly columnCount: number;
  readonly value: (row: number, column: number) => BlockValue;
  /** What was typed: a formula with its "=", else the value. */
  readonly formula: (row: number, column: number) => string;
  readonly format: (row: number, column: number) => string;
  /** A1 name of the cell on its sheet. */
  readonly nameOf: (row: number, column: number) => string;
}

/** The block as it lies on the sheet. */
export function latticeOf(block: CellBlock): Lattice {
  return {
    direction: "down",
    rowCount: block.values.length,
    columnCount: block.values[0]?.length ?? 0,
    value: (row, column) => block.values[row]?.[column] ?? "",
    formula: (row, column) => String(block.formulas[row]?.[column] ?? ""),
    format: (row, column) => block.numberFormats[row]?.[column] ?? "",
    nameOf: (row, column) => cellName(block.top + row, block.left + column),
  };
}

/** The same with rows and columns exchanged, so that one reader serves both layouts. */
export const turned = (lattice: Lattice): Lattice => ({
  direction: lattice.direction === "down" ? "across" : "down",
  rowCount: lattice.columnCount,
  columnCount: lattice.rowCount,
  value: (row, column) => lattice.value(column, row),
  formula: (row, column) => lattice.formula(column, row),
  format: (row, column) => lattice.format(column, row),
  nameOf: (row, column) => lattice.nameOf(column, row),
});

export const textAt = (lattice: Lattice, row: number, column: number): string => {
  const value = lattice.value(row, column);
  return typeof value === "string" ? value.trim() : "";
};

/** A number, or a text that was meant as one ("12,5"): the functions say what is wrong with the latter. */
export const isNumberLike = (value: BlockValue): boolean =>
  typeof value === "number" || (typeof value === "string" && /^\s*[-−+]?\d[\d.,\s]*$/.test(value));
