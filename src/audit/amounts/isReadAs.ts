import { cellName } from "../../workbook/address";
import { eachFormula } from "../../workbook/eachFormula";
import type { AuditContext } from "../context";
import type { CellOnSheet } from "./powerOfMass";

/** How formulas write a cell: on its own sheet, on others, or by its name. */
function writtenAs({ sheet, row, column }: CellOnSheet, isOwn: boolean): RegExp {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(cellName(row, column)) ?? [];
  const place = `\\$?${letters}\\$?${digits}(?![\\d(:])`;
  const escaped = sheet.name.replaceAll(/[\\^$.*+?()[\]{}|]/g, "\\$&");
  const address = isOwn ? `(?<![\\p{L}\\d_.!$:])${place}` : `${escaped}'?!${place}`;
  return new RegExp(address, "iu");
}

/** A formula as its cell has it, and as the first of the cells that share it. */
interface FormulaText {
  readonly shared: string;
  readonly own: string;
}

type Reading = (answer: CellOnSheet, formula: FormulaText) => boolean;

/** Whether some formula that reads the number is as asked, by how the formulas of a sheet write it. */
export function isReadAs(
  { workbook }: AuditContext,
  input: CellOnSheet,
  asked: (written: RegExp) => Reading,
): boolean {
  return workbook.sheets.some((sheet) => {
    const written = writtenAs(input, sheet === input.sheet);
    const isSo = asked(written);
    let isFound = false;
    eachFormula(sheet, (row, column, cell) => {
      const shared = cell.sharedFormula ?? cell.formula;
      if (isFound || shared === undefined || !written.test(shared)) return;
      isFound = isSo({ sheet, row, column }, { shared, own: cell.formula ?? shared });
    });
    return isFound;
  });
}
