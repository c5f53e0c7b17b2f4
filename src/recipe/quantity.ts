import type { Result } from "../foundation/result";
import { waterActivityOfMix } from "./activity";
import { freezingPointOfMix, iceFractionOfMix } from "./freezing";
import type { Mix } from "./mix";
import { sweetnessOfMix } from "./sweetness";

export const QUANTITIES = [
  ...(["freezing point", "ice fraction", "water activity", "sweetness"] as const),
];
export type Quantity = (typeof QUANTITIES)[number];

/** Value of a quantity of a mix; the temperature counts for the ice fraction and the water activity. */
export function quantityOfMix(mix: Mix, quantity: Quantity, temperatureC: number): Result<number> {
  switch (quantity) {
    case "freezing point":
      return freezingPointOfMix(mix);
    case "ice fraction":
      return iceFractionOfMix(mix, temperatureC, "water");
    case "water activity":
      return waterActivityOfMix(mix, temperatureC);
    case "sweetness":
      return sweetnessOfMix(mix);
  }
}
