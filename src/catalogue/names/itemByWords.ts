import { allNames } from "./allNames";
import { goesWithoutSaying } from "./goesWithoutSaying";
import type { KnownMatch } from "./itemMatch";
import { ofState } from "./ofState";
import { spelledItem } from "./spelledItem";
import { thingOf } from "./thingOf";
import { matchByWords, wordIndex, type WordIndex } from "./wordIndex";

let index: WordIndex<KnownMatch> | undefined;

/** What the words of a name stand for, in whatever order, number and preparation; undefined for nothing, or for several things. */
export function itemByWords(name: string): KnownMatch | undefined {
  index ??= wordIndex(
    [...allNames()].map(([name, match, language]) => ({ name, match, language })),
    thingOf,
  );
  const match = matchByWords(index, name, goesWithoutSaying) ?? undefined;
  return match && ofState(name, match, spelledItem);
}
