import { normalName } from "../../catalogue/normalName";
import { outsideValidity } from "../../foundation/problem";
import { shortened } from "../../recipe/namedItem";
import { nearestText } from "./nearestName";

/** Whether a searched word is part of any of the texts. */
export function matchesSearch(search: string, texts: readonly string[]): boolean {
  const key = normalName(search);
  return texts.some((text) => normalName(text).includes(key));
}

/** The refusal of a search without a find, with the name that is spelt most like it. */
export function nothingFound(search: string, named: readonly { readonly name: string }[]) {
  const names = named.map(({ name }) => name);
  return outsideValidity(
    `search: nothing in the catalogue matches "${shortened(search)}"; ${nearestText(search, names)}.`,
  );
}
