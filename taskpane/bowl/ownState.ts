import type { Workbook } from "../../src/workbook/model";
import { findOwnIngredients, type OwnRange } from "./ownIngredients";

/** What all views know of the workbook's own ingredients. */
export interface OwnState {
  /** Every range of them; null until the workbook has been looked through. */
  readonly ranges: readonly OwnRange[] | null;
  /** The range that counts: null for none, undefined until one was found or chosen. */
  readonly range: OwnRange | null | undefined;
  /** True for what the user chose: that may be headed in any way. */
  readonly isChosen: boolean;
  /** Where own ingredients stood that counted and are no longer there. */
  readonly gone: OwnRange | null;
}

export const NO_OWN: OwnState = { ranges: null, range: undefined, isChosen: false, gone: null };

const startsLike =
  (wanted: OwnRange) =>
  ({ sheet, address }: OwnRange): boolean =>
    sheet === wanted.sheet && address.split(":")[0] === wanted.address.split(":")[0];

/**
 * What is known once the workbook has been looked through: the first range counts until the user takes another
 * or none. A range that has grown or shrunk since is still the one that counted; one that is gone is named.
 */
export function ownAfterLook(before: OwnState, workbook: Workbook): OwnState {
  const ranges = findOwnIngredients(workbook);
  const { range, isChosen } = before;
  if (range === null) return { ...before, ranges };
  if (range === undefined) return { ...before, ranges, range: ranges[0] };
  const same = ranges.find(startsLike(range));
  const isThere = isChosen && workbook.sheets.some(({ name }) => name === range.sheet);
  if (same !== undefined || isThere) return { ...before, ranges, range: same ?? range };
  return { ranges, range: ranges[0], isChosen: false, gone: range };
}
