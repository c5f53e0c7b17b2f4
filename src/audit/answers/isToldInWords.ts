import { amountText } from "../recipes/amounts/amountText";
import { headerRole } from "../recipes/headings/headerRole";

/** "-2.3 °C", "about 2.3 K (worked out)", but not "0 °C minus depression", how it is worked out. */
const DEGREES =
  /^\D{0,8}\d+(?:[.,]\d+)?\s*(?:°\s?[CF]?|K|kelvin|degrees?|grad)[^\p{L}(]*(?:\(.*\))?$/iu;

/**
 * Whether words beside a label are its answer, as "−2.3 °C" beside "Freezing point" or "637 g" beside "Water": a number
 * behind them is another thing, such as the marks that it brings. Ice at "−12 °C" has its answer behind that.
 */
export function isToldInWords(label: string, words: string): boolean {
  if (DEGREES.test(words)) return /^(freezing point|depression)$/.test(headerRole(label) ?? "");
  return amountText(words)?.unit != null;
}
