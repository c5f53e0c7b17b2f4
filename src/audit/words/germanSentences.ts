import { germanLanguage } from "../../worksheet/words/germanSentences";
import {
  sentenceTranslator,
  type SentenceLanguage,
} from "../../worksheet/words/sentenceTranslator";
import { recipeFindings } from "./german/recipes";
import { resultFindings } from "./german/results";

const ofIce = {
  "the water only": "nur des Wassers",
  "the whole mix": "der ganzen Mischung",
  "the water": "des Wassers",
  "the mix": "der Mischung",
};
const per = { "100 g of water": "100 g Wasser", "100 g of mix": "100 g Mischung" };

/** What the audit says of a workbook, besides what the functions say, in German. */
export const germanOfAudit: SentenceLanguage = {
  ...germanLanguage,
  sentences: { ...germanLanguage.sentences, ...recipeFindings, ...resultFindings },
  vocabulary: {
    ...germanLanguage.vocabulary,
    iceOf: ofIce,
    iceOf2: ofIce,
    per,
    per2: per,
    way: { ...germanLanguage.vocabulary["way"], more: "mehr", less: "weniger" },
    recipe: { "The recipe": "Das Rezept", "the recipe": "diesem Rezept" },
    summed: { amounts: "die Mengen", numbers: "die Zahlen" },
    side: { before: "davor", after: "dahinter" },
    among: { percentages: "Prozenten", fractions: "Anteilen von 1" },
    kind: { rows: "Zeilen", columns: "Spalten" },
  },
};

const translate = sentenceTranslator(germanOfAudit);

/** A sentence of the audit or of the functions in German; as it is where its German is not known. */
export const germanSentence = (sentence: string): string => translate(sentence) ?? sentence;
