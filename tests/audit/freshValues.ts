import { cellName, parseCellName } from "../../src/workbook/address";
import type { WorkbookValue } from "../../src/workbook/model";
import type { Recalculation } from "../../src/workbook/recalculation";

/** A recalculation of the first sheet that gave these values, by cell. */
export function freshValues(values: Readonly<Record<string, WorkbookValue>>): Recalculation {
  const calculated = Object.keys(values).map((cell) => ({
    sheet: 0,
    ...parseCellName(cell)!,
    formula: "0",
  }));
  return {
    valueAt: (sheet, row, column) => (sheet === 0 ? values[cellName(row, column)] : undefined),
    calculated,
    leftAlone: [],
    isComplete: true,
  };
}
