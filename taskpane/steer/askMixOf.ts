import type { AdjustWish } from "../../src/adjust/adjustment";
import type { Cell, Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";

/** A recipe as a question to the worksheet functions. */
export interface AskedMix {
  readonly names: readonly string[];
  readonly grams: readonly number[];
  readonly own: Matrix | null;
}

/** The one answer of a worksheet function about a mix. */
export function askOf({ names, grams, own }: AskedMix, name: string, ...more: unknown[]): Cell {
  const column = (values: readonly (string | number)[]) => values.map((value) => [value]);
  return callFunction(name, column(names), column(grams), ...more, own)[0]?.[0] ?? null;
}

/** g of a component in 100 g of the mix. */
export function shareOf(mix: AskedMix, component: string): number | null {
  const [grams, total] = [askOf(mix, "COMPONENT", component), askOf(mix, "COMPONENT", "total")];
  return typeof grams === "number" && typeof total === "number" ? (100 * grams) / total : null;
}

/** The quantity of a wish, by the worksheet function that a cell would call; null when it declines. */
export function askedValue(
  wish: AdjustWish,
  mix: AskedMix,
  pricesPerKg: readonly (number | null)[],
): number | null {
  const number = (cell: Cell) => (typeof cell === "number" ? cell : null);
  switch (wish.kind) {
    case "ice fraction":
      return number(askOf(mix, "ICEFRACTION", wish.temperatureC, wish.basis));
    case "freezing point":
      return number(askOf(mix, "FREEZINGPOINT"));
    case "sweetness":
      return number(askOf(mix, "SWEETNESS"));
    case "component":
      return typeof wish.component === "string" ? shareOf(mix, wish.component) : null;
    case "total":
      return number(askOf(mix, "COMPONENT", "total"));
    case "cost": {
      const total = askOf(mix, "COMPONENT", "total");
      const cost = mix.grams.reduce((sum, one, at) => sum + one * (pricesPerKg[at] ?? 0), 0);
      return typeof total === "number" ? cost / total : null;
    }
  }
}
