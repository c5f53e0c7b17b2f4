import { badInput, type Problem } from "../foundation/problem";
import { normalName } from "../catalogue/normalName";

const TOTAL_NAME =
  /^(grand |sub ?-?)?(total|sum)$|^(zwischen|gesamt)?summe$|^gesamt$|^zwischensumme$/;

/** Names that stand for a sum of the rows above, not for an ingredient. */
export const isTotalName = (name: string): boolean =>
  TOTAL_NAME.test(normalName(name).replace(/:$/, ""));

/** Equal but for the rounding of a sum in the sheet. */
const sameSum = (stated: number, sum: number): boolean =>
  Math.abs(stated - sum) <= 1e-9 * Math.max(Math.abs(stated), Math.abs(sum));

/** Keeps the sums by which a total or subtotal of the sheet is recognised. */
export class Sums {
  private all = 0;
  private sinceTotal = 0;
  private net = 0;

  add(grams: number, isLoss: boolean): void {
    this.all += grams;
    this.sinceTotal += grams;
    this.net += isLoss ? -grams : grams;
  }

  /** Null when the stated total is one of the sums, else what is wrong. */
  check(stated: number, word: string, place: string): Problem | null {
    const fits = [this.all, this.sinceTotal, this.net].some((sum) => sameSum(stated, sum));
    this.sinceTotal = 0;
    if (fits) return null;
    const sum = Number(this.all.toPrecision(9));
    return badInput(
      `${place}: "${word}" is ${stated}, but the amounts above it add up to ${sum}; a total must equal that sum.`,
    );
  }
}
