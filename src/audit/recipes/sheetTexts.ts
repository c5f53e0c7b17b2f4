import { eachCell } from "../../workbook/eachCell";
import type { WorkbookSheet } from "../../workbook/model";
import { amountText } from "./amounts/amountText";

/** Where the words of a sheet stand: rows by column and columns by row, ascending. */
export interface SheetTexts {
  readonly rowsByColumn: ReadonlyMap<number, readonly number[]>;
  readonly columnsByRow: ReadonlyMap<number, readonly number[]>;
}

function push(map: Map<number, number[]>, key: number, value: number): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}

const known = new WeakMap<WorkbookSheet, SheetTexts>();

/** The cells that hold words, collected once for a sheet; numbers typed as text are not words. */
export function sheetTexts(sheet: WorkbookSheet): SheetTexts {
  const texts = known.get(sheet) ?? collected(sheet);
  known.set(sheet, texts);
  return texts;
}

function collected(sheet: WorkbookSheet): SheetTexts {
  const rowsByColumn = new Map<number, number[]>();
  const columnsByRow = new Map<number, number[]>();
  eachCell(sheet, (row, column, { value }) => {
    if (typeof value !== "string" || value.trim() === "" || amountText(value) !== null) return;
    push(rowsByColumn, column, row);
    push(columnsByRow, row, column);
  });
  return { rowsByColumn, columnsByRow };
}

/** Splits ascending numbers where more than `gap` of them are missing. */
export function runs(numbers: readonly number[], gap: number): number[][] {
  const list: number[][] = [];
  let previous = Number.NEGATIVE_INFINITY;
  for (const number of numbers) {
    if (number - previous > gap + 1) list.push([number]);
    else list.at(-1)?.push(number);
    previous = number;
  }
  return list;
}
