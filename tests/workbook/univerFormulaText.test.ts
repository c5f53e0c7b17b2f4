import { parseArrayLiteral } from "../../src/workbook/univer/arrayLiterals";
import { formulaForEngine } from "../../src/workbook/univer/formulaText";
import { plainNumber } from "../../src/workbook/univer/numberLiterals";
import { referencedSheets } from "../../src/workbook/univer/referencedSheets";
import { openHeadlessGrid } from "../../src/workbook/univer/headlessGrid";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";
import { testFunctions } from "./univerTestFunctions";

describe("a formula in the words of the grid's engine", () => {
  // SINGLE: ECMA-376 practice of writing the implicit intersection operator (function _xlfn.SINGLE).
  test.each([
    ["=@RIME.HALF(A1)", "=SINGLE(RIME.HALF(A1))"],
    ["=1+@RIME.HALF((A1))*2", "=1+SINGLE(RIME.HALF((A1)))*2"],
    ['=@RIME.SEEN("@X(")', '=SINGLE(RIME.SEEN("@X("))'],
    ["=@RIME.HALF(@RIME.HALF(1))", "=SINGLE(RIME.HALF(SINGLE(RIME.HALF(1))))"],
    ["=Prices[@price]*2", "=Prices[[#This Row],[price]]*2"],
    ["=Prices[@[per kg]]", "=Prices[[#This Row],[per kg]]"],
    ['="a@b(c)"', '="a@b(c)"'],
    ["=SUM($B$2#)&A1", "=SUM(ANCHORARRAY($B$2))&A1"],
    ["='My sheet'!B2#", "=ANCHORARRAY('My sheet'!B2)"],
    ['=IF(A1=#N/A,"A1#",#REF!)', '=IF(A1=#N/A,"A1#",#REF!)'],
    ["=@A1:A9", "=@A1:A9"],
    ["=@RIME.HALF(", "=@RIME.HALF("],
  ])("%s becomes %s", (typed, read) => {
    expect(formulaForEngine(typed)).toBe(read);
  });

  test.each([
    ["1.50", "1.5"],
    ["007", "7"],
    ["1E3", "1000"],
    [".5", "0.5"],
    ["A1", "A1"],
    ["0x10", "0x10"],
    ["1.2.3", "1.2.3"],
    ["", ""],
  ])("the number %j is read as %j", (written, read) => {
    expect(plainNumber(written)).toBe(read);
  });

  test("an array literal keeps commas and semicolons within its texts", () => {
    const rows = parseArrayLiteral('{"cream, 36 %",2.50;"a;b", TRUE}');
    expect(rows.map((row) => row.map((each) => each.getValue()))).toEqual([
      ["cream, 36 %", 2.5],
      ["a;b", true],
    ]);
  });

  test("sheets are found by their names, also those of another workbook", () => {
    expect(referencedSheets(`=Costs!A1+'My ''own'' sheet'!B2&"No!A1"+[1]Prices!C3+#REF!`)).toEqual([
      "Costs",
      "My 'own' sheet",
      "[1]Prices",
    ]);
  });
});

test("a workbook can be calculated more than once: what spilled before is not in the way", async () => {
  const rows = [[2, { value: null, formula: "RIME.HALF(A1:A2)" }], [4]];
  const names = { names: [], calculation: "automatic", externalLinks: [] } as const;
  const book = { sheets: [sheetFromRows("Sheet1", rows)], ...names };
  const grid = openHeadlessGrid(book, testFunctions, () => true);
  await grid.recalculate();
  const valueAt = await grid.recalculate();
  expect([valueAt(0, 0, 1), valueAt(0, 1, 1)]).toEqual([1, 2]);
  expect(await grid.evaluate("=SUM(B1:B2)")).toEqual({ value: 3 });
  expect(await grid.evaluate("=B1#")).toEqual({ value: [[1], [2]] });
  expect(await grid.evaluate("=SUM(Sheet1!B1#)*2")).toEqual({ value: 6 });
  expect(await grid.evaluate("=A1#")).toMatchObject({ value: { error: "#REF!" } });
  grid.close();
});
