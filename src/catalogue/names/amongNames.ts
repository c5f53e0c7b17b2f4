import { normalName } from "../normalName";
import { spelledItem } from "./spelledItem";
import { matchByWords, wordIndex } from "./wordIndex";

/** Tells whether a name is one of the user's own, as it is spelled or, where it is no name of the catalogue, by its words. */
export function amongNames(names: readonly string[]): (name: string) => boolean {
  const spelled = new Set(names.map(normalName));
  const worded = wordIndex(
    names.map((name) => ({ name, match: name, language: null })),
    normalName,
  );
  const isWorded = (name: string) =>
    spelledItem(name) === undefined && typeof matchByWords(worded, name) === "string";
  return (name) => spelled.has(normalName(name)) || (names.length > 0 && isWorded(name));
}
