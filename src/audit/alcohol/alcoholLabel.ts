import { remembered } from "../../foundation/remembered";
import { plainWords } from "../recipes/headings/plainWords";
import { isMass, unitFromHeader } from "../recipes/amounts/unit";

/** What a heading or label says of alcohol: its strength by volume, its mass, its share of the mass, the water beside it. */
export type AlcoholLabel = "strength" | "weak strength" | "mass" | "share" | "water";

const ALCOHOL = /alcohol|ethanol|alkohol|weingeist|\betoh\b|\bal[ck]\b/;
const BY_VOLUME =
  /\babv\b|% ?\(?(by )?vol|\bvol(ume|umen)?\.? ?-? ?(%|prozent|percent|per cent|anteil)|by volume|\balc\.? ?(\/|by) ?vol|v\/v|volumenprozent/;
const BY_MASS =
  /by (mass|weight)|w\/w|m\/m|\bmass(en)?[ -]?(%|fraction|share|per ?cent|prozent|anteil)|\bgew(ichts)?\.?[ -]?(%|prozent|anteil)|\bma\.? ?-?%|(%|per ?cent|prozent) ?\(?(of the )?(mass|weight|masse|gew)/;
const STRENGTH = /strength|stärke|alkoholgehalt|alcohol content|^proof spirit/;
const SHARE = /%|per ?cent|prozent|fraction|\banteil/;
const WATER = /\b(water|wasser)\b/;
/** "rum 40 %" names a drink; "free of alcohol" and "price per litre of alcohol" are about something else. */
const OTHER_THING =
  /\d ?%|-?free\b|frei\b|price|preis|cost|kosten|€|boiled|\bloss\b|per (portion|glass)|je (portion|glas)/;
const LONGEST = 60;

const LABELS_KEPT = 500_000;

/** What a label says of alcohol, or null. */
export const alcoholLabel = remembered(LABELS_KEPT, (label) =>
  label.length > LONGEST ? null : labelOf(plainWords(label)),
);

function isInMass(plain: string): boolean {
  const unit = unitFromHeader(plain);
  return typeof unit === "string" && isMass(unit);
}

function labelOf(plain: string): AlcoholLabel | null {
  if (OTHER_THING.test(plain)) return null;
  const isAlcohol = ALCOHOL.test(plain);
  if (isAlcohol && BY_MASS.test(plain)) return "share";
  if (BY_VOLUME.test(plain)) return "strength";
  if (isAlcohol && isInMass(plain)) return "mass";
  if (STRENGTH.test(plain) || (isAlcohol && SHARE.test(plain))) return "weak strength";
  if (isAlcohol) return "mass";
  return WATER.test(plain) && isInMass(plain) ? "water" : null;
}

/** What is drunk is sold by its strength by volume: that is what its label has to say. */
const DRINK =
  /\b(rum|vodka|wodka|gin|whisk(e)?y|brandy|cognac|spirits?|wine|port|sherry|vermouth|wermut|beer|cider|tequila|bitters|champagne|sekt|prosecco|amaretto|kirsch|korn)\b|liqueur|likör|wein\b|bier\b|brand\b|schnaps|spirituose|absinth/i;

export const namesDrink = (name: string): boolean => DRINK.test(name);

/** The strength that stands in a drink's name, in % vol; null where none does. */
export function strengthInName(name: string): number | null {
  const [, digits] = /(\d+(?:[.,]\d+)?)\s*(?:%|vol)/i.exec(name) ?? [];
  return digits === undefined ? null : Number(digits.replace(",", "."));
}
