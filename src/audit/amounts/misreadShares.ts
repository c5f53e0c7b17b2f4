import type { Share, ShareLine } from "./shareLines";
import { sumOf } from "./totalledLines";

/** Shares come to the whole within half a percent of it. */
const CLOSE = 0.005;

/** What a share is when it is read the other way. */
export const otherReading = (whole: 1 | 100, value: number): number =>
  whole === 100 ? value * 100 : value / 100;

/**
 * The shares that make the whole when they are read the other way, as few as will do; none when the shares come
 * to the whole as they are, or never do.
 */
export function misreadShares({ shares, whole }: ShareLine): readonly Share[] {
  const sum = sumOf(shares);
  const isWhole = (value: number) => Math.abs(value / whole - 1) <= CLOSE;
  const couldBe = shares.filter(
    ({ value }) => value > 0 && (whole === 100 ? value <= 1 : value > 1),
  );
  if (shares.length < 3 || isWhole(sum)) return [];
  const fits = (some: readonly Share[]) =>
    isWhole(some.reduce((total, { value }) => total + otherReading(whole, value) - value, sum));
  const single = couldBe.filter((share) => fits([share]));
  if (single.length > 0) return single.length === 1 ? single : [];
  return couldBe.length > 1 && couldBe.length < shares.length && fits(couldBe) ? couldBe : [];
}
