import { cellName } from "../../workbook/address";
import { eachFormula } from "../../workbook/eachFormula";
import type { AuditContext } from "../context";
import { isLeftBehind, isPrice, isQuantity, isVessel } from "./inputLabel";
import { powerByFormula } from "./powerByFormula";
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

/** A formula as its cell has it, and as the first of the cells that share it. */
interface FormulaText {
  readonly shared: string;
  readonly own: string;
}

type Reading = (answer: CellOnSheet, formula: FormulaText) => boolean;

/** Whether some formula that reads the number is as asked, by how the formulas of a sheet write it. */
function isRead(
  { workbook }: AuditContext,
  input: UnitlessInput,
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

/** What tells formulas that take the number as so much per hundred or from grams to kilograms, or add a fraction. */
function conversionsOf({ source }: RegExp, value: number): readonly RegExp[] {
  const converted = `${source}\\s*(?:/\\s*100(?!\\d)|%)|${source}\\s*[*/]\\s*1000(?!\\d)|\\b1000\\s*[*/]\\s*${source}`;
  // What is added to anything but 1 is no share of it.
  const added = `(?<![\\d.]\\s*1\\s*|[(=^]\\s*1\\s*)\\+\\s*${source}\\s*(?:$|[-+,)])|^=?\\s*${source}\\s*\\+(?!\\s*1(?![\\d.]))`;
  const isFraction = value > 0 && value < 1;
  return [converted, ...(isFraction ? [added] : [])].map((each) => new RegExp(each, "iu"));
}

/** A vessel that grams of the list are multiplied by is counted, not what it holds. */
function isCounted(context: AuditContext, input: UnitlessInput): boolean {
  if (!isVessel(input.label)) return false;
  let weighed = 0;
  return isRead(context, input, () => (answer, { own }) => {
    weighed += 1;
    return weighed <= MOST_WEIGHED && powerByFormula(context.blocks, answer, own, input) === 0;
  });
}

/**
 * Whether a formula works with the number as with a quantity: by its label or fraction, as so much per hundred, from grams to
 * kilograms, or so that only a mass or money makes the units right.
 */
export function isWorkedWith(context: AuditContext, input: UnitlessInput): boolean {
  const { label, value } = input;
  if (isCounted(context, input)) return false;
  // What is counted is a whole number, and below 1 it may be a share.
  const isBroken = value > 1 && !Number.isInteger(value);
  const isMeasured = isQuantity(label) || isLeftBehind(label, value) || isPrice(label) || isBroken;
  let weighed = 0;
  return isRead(context, input, (written) => {
    const conversions = conversionsOf(written, value);
    return (answer, { shared, own }) => {
      if (isMeasured || conversions.some((each) => each.test(shared))) return true;
      weighed += 1;
      if (weighed > MOST_WEIGHED) return false;
      const isMass = powerByFormula(context.blocks, answer, own, input) === 1;
      return isMass || isAddedToMoney(answer, own, written);
    };
  });
}
