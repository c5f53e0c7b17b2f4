import { distance } from "fastest-levenshtein";
import { ambiguousNames } from "./ambiguousNames";
import type { Ingredient } from "./ingredient";
import { ingredients } from "./ingredients";
import { normalName } from "./normalName";
import type { Solute } from "./solute";
import { solutes } from "./solutes";

/** What a name in a cell stands for. */
export type ItemMatch =
  | { readonly kind: "solute"; readonly solute: Solute }
  | { readonly kind: "ingredient"; readonly ingredient: Ingredient }
  | { readonly kind: "ambiguous"; readonly word: string; readonly choices: readonly string[] }
  | { readonly kind: "unknown"; readonly nearest: readonly string[] };

interface Named {
  readonly name: string;
  readonly aliases: { readonly en: readonly string[]; readonly de: readonly string[] };
}

/** Null: in no language more than in another. */
type NameLanguage = "en" | "de" | null;

/** Every name and alias of the catalogue with what it stands for. No name stands for two things. */
export function* allNames(): Generator<
  readonly [name: string, match: ItemMatch, language: NameLanguage]
> {
  for (const solute of solutes) {
    for (const [name, language] of namesOf(solute)) {
      yield [name, { kind: "solute", solute }, language];
    }
  }
  for (const ingredient of ingredients) {
    for (const [name, language] of namesOf(ingredient)) {
      yield [name, { kind: "ingredient", ingredient }, language];
    }
  }
  for (const [word, choices] of Object.entries(ambiguousNames)) {
    yield [word, { kind: "ambiguous", word, choices }, null];
  }
}

interface IndexedName {
  /** The spelling in which the name is printed. */
  readonly printed: string;
  readonly match: ItemMatch;
  readonly language: NameLanguage;
}

/** Keyed by the compared form. */
const index = new Map<string, IndexedName>();
for (const [printed, match, language] of allNames()) {
  const key = normalName(printed);
  if (!index.has(key)) index.set(key, { printed, match, language });
}

// a column of one misspelt name, or of a thousand, must not be searched again at each recalculation
const misses = new Map<string, ItemMatch>();
const MISSES_KEPT = 2000;

/**
 * Looks a name up, regardless of case, spacing and Unicode form, in English and German. An ambiguous word is
 * answered with its choices; an unknown one with up to three names that resemble it.
 */
export function findItem(name: string): ItemMatch {
  const key = normalName(name);
  const known = index.get(key)?.match ?? misses.get(key);
  if (known !== undefined) return known;
  const miss: ItemMatch = { kind: "unknown", nearest: nearestNames(key) };
  if (misses.size >= MISSES_KEPT) misses.clear();
  misses.set(key, miss);
  return miss;
}

function namesOf({ name, aliases }: Named): readonly (readonly [string, NameLanguage])[] {
  return [
    ...[name, ...aliases.en].map((one) => [one, "en"] as const),
    ...aliases.de.map((one) => [one, "de"] as const),
  ];
}

/** A name is no longer offered when it is this many times as far off as the nearest. */
const FARTHER = 2;

/**
 * Up to three names by spelling, one for each item, in the language of the nearest: at most a third of the
 * letters differ, or a word is shared, and none is much farther off than the nearest.
 */
function nearestNames(key: string): readonly string[] {
  if (key === "") return [];
  const alike = [...index.entries()]
    .map(([name, indexed]) => ({ score: resemblance(key, name), ...indexed }))
    .filter(({ score }) => score <= 1 / 3)
    .sort((a, b) => a.score - b.score);
  const [nearest] = alike;
  const bestOfEach = new Map<unknown, string>();
  for (const { printed, match, language, score } of alike) {
    if (nearest === undefined || score > FARTHER * nearest.score) break;
    if (language !== null && language !== (nearest.language ?? language)) continue;
    const item = itemOf(match);
    if (!bestOfEach.has(item)) bestOfEach.set(item, printed);
  }
  return [...bestOfEach.values()].slice(0, 3);
}

/** 0 for the same word, 1 for nothing in common; whole words shared count as a near miss. */
function resemblance(key: string, name: string): number {
  const spelling = distance(key, name) / Math.max(key.length, name.length);
  const [short, long] = key.length < name.length ? [key, name] : [name, key];
  const holdsWord = short.length >= 4 && ` ${long.replace(/[(),]/g, "")} `.includes(` ${short} `);
  return holdsWord ? Math.min(spelling, 0.3) : spelling;
}

function itemOf(match: ItemMatch): unknown {
  if (match.kind === "solute") return match.solute;
  return match.kind === "ingredient" ? match.ingredient : match;
}
