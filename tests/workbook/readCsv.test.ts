import { strToU8 } from "fflate";
import { isProblem } from "../../src/foundation/problem";
import type { WorkbookValue } from "../../src/workbook/model";
import type { DecimalMark } from "../../src/workbook/csv/decimalMark";
import { isDecimalQuestion } from "../../src/workbook/csv/decimalQuestion";
import { readCsv } from "../../src/workbook/csv/readCsv";

function valuesOf(bytes: Uint8Array | string, mark?: DecimalMark): WorkbookValue[][] {
  const answer = readCsv(typeof bytes === "string" ? strToU8(bytes) : bytes, "S", mark);
  if (isProblem(answer) || isDecimalQuestion(answer)) throw new Error(answer.message);
  const [sheet] = answer.workbook.sheets;
  return Array.from({ length: sheet!.rowCount }, (_, row) =>
    Array.from(
      { length: sheet!.columnCount },
      (_each, column) => sheet!.cellAt(row, column)?.value ?? null,
    ),
  );
}
const messageOf = (bytes: Uint8Array | string): string => {
  const answer = readCsv(typeof bytes === "string" ? strToU8(bytes) : bytes, "S");
  return isProblem(answer) ? answer.message : "";
};
const questionOf = (text: string): string => {
  const answer = readCsv(strToU8(text), "S");
  return isDecimalQuestion(answer) ? answer.message : "";
};
const utf16 = (text: string, isLittle: boolean): Uint8Array =>
  new Uint8Array(
    Array.from(`\ufeff${text}`).flatMap((letter) => {
      const code = letter.charCodeAt(0);
      return isLittle ? [code & 255, code >> 8] : [code >> 8, code & 255];
    }),
  );

describe("Delimiter, quotes and encoding", () => {
  // RFC 4180, section 2: fields with line breaks, quotes and commas are quoted, quotes doubled.
  test("quotes as RFC 4180 has them", () => {
    expect(valuesOf('"a ""b"", c",1\r\n"two\r\nlines",2\r\n')).toEqual([
      ['a "b", c', 1],
      ["two\r\nlines", 2],
      [null, null],
    ]);
  });
  test.each([
    ["semicolons before decimal commas", "Water;500,5\nSugar;100,25"],
    ["tabs", "Water\t500,5\nSugar\t100,25"],
    ["bars", "Water|500,5\nSugar|100,25"],
    ["a line that says so", "sep=;\nWater;500,5\nSugar;100,25"],
    ["a byte order mark", "\ufeffWater;500,5\nSugar;100,25"],
  ])("%s", (_, text) => {
    expect(valuesOf(text)).toEqual([
      ["Water", 500.5],
      ["Sugar", 100.25],
    ]);
  });
  test("semicolons, though a decimal comma splits as many rows into equally many fields", () => {
    expect(valuesOf("Batch;7\n\nNo.;Item;kg\n1;Water;0,5\n2;Sugar;0,1\n;Total;0,6")).toEqual([
      ["Batch", 7, null],
      [null, null, null],
      ["No.", "Item", "kg"],
      [1, "Water", 0.5],
      [2, "Sugar", 0.1],
      [null, "Total", 0.6],
    ]);
  });
  test("commas, though remarks have semicolons", () => {
    expect(valuesOf("Item,g,Remark\nWater,500,cool; stir\nSugar,100,sieve; stir\nSalt,2,")).toEqual(
      [
        ["Item", "g", "Remark"],
        ["Water", 500, "cool; stir"],
        ["Sugar", 100, "sieve; stir"],
        ["Salt", 2, null],
      ],
    );
  });
  test.each([true, false])("UTF-16 with a byte order mark (little endian: %s)", (isLittle) => {
    expect(valuesOf(utf16("Süße;1,5\n", isLittle))[0]).toEqual(["Süße", 1.5]);
  });
  test("Windows-1252 is said", () => {
    const answer = readCsv(new Uint8Array([0x53, 0xfc, 0xdf, 0x3b, 0x35]), "S");
    expect(answer).toMatchObject({ reading: [expect.any(String), expect.stringMatching(/1252/)] });
    expect(valuesOf(new Uint8Array([0x53, 0xfc, 0xdf, 0x3b, 0x35]))).toEqual([["Süß", 5]]);
  });
});

describe("Numbers", () => {
  test.each<[string, WorkbookValue]>([
    ["1.234,5", 1234.5],
    ["1.234", 1234],
    ["−3,5", -3.5],
    ["12,5 %", 0.125],
    ["1 234,5", 1234.5],
    ["1,5e3", 1500],
    ["12.5", "12.5"],
    ["1,2,3", "1,2,3"],
    ["12 g", "12 g"],
    ["=A1", "=A1"],
  ])("%s beside a decimal comma", (field, value) => {
    expect(valuesOf(`a;0,5;0,7\nb;${field};0,25`)[1]).toEqual(["b", value, 0.25]);
  });
  test("grouping commas beside a decimal point", () => {
    expect(valuesOf('a,0.5\nb,"1,234"\nc,"1,234,567.5"').map(([, value]) => value)).toEqual([
      0.5, 1234, 1234567.5,
    ]);
  });
  test("a single text with the other mark stays a text, to be found by the audit", () => {
    expect(valuesOf('a,0.5\nb,1.25\nc,"12,5"')[2]).toEqual(["c", "12,5"]);
  });
});

describe("What is asked, not guessed", () => {
  test("a lone 1,234 between semicolons", () => {
    expect(questionOf("Water;1,234\nSugar;100")).toMatch(
      /^"1,234" can mean 1,234 with a decimal comma or 1234 with a decimal point, and nothing else in the file tells\.$/,
    );
    expect(questionOf("Water;1.234")).toMatch(/can mean 1234 with a decimal comma or 1.234/);
    expect(valuesOf("Water;1,234", ",")).toEqual([["Water", 1.234]]);
    expect(valuesOf("Water;1,234", ".")).toEqual([["Water", 1234]]);
  });
  test("as many of one kind as of the other", () => {
    expect(questionOf("a;1,5\nb;2.5")).toMatch(/as many numbers.*\(1 each\)\.$/);
  });
  test.each([
    ["an empty file", "", /is empty/],
    ["a picture", new Uint8Array([0x89, 0x50, 0, 1, 2]), /bytes that no text has/],
    ["an open quotation mark", 'a;1\nb;"2\nc;3', /quotation mark of row 2 is not closed/],
    ["too many columns", ";".repeat(17000), /1 rows and 17001 columns; a sheet has at most/],
  ])("%s ends in a sentence", (_, bytes, sentence) => {
    expect(messageOf(bytes)).toMatch(sentence);
  });
});

// As a spreadsheet in German writes a sheet of which some cells are formatted in English.
test("numbers with the other decimal mark are told, not only left as texts", () => {
  const answer = readCsv(
    strToU8("Sugar;12,5\nSalt;0,25\nMilk;7,5\nLemon;1.5\nLime;2.25\nWater;1.000\n"),
    "S",
  );
  expect(answer).toMatchObject({
    reading: [
      "Fields were split at semicolons; the decimal mark is the comma.",
      'Numbers with the other decimal mark stay texts: 2, the first "1.5".',
    ],
  });
  const plain = readCsv(strToU8("Sugar;12,5\nSalt;1.000\n"), "S");
  expect(plain).toMatchObject({ reading: [expect.stringMatching(/comma/)] });
});
