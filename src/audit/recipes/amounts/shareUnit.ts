import type { WorkbookValue } from "../../../workbook/model";
import type { ShareUnit } from "./unit";

/** Mass fractions have the letter w. */
const SHARE =
  /(^|[\s,(/])w(?=\)?$)|\b(shares?|fractions?|proportions?|parts?|\p{L}*(anteile?|bruchteile?))(?!\p{L})/iu;

/** Shares whose heading or label names no unit are fractions when they come to 1, percent when to 100; null of what are none. */
export function shareUnit(
  label: string,
  values: readonly (WorkbookValue | undefined)[],
): ShareUnit | null {
  if (!SHARE.test(label)) return null;
  const numbers = values.filter((value) => typeof value === "number");
  const small = numbers.filter((value) => value <= 1).length;
  return small * 2 > numbers.length ? "fraction" : numbers.length > 0 ? "%" : null;
}
