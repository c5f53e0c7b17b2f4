import { normalName } from "../../catalogue/normalName";
import { badInput, isProblem } from "../../foundation/problem";
import { quoted, shortened } from "../../recipe/namedItem";
import type { Argument } from "./argument";
import { cellArgument } from "./cellArgument";
import { nearestText } from "./nearestName";
import { textOf } from "./text";

/** A list so long is not read out when one of it is likely meant. */
const LONG_LIST = 6;

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
      const known = byName.get(normalName(given));
      if (known !== undefined) return known;
      const wanted = `${expected} is expected`;
      const meant = words.length > LONG_LIST ? nearestText(given, words, wanted) : wanted;
      return badInput(`${place}: "${shortened(given)}" is not known; ${meant}.`);
    },
  });
}
