/** What a header, or a cell's number format, says about the numbers of a column. */
export type ColumnMeaning =
  | { readonly role: "amount"; readonly unit: string | null }
  | { readonly role: "other" } // a number of another kind: price, energy
  | { readonly role: "unsaid" };

/** Units as headers write them → as RIME.GRAMS takes them; "%" stands for g per 100 g. */
const UNITS: Readonly<Record<string, string>> = {
  g: "g",
  gr: "g",
  gram: "g",
  grams: "g",
  gramm: "g",
  kg: "kg",
  mg: "mg",
  oz: "oz",
  ounces: "oz",
  lb: "lb",
  lbs: "lb",
  ml: "mL",
  l: "L",
  litre: "L",
  litres: "L",
  liter: "L",
  liters: "L",
  "fl oz": "fl oz",
  cup: "cup",
  cups: "cup",
  tbsp: "tbsp",
  tsp: "tsp",
  piece: "piece",
  pieces: "piece",
  "%": "%",
  percent: "%",
  prozent: "%",
};

const OTHER_KIND =
  /price|cost|preis|kosten|\bpack|packung|gebinde|€|\$|£|\beur\b|\busd\b|\bchf\b|kcal|\bkj\b|energy|energie|°c|temperat/i;
const PER_HUNDRED = /(\/|\bper\b|\bje\b|\bpro\b)\s*100\s*g\b/i;
const PER_SOMETHING = /\/|\bper\b|\bje\b|\bpro\b/i;
const AMOUNT_WORD =
  /amount|quantity|\bqty\b|weight|\bmass\b|menge|gewicht|masse|einwaage|\bshare\b|anteil/i;

const unitOf = (text: string): string | null => UNITS[text.trim().toLowerCase()] ?? null;

/** A unit in brackets, after a comma, as last or as only word: "Amount (g)", "Menge, kg", "Grams". */
function unitIn(header: string): string | null {
  const bracketed = /[([]([^)\]]*)[)\]]/.exec(header)?.[1];
  if (bracketed !== undefined) return unitOf(bracketed);
  const words = header.trim().split(/[\s,;:]+/);
  return unitOf(header) ?? unitOf(words.at(-1) ?? "") ?? unitOf(words.at(0) ?? "");
}

/** Reads a header such as "Amount (g)", "kg", "Menge", "Price per kg". */
export function headerMeaning(header: string): ColumnMeaning {
  if (header.trim() === "") return { role: "unsaid" };
  if (OTHER_KIND.test(header)) return { role: "other" };
  if (PER_HUNDRED.test(header)) return { role: "amount", unit: "%" };
  if (PER_SOMETHING.test(header)) return { role: "other" };
  const unit = unitIn(header);
  if (unit !== null) return { role: "amount", unit };
  return AMOUNT_WORD.test(header) ? { role: "amount", unit: null } : { role: "unsaid" };
}

/** Reads a number format such as 0.0 "g" or 0 %. */
export function formatMeaning(format: string): ColumnMeaning {
  if (/[€$£]/.test(format)) return { role: "other" };
  const quoted = [...format.matchAll(/"([^"]*)"/g)].map(([, text = ""]) => unitOf(text));
  const unit = quoted.find((found) => found !== null) ?? null;
  if (unit !== null) return { role: "amount", unit };
  return format.includes("%") ? { role: "amount", unit: "%" } : { role: "unsaid" };
}

/** True for a word that RIME.GRAMS may know as a unit: what makes a column one of units. */
export const isUnitWord = (text: string): boolean => unitOf(text) !== null;

/** The header of a column that gives each row's unit. */
export const isUnitHeader = (header: string): boolean =>
  /^(unit|units|einheit)$/i.test(header.trim());

/** True for a header that names nothing of its own: blank, a unit, "Amount". */
export const isPlainAmount = (header: string): boolean =>
  header === "" || isUnitWord(header) || AMOUNT_WORD.test(header);
