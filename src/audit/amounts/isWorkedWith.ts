import type { AuditContext } from "../context";
import { isErrorAt } from "../recipes/cells";
import { isReadAs } from "./isReadAs";
import { isLeftBehind, isPrice, isQuantity, isVessel } from "./inputLabel";
import { powerByFormula } from "./powerByFormula";
import type { CellOnSheet } from "./powerOfMass";
import type { UnitlessInput } from "./unitlessInput";
import { wordsOfCell } from "./wordsOfCell";

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
  return isReadAs(context, input, () => (answer, { own }) => {
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
  return isReadAs(context, input, (written) => {
    const conversions = conversionsOf(written, value);
    return (answer, { shared, own }) => {
      if (isMeasured || conversions.some((each) => each.test(shared))) return true;
      weighed += 1;
      // What gives an error, as a name times a number does, tells no unit.
      const isError = isErrorAt(answer.sheet, answer.row, answer.column);
      if (weighed > MOST_WEIGHED || isError) return false;
      const isMass = powerByFormula(context.blocks, answer, own, input) === 1;
      return isMass || isAddedToMoney(answer, own, written);
    };
  });
}
