import type { BlockValue, CellBlock } from "../host";
import { addressParts } from "./addressParts";
import { loadedRows } from "./loadedRows";

/** What a range has to load to become a block. */
export const BLOCK_PROPERTIES = "address,values,formulas,numberFormat,rowIndex,columnIndex";

/** A loaded range as the views take it. */
export function rangeBlock(range: Excel.Range): CellBlock {
  return {
    ...addressParts(range.address),
    top: range.rowIndex,
    left: range.columnIndex,
    values: loadedRows<BlockValue>(range.values),
    formulas: loadedRows<BlockValue>(range.formulas),
    numberFormats: loadedRows<string>(range.numberFormat),
  };
}
