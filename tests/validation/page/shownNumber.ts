import { QUANTITIES, type Quantity } from "../compared/comparison";

/** With a minus sign that is as wide as a plus. */
export const signed = (text: string): string => text.replace("-", "−");

/** A miss to two figures. */
export const shownMiss = (value: number): string =>
  value === 0
    ? "0"
    : value < 1e-5
      ? "< 0.00001"
      : value >= 10
        ? value.toFixed(0)
        : value.toPrecision(2);

/** A compared value with the digits its quantity has in print. */
export const shownValue = (value: number, quantity: Quantity): string =>
  signed(value.toFixed(QUANTITIES[quantity].digits));
