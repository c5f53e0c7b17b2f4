import { germanOfAudit } from "../../src/audit/words/germanSentences";
import { germanLanguage } from "../../src/worksheet/words/germanSentences";
import { sentenceTranslator } from "../../src/worksheet/words/sentenceTranslator";
import { leftOverSentences } from "../worksheet/leftOverSentences";
import { sourceTemplates } from "../worksheet/sourceTemplates";
import { findingsOf } from "./findingsOf";
import { freshValues } from "./freshValues";
import { ruleCases } from "./ruleCases";

const german = sentenceTranslator(germanOfAudit);

/** Everything that the examples of all rules have the audit say. */
const said = new Set(
  ruleCases
    .flatMap(({ rows, extras, workbook, fresh }) =>
      findingsOf(rows, extras, workbook, freshValues(fresh ?? {})),
    )
    .flatMap(({ message, fix, effect }) => [message, fix ?? "", effect?.quantity ?? ""])
    .filter((text) => text !== ""),
);

/** Sentences that are still shown in English. This list may only shrink. */
const WITHOUT_GERMAN: readonly RegExp[] = [];

/** Names of cells and of ingredients, formulas and quoted words are the workbook's own. */
const ownWords = (sentence: string): string =>
  sentence.replace(/„[^“]*“/g, "").replace(/=[^\s]+/g, "");

test("every finding of the rules' examples has its German, to the last part", () => {
  expect(said.size).toBeGreaterThan(200);
  const wrong = [...said].flatMap((sentence) => {
    if (WITHOUT_GERMAN.some((each) => each.test(sentence))) return [];
    const answer = german(sentence);
    const isGerman =
      answer !== null &&
      !/\b(?:the|is|of|and|or|with|are|not|above|below|row|column)\b/.test(ownWords(answer));
    return isGerman ? [] : [`${sentence} → ${answer}`];
  });
  expect(wrong).toEqual([]);
});

test("and no German is left over from an English sentence that is gone", () => {
  const english = [...sourceTemplates("audit").map(({ sample }) => sample), ...said];
  expect(leftOverSentences(germanOfAudit, germanLanguage, english)).toEqual([]);
});
