import { normalName } from "../catalogue/normalName";

const TOTAL_NAME =
  /^(grand |sub ?-?)?(total|sum)$|^(zwischen|gesamt)?summe$|^gesamt$|^zwischensumme$/;

/** Names that stand for a sum of the rows above, not for an ingredient. */
export const isTotalName = (name: string): boolean =>
  TOTAL_NAME.test(normalName(name).replace(/:$/, ""));

/** Equal but for the rounding of a sum in the sheet. */
export const sameSum = (stated: number, sum: number): boolean =>
  Math.abs(stated - sum) <= 1e-9 * Math.max(Math.abs(stated), Math.abs(sum));
