import type { Words } from "./words";

/** How strong a drink is, and the ethanol in it. */
export const drinkWords = {
  strength: /\babv\b|% ?vol|vol\.? ?-?%|alcohol by volume|volumenprozent/,
  ethanol: /\b(ethanol|pure alcohol|alcohol|alkohol|reiner alkohol)\b.*(\bg\b|grams?|gramm|mass)/,
} as const satisfies Readonly<Record<string, Words>>;
