import { COLDEST_C } from "../foundation/constants";
import { componentPerGram } from "../recipe/perGram";
import type { AdjustWish } from "./adjustment";
import type { EndsBetween } from "./endOfFreezing";
import type { AdjustLine } from "./readQuestion";
import { atLeast, negated, type LinearForm } from "./wishForm";

/** An end that every mix keeps, so that it asks for nothing. */
const asksNothing = (wish: AdjustWish, side: "from" | "to"): boolean => {
  const end = wish[side];
  if (end === null) return true;
  if (wish.kind === "freezing point") return side === "to" && end === 0;
  if (side === "from") return end === 0;
  return wish.kind === "ice fraction" && end === 1;
};

/**
 * The rows of one wish, each at least 0 when it is met. Where freezing ends at one temperature they are
 * exact; between two each takes the end that asks for less, so that no mix in between is left out.
 */
export function wishRows(
  lines: readonly AdjustLine[],
  wish: AdjustWish,
  { coldestC, warmestC }: EndsBetween,
): readonly LinearForm[] {
  const rows: LinearForm[] = [];
  if (wish.from !== null && !asksNothing(wish, "from")) {
    rows.push(atLeast(lines, wish, wish.from, coldestC));
  }
  if (wish.to !== null && !asksNothing(wish, "to")) {
    rows.push(negated(atLeast(lines, wish, wish.to, warmestC)));
  }
  // Where freezing ends above the freezing point there is none.
  if (wish.kind === "freezing point" && Number.isFinite(coldestC)) {
    rows.push(atLeast(lines, wish, Math.max(coldestC, COLDEST_C), coldestC));
  }
  return rows;
}

/** An answer that leaves less than this share of the recipe is none. */
const LEAST_LEFT = 0.1;

/** What every answer keeps: no less water than none, and not next to nothing of everything. */
export function alwaysKept(lines: readonly AdjustLine[]): readonly LinearForm[] {
  const perGram = lines.map(({ item }) => componentPerGram(item, "total"));
  const now = lines.reduce((sum, { grams }, at) => sum + grams * (perGram[at] ?? 0), 0);
  return [
    { perGram: lines.map(({ item }) => componentPerGram(item, "water")), constant: 0 },
    { perGram, constant: -LEAST_LEFT * now },
  ];
}
