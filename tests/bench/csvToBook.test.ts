import { strToU8 } from "fflate";
import { csvToBook } from "../../src/bench/csv/csvToBook";
import { bookToXlsx } from "../../src/bench/xlsx/bookToXlsx";
import { isProblem } from "../../src/foundation/problem";
import { isDecimalQuestion } from "../../src/workbook/csv/decimalQuestion";
import { readWorkbook } from "../../src/workbook/readWorkbook";

function opened(text: string, name = "Ices.csv", mark: "," | "." | null = null) {
  const answer = csvToBook(name, strToU8(text), mark);
  if (isProblem(answer) || isDecimalQuestion(answer)) throw new Error(answer.message);
  return answer;
}
const valuesOf = (text: string, name?: string) =>
  opened(text, name).book.sheets[0]!.rows.map((row) => row.map((cell) => cell?.value));

describe("A CSV file opened in the bench", () => {
  test("has its numbers by decimal comma and semicolons, and says how it was read", () => {
    const text = "Zutat;Menge (g)\nWasser;500,5\nZucker;150,25";
    expect(valuesOf(text)).toEqual([
      ["Zutat", "Menge (g)"],
      ["Wasser", 500.5],
      ["Zucker", 150.25],
    ]);
    const { book, notes } = opened(text);
    expect(book).toMatchObject({ name: "Ices", sheets: [{ name: "Ices" }] });
    expect(notes).toEqual([
      "Fields were split at semicolons; the decimal mark is the comma.",
      "A saved copy is a new .xlsx file; your file itself stays as it is.",
    ]);
  });

  test("keeps what begins like a formula as a text, in the saved copy too", async () => {
    const { book } = opened('name,note\nwater,"=1+1"');
    expect(book.sheets[0]!.rows[1]![1]).toEqual({ value: "=1+1" });
    const bytes = await bookToXlsx(book);
    const again = await readWorkbook(bytes);
    if (isProblem(again)) throw new Error(again.message);
    expect(again.sheets[0]!.cellAt(1, 1)).toEqual({ value: "=1+1" });
  });

  test("shows a share as one", () => {
    expect(opened("a;12,5 %\nb;3,5 %").book.sheets[0]!.rows[0]![1]).toEqual({
      value: 0.125,
      look: { numberFormat: "0.00%" },
    });
  });

  test("asks where the decimal mark is in doubt, and reads by the answer", () => {
    expect(csvToBook("Ices.csv", strToU8("Water;1,234"), null)).toMatchObject({
      kind: "decimal question",
      message: expect.stringMatching(/^"1,234" can mean/),
    });
    expect(opened("Water;1,234", "Ices.csv", ",").book.sheets[0]!.rows[0]![1]).toEqual({
      value: 1.234,
    });
  });

  test("gets a sheet name that a workbook can have", () => {
    // ECMA-376 part 1, 18.2.19 and practice of all spreadsheets: 31 letters, none of []:*?/\
    const name = "ices [2026]: first, second and third try.csv";
    expect(opened("a;1", name).book.sheets[0]!.name).toBe("ices  2026   first, second and ");
  });

  test("that is none is refused in one sentence", () => {
    expect(csvToBook("Ices.csv", new Uint8Array(), null)).toMatchObject({
      message: "The file is empty.",
    });
  });
});
