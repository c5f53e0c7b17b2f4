import type { Language } from "./createGrid";

let translate = (sentence: string): string => sentence;

/** Chooses the language of what the bench tells; the German is loaded when it is first chosen. */
export async function chooseTongue(language: Language): Promise<void> {
  translate =
    language === "de"
      ? (await import("../words/germanSentences")).germanSentence
      : (sentence) => sentence;
}

/** A sentence of the functions or of the bench, in the chosen language. */
export const inTongue = (sentence: string): string => translate(sentence);
