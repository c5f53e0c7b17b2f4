import {
  sentenceTranslator,
  type SentenceLanguage,
} from "../../src/worksheet/words/sentenceTranslator";

/** The templates of a language, besides those of another, that none of the English sentences follows. */
export function leftOverSentences(
  language: SentenceLanguage,
  besides: SentenceLanguage | null,
  english: readonly string[],
): readonly string[] {
  return Object.keys(language.sentences)
    .filter((template) => besides?.sentences[template] === undefined)
    .filter((template) => {
      const alone = sentenceTranslator({ ...language, sentences: { [template]: "found" } });
      return !english.some((sentence) => alone(sentence)?.endsWith("found"));
    });
}
