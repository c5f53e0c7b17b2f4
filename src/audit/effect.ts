import { freezingPointC, iceFraction } from "./answers/answers";
import type { Effect } from "./finding";
import type { Mix } from "./mix";

export const rounded = (value: number, digits: number): number => {
  const factor = 10 ** digits;
  const scaled = value * factor;
  // Huge numbers have no such digits; −0 is 0.
  return Number.isFinite(scaled) ? Math.round(scaled) / factor || 0 : value;
};

/** A change of the freezing point; null when it is under a hundredth of a kelvin or cannot be computed. */
export function freezingEffect(fromC: number | null, toC: number | null): Effect | null {
  if (fromC === null || toC === null || Math.abs(fromC - toC) < 0.01) return null;
  return { quantity: "freezing point", from: rounded(fromC, 2), to: rounded(toC, 2), unit: "°C" };
}

/**
 * What a mistake does to the answer: from the mix with the mistake to the mix as meant. Where one of them has
 * no freezing point, the share of its water that is ice at −18 °C is compared instead.
 */
export function mixEffect(mistaken: Mix, meant: Mix): Effect | null {
  const [fromC, toC] = [freezingPointC(mistaken), freezingPointC(meant)];
  if (fromC !== null && toC !== null) return freezingEffect(fromC, toC);
  const [from, to] = [iceFraction(mistaken, -18, "water"), iceFraction(meant, -18, "water")];
  if (from === null || to === null || Math.abs(from - to) < 0.001) return null;
  return {
    quantity: "share of the water that is ice at −18 °C",
    from: rounded(100 * from, 1),
    to: rounded(100 * to, 1),
    unit: "%",
  };
}

/** How large an effect is, for ranking: as a share of the larger of the two. */
export function effectSize(effect: Effect | null): number {
  if (effect === null) return -1;
  const { from, to } = effect;
  if (typeof from !== "number" || typeof to !== "number") return 0.5;
  return Math.abs(from - to) / Math.max(Math.abs(from), Math.abs(to), 1e-9);
}
