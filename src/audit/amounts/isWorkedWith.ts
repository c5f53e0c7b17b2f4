import { cellName } from "../../workbook/address";
import { eachFormula } from "../../workbook/eachFormula";
import type { AuditContext } from "../context";
import { isPrice, isQuantity } from "./inputLabel";
import { isMassByFormula } from "./isMassByFormula";
import type { CellOnSheet } from "./powerOfMass";
import type { UnitlessInput } from "./unitlessInput";
import { wordsOfCell } from "./wordsOfCell";

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

const MONEY = /[€$£]|\b(eur|euros?|usd|chf)\b/i;
const GROUP = /[\p{L}.]*\([^()]*\)/gu;

/** Whether a formula adds a number as it is to what is in euros, so that it is in euros, too. */
function isAddedToMoney(answer: CellOnSheet, formula: string, written: RegExp): boolean {
  const added = new RegExp(`(?:^|[-+])\\s*${written.source}\\s*(?:$|[-+])`, "iu");
  if (!added.test(formula.replaceAll(GROUP, "1"))) return false;
  const { before, above } = wordsOfCell(answer);
  return MONEY.test(before === "" ? above : before);
}

/**
 * Whether a formula works with the number as with a quantity: by its label or fraction, as so much per hundred, from grams to
 * kilograms, or so that only a mass or money makes the units right.
 */
export function isWorkedWith({ workbook, blocks }: AuditContext, input: UnitlessInput): boolean {
  const { label, value } = input;
  // What is counted is a whole number, and below 1 it may be a share.
  const isMeasured = isQuantity(label) || isPrice(label) || (value > 1 && !Number.isInteger(value));
  const isFraction = value > 0 && value < 1;
  return workbook.sheets.some((sheet) => {
    const written = writtenAs(input, sheet === input.sheet);
    const converted = new RegExp(
      `${written.source}\\s*(?:/\\s*100(?!\\d)|%)|${written.source}\\s*[*/]\\s*1000(?!\\d)|\\b1000\\s*[*/]\\s*${written.source}`,
      "iu",
    );
    // What is added to anything but 1 is no share of it.
    const added = new RegExp(
      `(?<![\\d.]\\s*1\\s*|[(=^]\\s*1\\s*)\\+\\s*${written.source}\\s*(?:$|[-+,)])|^=?\\s*${written.source}\\s*\\+(?!\\s*1(?![\\d.]))`,
      "iu",
    );
    let isRead = false;
    let weighed = 0;
    eachFormula(sheet, (row, column, cell) => {
      const formula = cell.sharedFormula ?? cell.formula;
      if (isRead || formula === undefined || !written.test(formula)) return;
      isRead = isMeasured || converted.test(formula) || (isFraction && added.test(formula));
      if (isRead || weighed === MOST_WEIGHED) return;
      weighed += 1;
      const answer = { sheet, row, column };
      const own = cell.formula ?? formula;
      isRead = isMassByFormula(blocks, answer, own, input) || isAddedToMoney(answer, own, written);
    });
    return isRead;
  });
}
