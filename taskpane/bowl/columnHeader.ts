import { columnRole } from "../../src/audit/recipes/headings/columnRole";
import {
  unitFromFormat,
  unitFromHeader,
  unitFromWord,
  type AmountUnit,
} from "../../src/audit/recipes/amounts/unit";
import { findMeasure } from "../../src/catalogue/findMeasure";

/** What a header, or a cell's number format, says about the numbers of a column. */
export type ColumnMeaning =
  | { readonly role: "amount"; readonly unit: string | null }
  | { readonly role: "other" } // a number of another kind: price, energy
  | { readonly role: "unsaid" };

const PER_HUNDRED = /(\/|\bper\b|\bje\b|\bpro\b)\s*100\s*g\b/i;
const AMOUNT_WORD =
  /amount|quantity|\bqty\b|weight|\bmass\b|menge|gewicht|masse|einwaage|\bshare\b|anteil/i;

/** A unit as RIME.GRAMS calls it; "%" stands for g per 100 g. */
function unitName(unit: AmountUnit | null): string | null {
  if (unit === null || typeof unit === "string") return unit === "fraction" ? "%" : unit;
  return findMeasure(unit.household)?.name ?? unit.household;
}

/** Reads a header such as "Amount (g)", "kg", "Menge", "Price per kg", as the read-through does. */
export function headerMeaning(header: string): ColumnMeaning {
  const role = columnRole(header);
  const isOfMix = role === "amount" || role === "other";
  if (isOfMix && PER_HUNDRED.test(header)) return { role: "amount", unit: "%" };
  if (role === "amount") return { role, unit: unitName(unitFromHeader(header)) };
  return { role: role === null ? "unsaid" : "other" };
}

/** Reads what stands before a row of amounts: a recipe's own name, unless it is a row of prices. */
export const titleMeaning = (title: string): ColumnMeaning => ({
  role: columnRole(title) === "price" ? "other" : "unsaid",
});

/** Reads a number format such as 0.0 "g" or 0 %. */
export function formatMeaning(format: string): ColumnMeaning {
  if (/[€$£]/.test(format)) return { role: "other" };
  const unit = unitName(unitFromFormat(format));
  return unit === null ? { role: "unsaid" } : { role: "amount", unit };
}

/** True for a word that RIME.GRAMS may know as a unit: what makes a column one of units. */
export const isUnitWord = (text: string): boolean => unitFromWord(text) !== null;

/** The header of a column that gives each row's unit. */
export const isUnitHeader = (header: string): boolean => columnRole(header) === "unit";

/** True for a header that names nothing of its own: blank, a unit, "Amount". */
export const isPlainAmount = (header: string): boolean =>
  header === "" || isUnitWord(header) || AMOUNT_WORD.test(header);
