import { findRecipes } from "../../src/audit/recipes/findRecipes";
import { readCorrections } from "../../src/audit/recipes/corrections/readCorrections";
import { CORRECTIONS_MARK } from "../../src/audit/recipes/corrections/recipeCorrection";
import { saidOf } from "../../src/audit/recipes/corrections/saidOf";
import { storedCorrections } from "../../src/audit/recipes/corrections/storedCorrections";
import { germanOfAudit } from "../../src/audit/words/germanSentences";
import { germanLanguage } from "../../src/worksheet/words/germanSentences";
import { sentenceTranslator } from "../../src/worksheet/words/sentenceTranslator";
import { leftOverSentences } from "../worksheet/leftOverSentences";
import { sourceTemplates } from "../worksheet/sourceTemplates";
import { isProblem } from "../../src/foundation/problem";
import { bookOf } from "./bookOf";
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

const isGerman = (answer: string | null): answer is string =>
  answer !== null &&
  !/\b(?:the|is|of|and|or|with|are|not|above|below|row|column)\b/.test(ownWords(answer));

test("every finding of the rules' examples has its German, to the last part", () => {
  expect(said.size).toBeGreaterThan(200);
  const wrong = [...said].flatMap((sentence) => {
    if (WITHOUT_GERMAN.some((each) => each.test(sentence))) return [];
    const answer = german(sentence);
    return isGerman(answer) ? [] : [`${sentence} → ${answer}`];
  });
  expect(wrong).toEqual([]);
});

describe("What is said of the user's corrections has its German, to the last part:", () => {
  const entry = { sheet: "Ices", range: "A1:C4", recipe: "down" } as const;
  const ices = [
    ["Ingredient", "Amount (g)"],
    ["Water", 500],
    ["Sucrose", 150],
  ];
  const kept = [[CORRECTIONS_MARK], [], ["Ices", "A1:C4", "sideways"], ["Ices", "A:C", "down"]];
  const book = bookOf({ Ices: ices, Kept: kept });

  test.each([
    ["another sheet", { sheet: "Old" }],
    ["no sheet", { sheet: "", range: "" }],
    ["no range", { range: "A" }],
    ["no columns", { names: "B!" }],
    ["columns outside", { amounts: "Z" }],
    ["rows outside", { recipe: "across", names: "9" }],
    ["no rows", { recipe: "across", names: "x" }],
    ["names as amounts", { names: "A", amounts: "A" }],
    ["two columns of names", { names: "A:B" }],
    ["no unit", { unit: "stone" }],
  ] as const)("a refusal for %s", (_what, change) => {
    const refused = saidOf(book, { ...entry, ...change });
    const answer = isProblem(refused) ? german(refused.message) : null;
    expect([answer, isGerman(answer)]).toEqual([answer, true]);
  });

  test("a refusal for its shape, in which the words to be written stay as they are", () => {
    const refused = readCorrections([{ ...entry, recipe: "sideways" }]);
    expect(isProblem(refused) && german(refused.message)).toBe(
      'Berichtigungen haben die Form [{"sheet": "Ices", "range": "A1:C9", "recipe": "down", "across" or "none", "names": "A", "amounts": "C", "unit": "g"}], die letzten drei nach Bedarf; Eintrag 1 hat sie nicht, nämlich bei „recipe“.',
    );
  });

  test("notes on what is not followed, and on rows that cannot be read", () => {
    const said = [
      { ...entry, sheet: "Old" },
      { ...entry, heading: "Cherry ice" },
      { ...entry, range: "F1:G9" },
      { ...entry, recipe: "none" },
    ] as const;
    const notes = [...findRecipes(book, said).notes, ...storedCorrections(book).notes];
    expect(notes).toHaveLength(6);
    for (const note of notes) expect([note, german(note) !== null]).toEqual([note, true]);
    expect(notes.map(german).slice(0, 4).filter(isGerman)).toHaveLength(4);
    expect(notes.map(german).at(-1)).toBe(
      "Zeile 4 von Kept: Die Berichtigung von Ices!A:C gilt nicht: ein Bereich wird geschrieben wie A1:C9.",
    );
  });
});

test("every problem that the audit says of a workbook has its German", () => {
  const missing = sourceTemplates("audit")
    .filter(({ isProblem: isSaid, file }) => isSaid && !file.includes("report/"))
    .filter(({ sample }) => / /.test(sample) && german(sample) === null)
    .map(({ file, sample }) => `${file}: ${sample}`);
  expect(missing).toEqual([]);
});

test("and no German is left over from an English sentence that is gone", () => {
  const english = [...sourceTemplates("audit").map(({ sample }) => sample), ...said];
  expect(leftOverSentences(germanOfAudit, germanLanguage, english)).toEqual([]);
});
