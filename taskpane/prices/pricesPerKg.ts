import { perKgFactor } from "./priceHeader";
import type { PriceColumn } from "./readPriceColumns";

/** Prices of 1 kg along the recipe's lines, from the first column whose header says so; null without one. */
export function pricesPerKg(columns: readonly PriceColumn[]): readonly (number | null)[] | null {
  for (const { header, prices } of columns) {
    const factor = perKgFactor(header);
    if (factor !== null) return prices.map((price) => (price === null ? null : price * factor));
  }
  return null;
}
