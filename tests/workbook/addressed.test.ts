import { addressed } from "../../src/workbook/addressed/addressed";
import { rangeName } from "../../src/workbook/address";
import type { DefinedName, Workbook } from "../../src/workbook/model";
import { precedentsIn } from "../../src/workbook/precedents";
import { referencesOf } from "../../src/workbook/references";
import { bookOf, formula, type Rows } from "../audit/bookOf";

const named = (name: string, refersTo: string, sheet: string | null = null): DefinedName => ({
  ...{ name, refersTo, sheet },
});

const MIX = {
  name: "Mix",
  range: { top: 2, left: 0, bottom: 6, right: 2 },
  columns: ["Item", "Weight, g", "Cost [€]"],
  hasTotals: true,
};

/** A table in A3:C7 with totals in its last row; the formula under test in E2, or in C4 of the table. */
function bookWith(text: string, isInTable = false): Workbook {
  const rows: Rows = [
    ["Batch", 2],
    [null, null, null, null, isInTable ? null : formula(text, 1)],
    ["Item", "Weight, g", "Cost [€]"],
    ["water", 200, isInTable ? formula(text, 1) : 1],
    ["sucrose", 70, 2],
    ["salt", 2, 3],
    ["Total", 272, 6],
  ];
  const names = [
    named("batch", "Sheet1!$B$1"),
    named("weights", "'Sheet1'!$B$4:$B$6"),
    named("price.list", "'Price list'!$A$1:$B$2"),
    named("local", "Sheet1!$B$2", "Sheet1"),
    named("Kf", "1.86"),
    named("later", "OFFSET(Sheet1!$B$1,1,0)"),
    named("R1C", "Sheet1!$B$1"),
  ];
  const sheets = { Sheet1: rows, "Price list": [["water", 1]] };
  return bookOf(sheets, { Sheet1: { tables: [MIX] } }, { names });
}

const cellIn = (text: string, isInTable = false) => {
  const sheet = addressed(bookWith(text, isInTable)).sheets[0]!;
  return isInTable ? sheet.cellAt(3, 2)! : sheet.cellAt(1, 4)!;
};

// What stands in brackets: "Using structured references with Excel tables", Microsoft support.
test.each([
  ["batch*2", "$B$1*2"],
  ["BATCH-local", "$B$1-$B$2"],
  ["SUM(weights)", "SUM($B$4:$B$6)"],
  ["VLOOKUP(A1,price.list,2,FALSE)", "VLOOKUP(A1,'Price list'!$A$1:$B$2,2,FALSE)"],
  ["SUM(Mix[Weight, g])", "SUM($B$4:$B$6)"],
  ["SUM(mix[Cost '[€']])", "SUM($C$4:$C$6)"],
  ["SUM(Mix[[Weight, g]:[Cost '[€']]])", "SUM($B$4:$C$6)"],
  ["COUNTA(Mix)", "COUNTA($A$4:$C$6)"],
  ["COUNTA(Mix[#All])", "COUNTA($A$3:$C$7)"],
  ["Mix[[#Totals],[Weight, g]]/batch", "$B$7/$B$1"],
  ["Mix[[#Headers],[Item]]", "$A$3"],
  ["RIME.FREEZINGPOINT(Mix[Item],Mix[Weight, g])", "RIME.FREEZINGPOINT($A$4:$A$6,$B$4:$B$6)"],
])("%s reads %s", (text, expected) => {
  expect(cellIn(text)).toMatchObject({ formula: expected, written: text });
});

test.each([
  ["Mix[[#This Row],[Weight, g]]*2", "B4*2"],
  ["Mix[@[Weight, g]]*2", "B4*2"],
  ["[@[Weight, g]]/SUM([Weight, g])", "B4/SUM($B$4:$B$6)"],
  ["[@Item]", "A4"],
])("inside of the table %s reads %s", (text, expected) => {
  expect(cellIn(text, true).formula).toBe(expected);
});

test.each([
  ['"batch "&B1'],
  ["'batch'!A1"],
  ["batch!A1"],
  ["batch(2)"],
  ["my.batch+Kf"],
  ["later"],
  ["Mix[No such column]"],
  ["[1]Sheet1!$A$1+[Book.xlsx]Mix!A1"],
  ["Other[Weight, g]"],
])("%s stays as it is", (text) => {
  expect(cellIn(text)).toEqual({ value: 1, formula: text });
});

test("reads the same cells as the spreadsheet engine finds in the formula as written", () => {
  for (const text of [
    "batch*Mix[[#This Row],[Weight, g]]",
    "SUM(weights)+B1",
    "SUM(B4:B6)/batch",
    "batch+'Price list'!B1",
  ]) {
    const workbook = bookWith(text);
    const ours = referencesOf(cellIn(text, true).formula ?? cellIn(text).formula ?? "");
    const theirs = precedentsIn(workbook)(0, text.replace(/Mix\[.*\]/, "B4"));
    expect(ours.map(({ range }) => rangeName(range)).sort()).toEqual(
      theirs.map(({ range }) => rangeName(range)).sort(),
    );
  }
});

test("a formula by address is written with the table's columns and the names there are", () => {
  const sheet = addressed(bookWith("1")).sheets[0]!;
  const written = (text: string) => sheet.asWritten?.(text, 3, 2);
  expect(written("B4*$B$1/SUM($B$4:$B$6)+D4")).toBe(
    "Mix[@[Weight, g]]*batch/SUM(Mix[Weight, g])+D4",
  );
  expect(written("SUM($C$4:$C$6)")).toBe("SUM(Mix[Cost '[€']])");
  expect(written("'Price list'!$A$1:$B$2")).toBe("price.list");
});

test("a workbook without names, tables and additions has its formulas as they are", () => {
  const workbook = bookOf({ Sheet1: [["a", formula("A1*2", 1)]] });
  expect(addressed(workbook).sheets[0]!.cellAt(0, 1)).toBe(workbook.sheets[0]!.cellAt(0, 1));
});
