import type { NameLanguage } from "./allNames";
import { isWordOf } from "./isWordOf";
import { nameWords } from "./nameWords";
import { preparationWords, wordsOfSome } from "./preparationWords";
import { wordForms } from "./wordForms";

/** For each form of a word of some name the one that is compared. */
type Forms = ReadonlyMap<string, string>;

/** Names by their words. */
export interface WordIndex<T> {
  readonly forms: Forms;
  /** Null where the words are those of several things. */
  readonly matches: ReadonlyMap<string, T | null>;
  /** The noun of the name behind each key: that of "milk chocolate" is chocolate. */
  readonly nouns: ReadonlyMap<string, string>;
}

interface IndexedName<T> {
  readonly name: string;
  readonly language: NameLanguage;
  readonly match: T;
}

/** More words that may be left out than this are no name. */
const MOST_LEFT_OUT = 5;

const isOfAll = isWordOf(preparationWords);
const isOfSome = isWordOf(wordsOfSome);

/** Which of the forms of a word is compared. */
function compared(word: string, forms: Forms): string {
  const known = wordForms(word, null).find((form) => forms.has(form));
  return known === undefined ? word : (forms.get(known) ?? word);
}

const isNumber = (word: string): boolean => /\d/.test(word);

/** Written as one word, numbers last. */
function asOne(words: readonly string[]): string {
  return [...words.filter((word) => !isNumber(word)), ...words.filter(isNumber)].join("");
}

/** In any order, and written as one word. */
function keysOf(words: readonly string[], forms: Forms): string[] {
  if (words.length === 0) return [];
  const inOrder = words.map((word) => compared(word, forms));
  return [[...new Set(inOrder)].sort().join(" "), compared(asOne(words), forms)];
}

const FIRST_PART = /^([^,;([]+)[,;([]/;

/** The last word before a comma or bracket, of those that count. */
function nounOf(name: string, counted: readonly string[], forms: Forms): string {
  const [, first] = FIRST_PART.exec(name) ?? [];
  const among = first === undefined ? counted : nameWords(first);
  const noun = among.findLast((word) => counted.includes(word) && !isNumber(word));
  return compared(noun ?? counted.at(-1) ?? "", forms);
}

function comparedForms(
  names: readonly { words: readonly string[]; language: NameLanguage }[],
): Forms {
  const forms = new Map<string, string>();
  for (const { words, language } of names) {
    for (const word of [...words, asOne(words)]) {
      const all = wordForms(word, language);
      const known = all.map((form) => forms.get(form)).find((one) => one !== undefined);
      for (const form of all) if (!forms.has(form)) forms.set(form, known ?? word);
    }
  }
  return forms;
}

/** An index of names by their words. `thingOf` tells what two names for the same have in common. */
export function wordIndex<T>(
  names: readonly IndexedName<T>[],
  thingOf: (match: T) => unknown,
): WordIndex<T> {
  const read = names.map((each) => ({ ...each, words: nameWords(each.name) }));
  const forms = comparedForms(read);
  const matches = new Map<string, T | null>();
  const nouns = new Map<string, string>();
  for (const { name, match, words } of read) {
    for (const key of new Set(keysOf(words, forms))) {
      nouns.set(key, nounOf(name, words, forms));
      const other = matches.get(key);
      const isOther = other !== undefined && (other === null || thingOf(other) !== thingOf(match));
      matches.set(key, isOther ? null : match);
    }
  }
  return { forms, matches, nouns };
}

/** The words of a name with none, one, two … of those left out that need not be there. */
function withoutPreparation(words: readonly string[]): (readonly [string[], string[]])[] {
  const free = words.filter((word) => isOfAll(word) || isOfSome(word));
  if (free.length > MOST_LEFT_OUT) return [];
  return Array.from({ length: 2 ** free.length }, (_, bits) =>
    free.filter((_word, at) => (bits >> at) % 2 === 1),
  )
    .sort((one, other) => one.length - other.length)
    .map((dropped) => [words.filter((word) => !dropped.includes(word)), dropped]);
}

/**
 * What the words of a name stand for in an index, in any order, written as one or apart, with as few words of
 * preparation left out as possible: undefined for nothing, null for several things. `isFree` tells which words may be
 * left out of the name of what.
 */
export function matchByWords<T>(
  { forms, matches, nouns }: WordIndex<T>,
  name: string,
  isFree: (word: string, match: T) => boolean = isOfAll,
): T | null | undefined {
  // Chocolate milk is no milk chocolate.
  const isOther = (key: string, words: readonly string[]) => {
    if (!key.includes(" ")) return false;
    const [noun, other] = [nounOf(name, words, forms), nouns.get(key) ?? ""];
    return noun !== other && matches.has(noun) && matches.has(other);
  };
  for (const [words, dropped] of withoutPreparation(nameWords(name))) {
    for (const key of keysOf(words, forms)) {
      const match = matches.get(key);
      if (match === undefined || isOther(key, words)) continue;
      if (match === null) return null;
      if (dropped.every((word) => isFree(word, match))) return match;
    }
  }
  return undefined;
}
