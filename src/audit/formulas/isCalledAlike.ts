import { normalName } from "../../catalogue/normalName";

const wordsOf = (name: string): ReadonlySet<string> =>
  new Set(normalName(name).match(/\p{L}{3,}/gu) ?? []);

/** Whether all words of one name are in the other: "sugar" is short for "caster sugar". */
export function isCalledAlike(one: string, other: string): boolean {
  const [few, many] = [wordsOf(one), wordsOf(other)].sort((a, b) => a.size - b.size);
  return few !== undefined && few.size > 0 && [...few].every((word) => many?.has(word));
}
