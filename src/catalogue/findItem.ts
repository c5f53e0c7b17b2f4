import { remembered } from "../foundation/remembered";
import { distance } from "fastest-levenshtein";
import type { ItemMatch } from "./names/itemMatch";
import { knownItem } from "./names/knownItem";
import { printedNames } from "./names/printedNames";
import { thingOf } from "./names/thingOf";
import { normalName } from "./normalName";

// A column of one misspelt name, or of a thousand, must not be searched again at each recalculation.
const MISSES_KEPT = 2000;
const missed = remembered(MISSES_KEPT, (name): ItemMatch => ({
  kind: "unknown",
  nearest: nearestNames(normalName(name)),
}));

/**
 * Looks a name up in English and German. An ambiguous word is answered with its choices; an unknown one with up to
 * three names that resemble it.
 */
export const findItem = (name: string): ItemMatch => knownItem(name) ?? missed(name);

/** A name is no longer offered when it is this many times as far off as the nearest. */
const FARTHER = 2;

/**
 * Up to three names by spelling, one for each item, in the language of the nearest: at most a third of the
 * letters differ, or a word is shared, and none is much farther off than the nearest.
 */
function nearestNames(key: string): readonly string[] {
  if (key === "") return [];
  const alike = [...printedNames]
    .map(([name, printed]) => ({ score: resemblance(key, name), ...printed }))
    .filter(({ score }) => score <= 1 / 3)
    .sort((a, b) => a.score - b.score);
  const [nearest] = alike;
  const bestOfEach = new Map<unknown, string>();
  for (const { printed, match, language, score } of alike) {
    if (nearest === undefined || score > FARTHER * nearest.score) break;
    if (language !== null && language !== (nearest.language ?? language)) continue;
    const item = thingOf(match);
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
