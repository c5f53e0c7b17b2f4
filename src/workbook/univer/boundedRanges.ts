import { BaseReferenceObject } from "@univerjs/engine-formula";

let repaired = false;

/**
 * Cuts what a formula reads to the sheet it reads from. Without this a range such as A1:XFD1048576, legal
 * and mostly blank, is walked cell by cell for minutes.
 */
export function boundRanges(): void {
  if (repaired) return;
  repaired = true;
  const original = Object.getOwnPropertyDescriptor(
    BaseReferenceObject.prototype,
    "getRangePosition",
  )?.value as BaseReferenceObject["getRangePosition"];
  BaseReferenceObject.prototype.getRangePosition = function (this: BaseReferenceObject) {
    const range = original.call(this);
    const lastRow = Math.max(range.startRow, this.getActiveSheetRowCount() - 1);
    const lastColumn = Math.max(range.startColumn, this.getActiveSheetColumnCount() - 1);
    return {
      ...range,
      endRow: Math.min(range.endRow, lastRow),
      endColumn: Math.min(range.endColumn, lastColumn),
    };
  };
}
