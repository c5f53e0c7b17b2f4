import { Workbook as OtherWriter } from "@cj-tech-master/excelts";
import { germanOfBench } from "../../src/bench/words/germanSentences";
import { xlsxToBook } from "../../src/bench/xlsx/xlsxToBook";
import { isProblem } from "../../src/foundation/problem";
import { sentenceTranslator } from "../../src/worksheet/words/sentenceTranslator";
import { put } from "../corpus/book";
import { buildBook } from "../corpus/kit";
import { layouts } from "../corpus/layouts";
import { chanceFor } from "../corpus/seed";
import { toFile } from "../corpus/toFile";

/** A workbook with much that the grid has no place for, written by a library that is not ours. */
async function richBook(): Promise<Uint8Array> {
  const book = new OtherWriter();
  book.properties.date1904 = true;
  const sheet = book.addWorksheet("Mix");
  sheet.addRow(["Item", "Grams"]);
  sheet.addRow(["Sugar", 150]);
  sheet.getCell("A3").value = { text: "the shop", hyperlink: "https://example.org/" };
  sheet.getCell("A4").value = {
    richText: [{ text: "very " }, { text: "cold", font: { bold: true } }],
  };
  sheet.getCell("B2").dataValidation = {
    ...{ type: "decimal", operator: "greaterThan", formulae: [0], allowBlank: true },
  };
  await sheet.protect("", {});
  return new Uint8Array(await book.xlsx.writeBuffer());
}

const notesOf = async (bytes: Uint8Array): Promise<readonly string[]> => {
  const opened = await xlsxToBook("x.xlsx", bytes);
  if (isProblem(opened)) throw new Error(opened.message);
  return opened.notes;
};

const LOST =
  "Not carried over: input rules, the protection of sheets, hyperlinks, bold or coloured words inside a text. Your file itself is unchanged.";
const FROM_1904 =
  "The workbook counts its days from 1904: dates show four years and a day too early here and in saved copies.";

test("what the bench cannot carry of a file is named, in both languages", async () => {
  expect(await notesOf(await richBook())).toEqual([LOST, FROM_1904]);
  const german = sentenceTranslator(germanOfBench);
  expect(german(LOST)).toBe(
    "Nicht übernommen: Eingaberegeln, der Schutz von Blättern, Hyperlinks, fette oder farbige Wörter in einem Text. Ihre Datei selbst ist unverändert.",
  );
});

test("a formula that reads another workbook becomes what it last gave, and that is said", async () => {
  const marked = layouts.find(({ name }) => name === "structured references")!;
  const { book } = buildBook(marked, chanceFor(1, marked.name));
  put(book.sheets[0]!, 0, 8, { content: "='[store.xlsx]Stock'!$B$2*2", stored: 154 });
  book.externalLinks = ["store.xlsx"];
  const opened = await xlsxToBook("x.xlsx", await toFile(book));
  if (isProblem(opened)) throw new Error(opened.message);
  expect(opened.book.sheets[0]!.rows[0]![8]).toEqual({ value: 154 });
  expect(opened.notes.join()).toContain("links to other workbooks (their last values are there)");
});

test("a plain file brings no notes", async () => {
  const book = new OtherWriter();
  book.addWorksheet("Mix").addRow(["Sugar", 150]);
  expect(await notesOf(new Uint8Array(await book.xlsx.writeBuffer()))).toEqual([]);
});
