import { servingTargets } from "../../catalogue/targets";
import { allergenNames } from "./german/allergenNames";
import { argumentSentences } from "./german/arguments";
import { cautionSentences } from "./german/cautions";
import { ownRangeSentences } from "./german/ownRanges";
import { recipeSentences } from "./german/recipes";
import { targetNotes } from "./german/targets";
import { textureWords } from "./german/textureWords";
import { workingSentences } from "./german/working";
import { sentenceTranslator, type SentenceLanguage } from "./sentenceTranslator";

/** The functions' sentences in German, where they are shown beside the cells. A test finds what it lacks. */
export const germanLanguage: SentenceLanguage = {
  sentences: {
    ...argumentSentences,
    ...recipeSentences,
    ...ownRangeSentences,
    ...cautionSentences,
    ...workingSentences,
    ...targetNotes,
  },
  vocabulary: {
    basis: { water: "des Wassers", mix: "der Mischung" },
    way: { much: "viel", little: "wenig" },
    quantity: {
      "freezing point": "den Gefrierpunkt",
      "ice fraction": "den Eisanteil",
      "water activity": "die Wasseraktivität",
      sweetness: "die Süße",
      "unfrozen solids": "die ungefrorene Trockenmasse",
      solids: "die Trockenmasse",
      fat: "das Fett",
      mass: "die Masse",
      cost: "die Kosten",
    },
    target: Object.fromEntries(
      servingTargets.map(({ name, aliases }) => [name, aliases.de[0] ?? name]),
    ),
    texture: textureWords,
    allergens: allergenNames,
    byMaker: allergenNames,
  },
  row: "Zeile",
  column: "Spalte",
  or: "oder",
  quotes: ["„", "“"],
  decimalMark: ",",
};

const translate = sentenceTranslator(germanLanguage);

/** A sentence of the functions in German; as it is where its German is not known. */
export const germanSentence = (sentence: string): string => translate(sentence) ?? sentence;
