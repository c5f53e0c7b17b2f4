import { recalculate } from "../../src/workbook/evaluate";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";
import type { Workbook, WorkbookSheet } from "../../src/workbook/model";
import { testFunctions } from "./univerTestFunctions";

const bookOf = (sheets: WorkbookSheet[], names: Workbook["names"] = []): Workbook => ({
  sheets,
  names,
  calculation: "manual",
  externalLinks: [],
});

const formula = (text: string, value: number | string | null = 0) => ({ formula: text, value });
const cell = (row: number, column: number, sheet = 0) => ({
  sheet,
  range: { top: row, left: column, bottom: row, right: column },
});

describe("recalculating what feeds a cell", () => {
  test("stale values are made fresh through references, names and other sheets", async () => {
    const book = bookOf(
      [
        sheetFromRows("Recipes", [
          [100, formula("A1*2", 7), formula("B1+Extra+Costs!A1", 7)],
          [null, formula("1+1", 99)],
        ]),
        sheetFromRows("Costs", [
          [formula("SUM(B:B)", 5), 3],
          [null, 4],
        ]),
      ],
      [{ name: "Extra", refersTo: "Recipes!$A$1", sheet: null }],
    );
    const { valueAt, calculated, isComplete } = await recalculate(
      book,
      [cell(0, 2)],
      testFunctions,
    );
    expect(valueAt(0, 0, 2)).toBe(200 + 100 + 7);
    expect(valueAt(1, 0, 0)).toBe(7);
    expect(isComplete).toBe(true);
    // B2 feeds nothing that was asked for.
    expect(calculated).toHaveLength(3);
    expect(valueAt(0, 1, 1)).toBeUndefined();
  });

  test("a formula that spills is calculated when one of its cells is asked for", async () => {
    const spills = { top: 0, left: 1, bottom: 2, right: 1 };
    const book = bookOf([
      sheetFromRows("Sheet1", [
        [2, { formula: "RIME.HALF(A1:A3)", value: 9, spills }],
        [4, 9],
        [-6, 9, formula("B2*10", 1)],
      ]),
    ]);
    const { valueAt } = await recalculate(book, [cell(2, 2)], testFunctions);
    expect(valueAt(0, 0, 1)).toBe(1);
    expect(valueAt(0, 2, 2)).toBe(20);
  });

  test("a table's name means its block, and [@column] the cell in the same row", async () => {
    const table = {
      name: "Prices",
      range: { top: 0, left: 0, bottom: 2, right: 2 },
      columns: ["item", "per kg", "doubled"],
      hasTotals: false,
    };
    const rows = [
      ["item", "per kg", "doubled"],
      ["honey", 9, formula("Prices[@[per kg]]*2")],
      ["salt", formula("0.5+0.5"), formula("Prices[@[per kg]]*2")],
      [null, null, formula("SUM(Prices[doubled])")],
    ];
    const book = bookOf([sheetFromRows("Sheet1", rows, { tables: [table] })]);
    const { valueAt } = await recalculate(book, [cell(3, 2)], testFunctions);
    expect([1, 2, 3].map((row) => valueAt(0, row, 2))).toEqual([18, 2, 20]);
  });

  // As headings of lists are: units in brackets, signs that formulas escape by an apostrophe.
  test("columns of a table may have brackets and other signs in their titles", async () => {
    const table = {
      name: "Mix",
      range: { top: 0, left: 0, bottom: 2, right: 2 },
      columns: ["Weight (g)", "Price [€] #1", "Cost, (€)"],
      hasTotals: false,
    };
    const cost = "Mix[[#This Row],[Weight (g)]]*Mix[@[Price '[€'] '#1]]";
    const rows = [
      [...table.columns],
      [500, 2, formula(cost)],
      [20, 3, formula(cost)],
      [formula("SUM(Mix[Weight (g)])"), null, formula('SUM(Mix[Cost, (€)])&" (g)"')],
    ];
    const book = bookOf([sheetFromRows("Sheet1", rows, { tables: [table] })]);
    const { valueAt } = await recalculate(book, [cell(3, 0), cell(3, 2)], testFunctions);
    expect(valueAt(0, 3, 0)).toBe(520);
    expect(valueAt(0, 3, 2)).toBe("1060 (g)");
  });

  test("A1# follows the block as it is filled now", async () => {
    const spills = { top: 0, left: 1, bottom: 1, right: 1 };
    const spilling = { formula: "RIME.HALF(A1:A3)", value: 9, spills };
    const rows = [[2, spilling, formula("SUM(B1#)")], [4, 9], [6]];
    const { valueAt } = await recalculate(
      bookOf([sheetFromRows("Sheet1", rows)]),
      [cell(0, 2)],
      testFunctions,
    );
    expect(valueAt(0, 0, 2)).toBe(6);
  });

  test("errors come as errors", async () => {
    const book = bookOf([sheetFromRows("Sheet1", [[formula("RIME.HALF(-1)"), formula("1/0")]])]);
    const { valueAt } = await recalculate(book, [cell(0, 0), cell(0, 1)], testFunctions);
    expect([valueAt(0, 0, 0), valueAt(0, 0, 1)]).toEqual([{ error: "#N/A" }, { error: "#DIV/0!" }]);
  });

  test("what is not known here keeps its stored value, with the reason", async () => {
    const book = bookOf([
      sheetFromRows("Sheet1", [
        [formula("OTHER.ADDIN(1)", 5), formula("A1*2", 0), formula("RAND()", 0.5)],
        [formula("[1]Prices!A1", 3), formula("A2+C1", 0)],
      ]),
    ]);
    const asked = [cell(0, 1), cell(1, 1)];
    const { valueAt, leftAlone } = await recalculate(book, asked, testFunctions);
    expect(valueAt(0, 0, 0)).toBeUndefined();
    expect([valueAt(0, 0, 1), valueAt(0, 1, 1)]).toEqual([10, 3.5]);
    expect(leftAlone.map(({ reason }) => reason).sort()).toEqual([
      "It gives something else at every calculation.",
      'It reads "[1]Prices", which is not in this workbook.',
      "The function OTHER.ADDIN is not known here.",
    ]);
  });

  test("ranges far beyond the used cells are read as far as the cells go (else this takes minutes)", async () => {
    const rows = [
      [2, formula("SUM(A1:A1048576)"), formula("SUM(A2:XFD1048576,1:1)-SUM(B1:C1)")],
      [3],
    ];
    const book = bookOf([sheetFromRows("Sheet1", rows)]);
    const { valueAt, leftAlone } = await recalculate(book, [cell(0, 1), cell(0, 2)], []);
    expect(valueAt(0, 0, 1)).toBe(5);
    expect(leftAlone.map(({ reason }) => reason)).toEqual(["It reads its own cell."]);
  });

  test.each(["", "1+", "(", "SUM(1))", "@", "{", "'x", "#REF!", "A1:", "Sheet1!#REF!", "LET(x,1)"])(
    "a damaged formula (%s) stops nothing",
    async (damaged) => {
      const book = bookOf([sheetFromRows("Sheet1", [[formula(damaged), formula("1+1")]])]);
      const { valueAt } = await recalculate(book, [cell(0, 0), cell(0, 1)], []);
      expect(valueAt(0, 0, 1)).toBe(2);
    },
  );

  test("no more than 10,000 formulas are calculated, and it says so", async () => {
    const rows = Array.from({ length: 10_050 }, (_, row) => [row, formula(`A${row + 1}+1`)]);
    const book = bookOf([sheetFromRows("Sheet1", [...rows, [formula("SUM(B:B)")]])]);
    const { calculated, isComplete, valueAt } = await recalculate(book, [cell(10_050, 0)], []);
    expect([calculated.length, isComplete]).toEqual([10_000, false]);
    expect(valueAt(0, 10, 1)).toBe(11);
  });

  test("a column of running sums is taken up whole", async () => {
    const rows = Array.from({ length: 500 }, (_, row) => [1, formula(`SUM(A$1:A${row + 1})`)]);
    const { valueAt } = await recalculate(
      bookOf([sheetFromRows("Sheet1", rows)]),
      [{ sheet: 0, range: { top: 0, left: 1, bottom: 499, right: 1 } }],
      [],
    );
    expect(valueAt(0, 499, 1)).toBe(500);
  });
});
