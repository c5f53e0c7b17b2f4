/** What a number in a price column buys. */
export type PriceBasis = "kg" | "100 g" | "g" | "row";

/** Grams that a price of each basis is for; a row's price is for all of the row. */
export const GRAMS_BOUGHT: Readonly<Record<Exclude<PriceBasis, "row">, number>> = {
  kg: 1000,
  "100 g": 100,
  g: 1,
};

const PRICE_WORD = /price|preis|cost|kosten|[€$£]|\b(eur|usd|chf|gbp)\b/i;
const PER = String.raw`(\/|\bper\b|\bje\b|\bpro\b|\bof\b|\bvon\b|\bfor\b|\bfür\b)\s*`;
const BASES: readonly (readonly [RegExp, PriceBasis])[] = [
  [new RegExp(`${PER}100\\s*g\\b`, "i"), "100 g"],
  [new RegExp(`${PER}(1\\s*)?kg\\b`, "i"), "kg"],
  [new RegExp(`${PER}(1\\s*)?g\\b`, "i"), "g"],
  [/\b(row|line|total|zeile|gesamt|summe)\b/i, "row"],
];

export const isPriceHeader = (header: string): boolean => PRICE_WORD.test(header);

/** "Price per kg", "€/kg", "Preis je 100 g" → what its numbers buy; null where the header leaves that open. */
export const priceBasis = (header: string): PriceBasis | null =>
  isPriceHeader(header) ? (BASES.find(([pattern]) => pattern.test(header))?.[1] ?? null) : null;

/** What makes a column's numbers prices of 1 kg; null for a header that does not say kg or 100 g. */
export function perKgFactor(header: string): number | null {
  const basis = priceBasis(header);
  return basis === "kg" || basis === "100 g" ? GRAMS_BOUGHT.kg / GRAMS_BOUGHT[basis] : null;
}
