import { distance } from "fastest-levenshtein";
import { normalName } from "../../catalogue/normalName";

/** With more of its letters wrong than this, a word resembles nothing. */
const MOST_WRONG = 0.5;

/** The word among `words` that is spelt most like another; null when none resembles it. */
export function nearestName(word: string, words: readonly string[]): string | null {
  const key = normalName(word);
  const wrongIn = (name: string) =>
    distance(key, normalName(name)) / Math.max(key.length, normalName(name).length, 1);
  const [nearest] = words
    .map((name) => ({ name, wrong: wrongIn(name) }))
    .sort((a, b) => a.wrong - b.wrong);
  return nearest !== undefined && nearest.wrong <= MOST_WRONG ? nearest.name : null;
}

/** The end of a refusal: which name may have been meant, else what is said otherwise. */
export function nearestText(
  word: string,
  words: readonly string[],
  otherwise = "no name resembles it",
): string {
  const nearest = nearestName(word, words);
  return nearest === null ? otherwise : `the nearest name is "${nearest}"`;
}
