import { germanLanguage } from "../../worksheet/words/germanSentences";
import {
  sentenceTranslator,
  type SentenceLanguage,
} from "../../worksheet/words/sentenceTranslator";
import { fileSentences } from "./german/files";
import { gridSentences } from "./german/grid";

/** What the bench says besides the functions, and they, in German. */
export const germanOfBench: SentenceLanguage = {
  ...germanLanguage,
  sentences: { ...germanLanguage.sentences, ...gridSentences, ...fileSentences },
  vocabulary: {
    ...germanLanguage.vocabulary,
    delimiter: { tabs: "Tabs", semicolons: "Semikola", commas: "Kommas", bars: "Strichen" },
    mark: { comma: "das Komma", point: "der Punkt" },
  },
};

const translate = sentenceTranslator(germanOfBench);

/** A sentence in German; as it is where its German is not known. */
export const germanSentence = (sentence: string): string => translate(sentence) ?? sentence;
