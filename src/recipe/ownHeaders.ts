import { distance } from "fastest-levenshtein";
import { findItem } from "../catalogue/findItem";
import { normalName } from "../catalogue/normalName";
import type { Solute } from "../catalogue/solute";
import { badInput, type Problem } from "../foundation/problem";
import { quoted, shortened } from "./namedItem";

const ENGLISH = [
  ...["name", "same as", "water", "solids", "brix", "fat", "protein", "milk solids", "sugars"],
  ...["abv", "ash", "inert", "g per mL", "g per piece", "allergens", "cautions", "source"],
] as const;

export type OwnHeader = (typeof ENGLISH)[number];

const GERMAN: Readonly<Record<string, OwnHeader>> = {
  wie: "same as",
  "dasselbe wie": "same as",
  wasser: "water",
  trockenmasse: "solids",
  fett: "fat",
  eiweiß: "protein",
  milchtrockenmasse: "milk solids",
  zucker: "sugars",
  asche: "ash",
  "g je ml": "g per mL",
  "g je stück": "g per piece",
  allergene: "allergens",
  hinweise: "cautions",
  quelle: "source",
};

const OWN: ReadonlyMap<string, OwnHeader> = new Map([
  ...Object.entries(GERMAN).map(([header, meant]) => [normalName(header), meant] as const),
  ["sugar", "sugars"],
  ["milk solids-not-fat", "milk solids"],
  ["g/ml", "g per mL"],
  ["g/piece", "g per piece"],
  ["allergen", "allergens"],
  ["caution", "cautions"],
  ...ENGLISH.map((header) => [normalName(header), header] as const),
]);

/** What a column of the own-ingredients range holds; null when it is no business of ours (a price). */
export type OwnColumn = OwnHeader | { readonly solute: Solute } | null;

/** "fat (g)", "fat, g/100 g", "fat %", "fat:" and, with a mark of a note, "fat*" are fat. */
const withoutUnit = (key: string): string =>
  key
    .replace(/\s*[:*†‡]+$/, "")
    .replace(/\s*:?\s*[([].*[)\]]$/, "")
    .replace(/[, ]*(%| g(\/| per )100 ?g|[, ]g| °bx)$/, "");

/** Reads a header; a word that is nearly one of ours is an error, since its numbers would be lost. */
export function ownColumn(header: string, place: string): OwnColumn | Problem {
  const key = withoutUnit(normalName(header));
  const known = OWN.get(key);
  if (known !== undefined) return known;
  const match = findItem(key);
  if (match.kind === "solute") return { solute: match.solute };
  if (match.kind === "ambiguous") {
    return badInput(
      `${place}: the header "${shortened(header)}" can mean several things; write ${quoted(match.choices)}.`,
    );
  }
  const near = [...OWN.keys()].find(
    (word) => distance(word, key) <= Math.max(word.length, key.length) / 4,
  );
  const meant = near === undefined ? soluteNear(match) : OWN.get(near);
  return meant === undefined
    ? null
    : badInput(
        `${place}: the header "${shortened(header)}" is not known; the nearest is "${meant}".`,
      );
}

const soluteNear = (match: ReturnType<typeof findItem>): string | undefined =>
  match.kind === "unknown"
    ? match.nearest.find((name) => findItem(name).kind === "solute")
    : undefined;
