import { allNames } from "./allNames";
import type { KnownMatch } from "./itemMatch";
import { thingOf } from "./thingOf";
import { matchByWords, wordIndex, type WordIndex } from "./wordIndex";

let index: WordIndex<KnownMatch> | undefined;

const isNut = (match: KnownMatch): boolean =>
  match.kind === "ingredient" && match.ingredient.group === "nuts and seeds";

/** What the words of a name stand for, in whatever order, number and preparation; undefined for nothing, or for several things. */
export function itemByWords(name: string): KnownMatch | undefined {
  index ??= wordIndex(
    [...allNames()].map(([name, match, language]) => ({ name, match, language })),
    thingOf,
  );
  return matchByWords(index, name, isNut) ?? undefined;
}
