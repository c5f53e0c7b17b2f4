import { decimalsOf } from "../../../src/audit/decimalsOf";
import type { WorkbookCell } from "../../../src/workbook/model";
import type { Restatement } from "./restatement";

/** Digits alone: no unit, no per cent, nothing that hides. */
const PLAIN = /^(?:#,##)?0(?:\.(0+))?$/;
/** More decimals than that may be what a finding is about. */
const MOST_DECIMALS = 2;

function withoutFormat(cell: WorkbookCell | undefined): WorkbookCell | undefined {
  const plain = PLAIN.exec(cell?.format ?? "");
  if (cell === undefined || plain === null || typeof cell.value !== "number") return cell;
  const decimals = plain[1]?.length ?? 0;
  // A number typed with other decimals than it shows would be stated more, or less, precisely.
  const isSame =
    cell.formula === undefined ? decimalsOf(cell.value) === decimals : decimals <= MOST_DECIMALS;
  const { value, formula } = cell;
  return isSame ? { value, ...(formula !== undefined && { formula }) } : cell;
}

/** Numbers without formats, where a format only gives the digits. */
export const formatsDropped: Restatement = {
  name: "plain formats dropped",
  restate: ({ workbook, recalculated }) => ({
    workbook: {
      ...workbook,
      sheets: workbook.sheets.map((sheet) => ({
        ...sheet,
        cellAt: (row: number, column: number) => withoutFormat(sheet.cellAt(row, column)),
      })),
    },
    recalculated,
  }),
};
