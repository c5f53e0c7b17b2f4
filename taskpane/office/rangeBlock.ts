import type { BlockValue, CellBlock } from "../host";
import { addressParts } from "./addressParts";

/** What a range has to load to become a block. */
export const BLOCK_PROPERTIES = "address,values,formulas,numberFormat,rowIndex,columnIndex";

/** A loaded range as the views take it. */
export function rangeBlock(range: Excel.Range): CellBlock {
  return {
    ...addressParts(range.address),
    top: range.rowIndex,
    left: range.columnIndex,
    values: range.values as BlockValue[][],
    formulas: range.formulas as BlockValue[][],
    numberFormats: range.numberFormat as string[][],
  };
}
