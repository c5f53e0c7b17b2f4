import type { NumberFormat } from "../words/numberFormat";
import { together } from "../words/together";
import type { FigureLine } from "./figureLine";

/** A figure and its band as they are shown; the band of what holds by definition is blank. */
export function figureText(
  { value, uncertainty, decimals }: Pick<FigureLine, "value" | "uncertainty" | "decimals">,
  numbers: NumberFormat,
): { readonly value: string; readonly band: string } {
  if (typeof value === "string") return { value, band: "" };
  const shown = decimals === undefined ? numbers.plain(value) : numbers.fixed(value, decimals);
  if (!uncertainty) return { value: shown, band: "" };
  const band =
    decimals === undefined ? numbers.band(uncertainty) : numbers.fixed(uncertainty, decimals);
  return { value: shown, band: together("±", band) };
}
