import { distance } from "fastest-levenshtein";
import { normalName } from "../../catalogue/normalName";
import { badInput, isProblem } from "../../foundation/problem";
import { quoted, shortened } from "../../recipe/namedItem";
import type { Argument } from "./argument";
import { cellArgument } from "./cellArgument";
import { textOf } from "./text";

/** The word among `words` that is spelt most like another. */
export function nearestWord(word: string, words: readonly string[]): string {
  const key = normalName(word);
  const [nearest = ""] = [...words].sort(
    (a, b) => distance(key, normalName(a)) - distance(key, normalName(b)),
  );
  return nearest;
}

/** One of a few words, without regard to case and spacing. */
export function choice<const Word extends string>(
  description: string,
  words: readonly Word[],
  options?: { readonly default: NoInfer<Word> },
): Argument<Word> {
  const byName = new Map(words.map((word) => [normalName(word), word]));
  const expected = quoted(words);
  return cellArgument<Word>({
    description: `${description}: ${words.join(", ")}`,
    optional: options !== undefined,
    fallback: options && { value: options.default },
    expected,
    valueOf: (cell, place) => {
      const given = textOf(cell, place, expected);
      if (isProblem(given)) return given;
      const hint = words.length > 6 ? `; the nearest is "${nearestWord(given, words)}"` : "";
      return (
        byName.get(normalName(given)) ??
        badInput(`${place}: "${shortened(given)}" is not known${hint}; ${expected} is expected.`)
      );
    },
  });
}
