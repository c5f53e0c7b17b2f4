import type { WorkbookSheet } from "../../../workbook/model";
import type { LabelledPair } from "./labelledPairs";
import { productOf } from "./productOf";
import { keyOf } from "./rolesByFormula";

/** Whether the values of a pair multiply those of another: moles of particles those of formula units. */
export const goesOnFrom = (
  sheet: WorkbookSheet,
  { values }: LabelledPair,
  other: LabelledPair | undefined,
): boolean =>
  values.some(({ row, column }) => {
    const product = productOf(sheet.cellAt(row, column)?.formula ?? "");
    const read = new Set(product?.above.map(keyOf));
    return other?.values.some((value) => read.has(keyOf(value))) === true;
  });
