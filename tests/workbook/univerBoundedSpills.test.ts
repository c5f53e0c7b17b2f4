import { sheetFromRows } from "../../src/workbook/sheetFromRows";
import { openHeadlessGrid, type HeadlessGrid } from "../../src/workbook/univer/headlessGrid";
import { testFunctions } from "./univerTestFunctions";

let grid: HeadlessGrid;

beforeAll(() => {
  const sheets = [sheetFromRows("Sheet1", [[1, 2, 3]])];
  const book = { sheets, names: [], calculation: "automatic", externalLinks: [] } as const;
  grid = openHeadlessGrid(book, testFunctions);
});
afterAll(() => grid.close());

describe("a formula that asks for more cells than memory holds is answered at once, in one sentence", () => {
  test.each([
    [
      "=SEQUENCE(1E9)",
      "SEQUENCE would fill 1\u202f000\u202f000\u202f000 × 1 cells; at most 1\u202f000\u202f000 are answered.",
    ],
    [
      "=SEQUENCE(1E6,10)",
      "SEQUENCE would fill 1\u202f000\u202f000 × 10 cells; at most 1\u202f000\u202f000 are answered.",
    ],
    ["=RANDARRAY(1E5,1E5)", /^RANDARRAY would fill 100\u202f000 × 100\u202f000 cells/],
    ["=MAKEARRAY(1E5,1E4,LAMBDA(r,c,r))", /^MAKEARRAY would fill 100\u202f000 × 10\u202f000 cells/],
    ["=MUNIT(1E5)", /^MUNIT would fill 100\u202f000 × 100\u202f000 cells/],
    ["=EXPAND(A1:C1,1E6,1E4)", /^EXPAND would fill 1\u202f000\u202f000 × 10\u202f000 cells/],
    ["=EXPAND(A1:C1,1E6)", /^EXPAND would fill 1\u202f000\u202f000 × 3 cells/],
    ["=WRAPROWS(A1:C1,1E9)", /^WRAPROWS would fill 1 × 1\u202f000\u202f000\u202f000 cells/],
    ["=WRAPCOLS(A1:C1,1E9)", /^WRAPCOLS would fill 1 × 1\u202f000\u202f000\u202f000 cells/],
    ["=SUM(SEQUENCE(1E9))", /^SEQUENCE would fill/],
  ])("%s", async (formula, message) => {
    const sentence = message instanceof RegExp ? expect.stringMatching(message) : message;
    expect(await grid.evaluate(formula)).toEqual({
      value: { error: "#SPILL!", message: sentence },
    });
  });

  test("one that the sheet is too small for, too", async () => {
    expect(await grid.evaluate("=SEQUENCE(1,900000)")).toEqual({
      value: {
        error: "#SPILL!",
        message: "SEQUENCE would fill 1 × 900\u202f000 cells, and the sheet ends before.",
      },
    });
  });
});

test("what fits is answered as ever", async () => {
  expect(await grid.evaluate("=SEQUENCE(2,2,5,5)")).toEqual({
    value: [
      [5, 10],
      [15, 20],
    ],
  });
  expect(await grid.evaluate("=SUM(SEQUENCE(100))")).toEqual({ value: 5050 });
  expect(await grid.evaluate("=EXPAND(A1:C1,1,4,0)")).toEqual({ value: [[1, 2, 3, 0]] });
  expect(await grid.evaluate("=MAKEARRAY(2,1,LAMBDA(r,c,r*10))")).toEqual({ value: [[10], [20]] });
});
