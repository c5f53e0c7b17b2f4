import type { Effect } from "../finding";

const shown = (value: number | string): string => String(value).replace(/^-/, "−");

/** "freezing point −1.4 instead of −2.3 °C" */
export const effectText = ({ quantity, from, to, unit }: Effect): string =>
  `${quantity} ${shown(from)} instead of ${shown(to)} ${unit}`.trimEnd();
