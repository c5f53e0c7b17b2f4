import { matchByWords, wordIndex, type WordIndex } from "../catalogue/names/wordIndex";
import type { Result } from "../foundation/result";
import type { Item } from "./item";
import type { OwnIngredients } from "./namedItem";

const indices = new WeakMap<OwnIngredients, WordIndex<Result<Item>>>();

/** What the words of a name stand for among the user's own ingredients: undefined for nothing, null for several of them. */
export function ownByWords(own: OwnIngredients, name: string): Result<Item> | null | undefined {
  if (own.size === 0) return undefined;
  const names = () => [...own].map(([one, match]) => ({ name: one, match, language: null }));
  const index = indices.get(own) ?? wordIndex(names(), (item) => item);
  indices.set(own, index);
  return matchByWords(index, name);
}
