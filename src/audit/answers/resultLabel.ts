import type { WorkbookCell } from "../../workbook/model";
import { plainWords } from "../recipes/plainWords";

export type ResultUnit = "°C" | "°F" | "K" | "mol/kg" | "fraction" | "%";

const CELSIUS = /([-−–]?\s?\d+(?:[.,]\d+)?)\s*°\s*(c|f)\b/i;

export const fahrenheitToC = (temperatureF: number): number => ((temperatureF - 32) * 5) / 9;

/** "Ice at −14 °C" → −14; null when the label names no temperature. */
export function labelledTemperatureC(label: string): number | null {
  const [, digits, scale] = CELSIUS.exec(label) ?? [];
  if (digits === undefined) return null;
  const number = Number(digits.replace(/[−–]/, "-").replace(/\s/g, "").replace(",", "."));
  return scale?.toLowerCase() === "f" ? fahrenheitToC(number) : number;
}

/** The unit of a labelled answer from its label, the cell to its right and its number format. */
export function resultUnit(
  label: string,
  beside: string,
  cell: WorkbookCell,
  role: string,
): ResultUnit {
  const plain = plainWords(label);
  const format = cell.format ?? "";
  if (role === "molality") return "mol/kg";
  if (role === "ice fraction") {
    if (/%/.test(format)) return "fraction";
    const inPercent = /%|percent|prozent/.test(plain) || beside === "%";
    const large = typeof cell.value === "number" && Math.abs(cell.value) > 1;
    return inPercent || large ? "%" : "fraction";
  }
  if (/°\s?f|fahrenheit/.test(`${plain} ${beside.toLowerCase()} ${format.toLowerCase()}`))
    return "°F";
  return role === "depression" ? "K" : "°C";
}

/** The share of what a label promises, or null when it does not say. */
export function labelledBasis(label: string): "water" | "mix" | null {
  const plain = plainWords(label);
  if (
    /\b(of|in) (the |its |all )?(mix|mass|total|whole|weight|bar|batch)|der (masse|mischung)|gesamt/.test(
      plain,
    )
  )
    return "mix";
  return /\b(of|in) (the |its |all )?water|water (that is )?frozen|frozen water|(des|vom|im) wassers?\b|gefrorenes wasser|wasser (als eis|gefroren)/.test(
    plain,
  )
    ? "water"
    : null;
}
