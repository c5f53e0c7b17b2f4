import { remembered } from "../../../foundation/remembered";

/** Units a recipe's amounts may have. "%" and "fraction" are shares of the mix; the last three go by bulk density. */
export type MassUnit = "g" | "kg" | "mg" | "oz" | "lb";
export type ShareUnit = "%" | "fraction";
/** Anything else is handed to GRAMS as written: "cup", "tbsp", "mL", "piece"… */
export type AmountUnit = MassUnit | ShareUnit | { readonly household: string };

/** By definition (NIST Handbook 44, appendix C). */
const GRAMS_PER_UNIT: Readonly<Record<MassUnit, number>> = {
  g: 1,
  kg: 1000,
  mg: 0.001,
  oz: 28.349523125,
  lb: 453.59237,
};

const MASS_WORDS: readonly (readonly [RegExp, MassUnit])[] = [
  [/^(kgs?|kilos?|kilogramm?s?)$/, "kg"],
  [/^(g|gr|gms?|gramm?s?)$/, "g"],
  [/^(mg|milligramm?s?)$/, "mg"],
  [/^(oz|ounces?|unzen?)$/, "oz"],
  [/^(lbs?|pounds?|pfund)$/, "lb"],
];

const HOUSEHOLD =
  /^((metric |us |au )?cups?|tassen?|(au )?tbsps?|tablespoons?|el|tsps?|teaspoons?|tl|fl\.? ?oz|ml|l|litres?|liters?|cl|dl|pieces?|pcs?|stück|stk|pints?|quarts?)\.?$/;

const PERCENT =
  /^(%|per ?cent|pct\.?|prozent|proz\.?|mass(en)? ?-?%|mass(en)? ?-?(percent|prozent)|(ma|wt|gew)\.? ?-?%|% ?\(?(w\/w|m\/m)\)?|(%|per ?cent) (by|of) (the )?(mass|weight|mix|total|whole)|(%|prozent) der (masse|mischung))$/;

const WORDS_KEPT = 5000;

/** The unit a word means, in brackets or not, or null. */
export const unitFromWord = remembered(WORDS_KEPT, (word): AmountUnit | null => {
  const plain = word
    .trim()
    .toLowerCase()
    .replace(/^[([]\s*([^)\]]*?)\s*[)\]]$/, "$1");
  const mass = MASS_WORDS.find(([pattern]) => pattern.test(plain));
  if (mass !== undefined) return mass[1];
  if (PERCENT.test(plain)) return "%";
  return HOUSEHOLD.test(plain) ? { household: plain.replace(/\.$/, "") } : null;
});

/** "g for 2 kg", "kg per batch": the first word is the unit, and what follows says of what. */
const UNIT_FIRST =
  /(?:^|, )((?:fl )?\S+?)\s*(?:\/(?!mol|ml|cm)|\((?=.*\s)|\b(?:for|per|pro|je|auf|of|in|für|each|every|jede[rsnm]?)\b)/;
const UNIT_LAST = /(?:^|\bin\b|[,/;:]|\s)\s*([^\s,/;:]+)$/;

const firstWord = (text: string): string => UNIT_FIRST.exec(text.trim().toLowerCase())?.[1] ?? "";

/** The unit that words begin with, when they go on to say of what: "Gramm je Ansatz", "g per batch". */
export const leadingUnit = (text: string): AmountUnit | null =>
  /\d/.test(text) ? null : unitFromWord(firstWord(text));

/** The unit a header carries: "Amount (g)", "Weight in kg", "g", "Share, %". Null when it names none. */
export const unitFromHeader = remembered(WORDS_KEPT, (header): AmountUnit | null => {
  const plain = header.trim().toLowerCase();
  const bracketed = /[([]\s*(?:in )?([^)\]]+?)\s*[)\]]/.exec(plain)?.[1] ?? "";
  // After a number it is how much of something else: "for 10 kg", "one kilo".
  const isOfOther = /(\d\s*|\b(one|eine?|half|halbes|per|pro|je) )\S+$/.test(plain);
  const last = isOfOther ? "" : (UNIT_LAST.exec(plain)?.[1] ?? "");
  const unit =
    unitFromWord(bracketed) ??
    unitFromWord(plain) ??
    leadingUnit(bracketed) ??
    unitFromWord(firstWord(plain)) ??
    unitFromWord(last);
  if (unit !== null) return unit;
  if (/\b(grams?|gramm)\b/.test(plain)) return "g";
  return /%|\b(per ?cent|pct|prozent)\b/.test(plain) ? "%" : null;
});

/** The unit a number format shows: `0 "g"`, `0.0 %`. Null when it shows none. */
export function unitFromFormat(format: string | undefined): AmountUnit | null {
  if (format === undefined) return null;
  const quoted = /"\s*([^"]+?)\s*"/.exec(format)?.[1];
  if (quoted !== undefined) return unitFromWord(quoted);
  // A format with % shows the fraction 0.12 as 12 %.
  return /%/.test(format.replace(/\\./g, "")) ? "fraction" : null;
}

export const isShare = (unit: AmountUnit): unit is ShareUnit => unit === "%" || unit === "fraction";

export const isMass = (unit: AmountUnit): unit is MassUnit =>
  typeof unit === "string" && !isShare(unit);

export const gramsPer = (unit: MassUnit): number => GRAMS_PER_UNIT[unit];

export const unitText = (unit: AmountUnit): string =>
  typeof unit === "string" ? unit : unit.household;

/** The unit of mass that a header or a word names, or null. */
export const massIn = (text: string): MassUnit | null => {
  const unit = unitFromHeader(text) ?? unitFromWord(text);
  return unit !== null && isMass(unit) ? unit : null;
};
