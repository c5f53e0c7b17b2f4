import type { Quantity } from "./quantity";

/** A quantity of a mix and what it is to become; the temperature counts for ice and water activity. */
export interface Wish {
  readonly quantity: Quantity;
  readonly value: number;
  readonly temperatureC: number;
}
