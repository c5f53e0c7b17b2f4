import { cellName } from "../../workbook/address";
import { eachFormula } from "../../workbook/eachFormula";
import type { AuditContext } from "../context";
import { isPrice, isQuantity } from "./inputLabel";
import { isMassByFormula } from "./isMassByFormula";
import type { UnitlessInput } from "./unitlessInput";

/** How formulas write a cell: on its own sheet, on others, or by its name. */
function writtenAs({ sheet, row, column }: UnitlessInput, isOwn: boolean): RegExp {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(cellName(row, column)) ?? [];
  const place = `\\$?${letters}\\$?${digits}(?![\\d(:])`;
  const escaped = sheet.name.replaceAll(/[\\^$.*+?()[\]{}|]/g, "\\$&");
  const address = isOwn ? `(?<![\\p{L}\\d_.!$:])${place}` : `${escaped}'?!${place}`;
  return new RegExp(address, "iu");
}

/** One input may be read in every row of a long list. */
const MOST_WEIGHED = 50;

/**
 * Whether a formula works with the number as with a quantity: by its label or fraction, as so much per hundred, from grams to
 * kilograms, or so that only a mass makes the units right.
 */
export function isWorkedWith({ workbook, blocks }: AuditContext, input: UnitlessInput): boolean {
  const { label, value } = input;
  // What is counted is a whole number, and below 1 it may be a share.
  const isMeasured = isQuantity(label) || isPrice(label) || (value > 1 && !Number.isInteger(value));
  return workbook.sheets.some((sheet) => {
    const written = writtenAs(input, sheet === input.sheet);
    const converted = new RegExp(
      `${written.source}\\s*(?:/\\s*100(?!\\d)|%)|${written.source}\\s*[*/]\\s*1000(?!\\d)|\\b1000\\s*[*/]\\s*${written.source}`,
      "iu",
    );
    let isRead = false;
    let weighed = 0;
    eachFormula(sheet, (row, column, cell) => {
      const formula = cell.sharedFormula ?? cell.formula;
      if (isRead || formula === undefined || !written.test(formula)) return;
      isRead = isMeasured || converted.test(formula);
      if (isRead || weighed === MOST_WEIGHED) return;
      weighed += 1;
      isRead = isMassByFormula(blocks, { sheet, row, column }, cell.formula ?? formula, input);
    });
    return isRead;
  });
}
