import { germanOfBench } from "../../src/bench/words/germanSentences";
import { errorSentence } from "../../src/workbook/univer/errorSentence";
import { sentenceTranslator } from "../../src/worksheet/words/sentenceTranslator";
import { germanLanguage } from "../../src/worksheet/words/germanSentences";
import { leftOverSentences } from "../worksheet/leftOverSentences";
import { sourceTemplates } from "../worksheet/sourceTemplates";

const german = sentenceTranslator(germanOfBench);
/** Told by the audit's command line only, which speaks English. */
const OF_THE_AUDIT = ["workbook/evaluate.ts", "workbook/feeding.ts", "workbook/reasonToLeave.ts"];
const templates = sourceTemplates("workbook", "bench/page", "bench/xlsx", "bench/csv").filter(
  ({ file }) => !OF_THE_AUDIT.includes(file),
);

/** Said to whoever writes a program, never to whoever uses it. */
const FOR_PROGRAMMERS = [
  "The page has no element 3.",
  "The metadata names 3, which is not registered.",
  "No workbook is open.",
  "There is no sheet 3.",
  "The workbook has no sheet.",
];

const isSentence = (text: string): boolean => /^[A-Z3"].* .*\.$/.test(text);

test("every sentence about a file or from the grid has its German", () => {
  const missing = templates
    .filter(({ isProblem, sample }) => isProblem || isSentence(sample))
    .filter(({ sample }) => / /.test(sample) && !FOR_PROGRAMMERS.includes(sample))
    .filter(({ sample }) => german(sample) === null)
    .map(({ file, sample }) => `${file}: ${sample}`);
  expect(missing).toEqual([]);
});

test("and no German is left over from an English sentence that is gone", () => {
  const english = [...templates.map(({ sample }) => sample), errorSentence("3")];
  expect(leftOverSentences(germanOfBench, germanLanguage, english)).toEqual([]);
});

test.each([
  [
    "Not carried over: charts, pictures, links to other workbooks (their last values are there). Your file itself is unchanged.",
    "Nicht übernommen: Diagramme, Bilder, Verknüpfungen mit anderen Mappen (ihre letzten Werte sind da). Ihre Datei selbst ist unverändert.",
  ],
  [
    "Winter.csv was not opened. The file is empty.",
    "Winter.csv wurde nicht geöffnet. Die Datei ist leer.",
  ],
  [
    "Fields were split at semicolons; the decimal mark is the comma.",
    "Felder wurden an Semikola getrennt; das Dezimalzeichen ist das Komma.",
  ],
  [errorSentence("#N/A"), "Ein Wert ist nicht verfügbar."],
])("%s", (english, expected) => expect(german(english)).toBe(expected));
