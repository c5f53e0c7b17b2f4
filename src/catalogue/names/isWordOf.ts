import { wordForms } from "./wordForms";

/** Tells whether a word, in any number and case, is one of a list. */
export function isWordOf(list: readonly string[]): (word: string) => boolean {
  const forms = new Set(list.flatMap((word) => wordForms(word, null)));
  return (word) => wordForms(word, null).some((form) => forms.has(form));
}
