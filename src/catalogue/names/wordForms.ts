import type { NameLanguage } from "./allNames";

/** These are parts of a mix, and in the singular an ingredient. */
const ANOTHER_IN_PLURAL = /^(sugars|salts|acids|fats|waters|zuckers|salze|säuren|fette)$/;

function english(word: string): string[] {
  if (!/[^su]s$/.test(word)) return [];
  if (word.endsWith("ies")) return [`${word.slice(0, -3)}y`];
  const singular = word.slice(0, -1);
  return /(o|ch|sh|x)es$/.test(word) ? [singular, word.slice(0, -2)] : [singular];
}

function german(word: string): string[] {
  const forms: string[] = [];
  if (/[nes]$/.test(word)) forms.push(word.slice(0, -1));
  if (/e[nrsm]$/.test(word)) forms.push(word.slice(0, -2));
  return forms.filter(({ length }) => length > 3);
}

/**
 * The word itself, and what is left of it without its endings of number and case in one language or (null) in both:
 * two forms of one word have one of these in common.
 */
export function wordForms(word: string, language: NameLanguage): readonly string[] {
  if (/[\d%]/.test(word) || ANOTHER_IN_PLURAL.test(word)) return [word];
  const forms = [
    ...(language === "de" ? [] : english(word)),
    ...(language === "en" ? [] : german(word)),
  ];
  return [word, ...forms.filter(({ length }) => length > 2)];
}
