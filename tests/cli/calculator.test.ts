import { openCalculator, type Calculator } from "../../src/cli/calculator";
import { sheetFromRows } from "../../src/workbook/sheetFromRows";
import type { Workbook } from "../../src/workbook/model";
import { testFunctions } from "../workbook/univerTestFunctions";

const error = (code: string) => ({ error: code });

const book: Workbook = {
  sheets: [
    sheetFromRows("Recipes", [
      ["water", 200, null, true],
      ["sucrose", { value: 70, formula: "35*2" }, "12,5", error("#DIV/0!")],
      ["all", { value: null, formula: "SUM(B1:B2)" }, { value: null, formula: "B3*2" }],
    ]),
    sheetFromRows(
      "My prices",
      [
        ["item", "price"],
        ["honey", 9.5],
        ["salt", 0.4],
      ],
      {
        tables: [
          {
            name: "Prices",
            range: { top: 0, left: 0, bottom: 2, right: 1 },
            columns: ["item", "price"],
            hasTotals: false,
          },
        ],
      },
    ),
  ],
  names: [{ name: "Sugar", refersTo: "Recipes!$B$2", sheet: null }],
  calculation: "automatic",
  externalLinks: [],
};

let calculator: Calculator;
beforeAll(async () => {
  calculator = await openCalculator(book, testFunctions);
});
afterAll(() => {
  calculator.close();
});

const answer = async (formula: string): Promise<Record<string, unknown>> =>
  JSON.parse((await calculator.answer(formula)).line);
const value = async (formula: string): Promise<unknown> => (await answer(formula))["value"];

describe("a formula on the command line", () => {
  test("gives its value with every digit of the double", async () => {
    expect(await answer("=RIME.THIRD()")).toEqual({ formula: "=RIME.THIRD()", value: -0.62 });
    expect(await value("=1/3")).toBe(1 / 3);
    expect(await value("=RIME.HALF(SQRT(2))")).toBe(Math.SQRT2 / 2);
  });

  test.each([
    ['=IF(TRUE,"a, b","c")', "a, b"],
    ["=1=1", true],
    ["=SUM({1,2;3,4})*2", 20],
    ["=SEQUENCE(2)", [[1], [2]]],
    [
      '={1,"x;y";TRUE,-1.50}',
      [
        [1, "x;y"],
        [true, -1.5],
      ],
    ],
    ["=LET(x,RIME.HALF(6),x*x)", 9],
    ['=VLOOKUP("cream, 36 %",{"cream",1;"cream, 36 %",2},2,FALSE)', 2],
    ["=@RIME.HALF({8;4})", 4],
    ["=1.50+1e2", 101.5],
    ["=1e-7", 1e-7],
  ])("%s is %j", async (formula, expected) => {
    expect(await value(formula)).toEqual(expected);
  });

  test("arguments arrive as they were written", async () => {
    expect(await value('=RIME.SEEN(1.50,,"50%")')).toBe('1.5 | null | "50%"');
    expect(await value('=RIME.SEEN({"12,5",1;"a""b",TRUE},#N/A,007)')).toBe(
      '["12,5",1;"a\\"b",true] | outsideValidity(#N/A) | 7',
    );
    expect(await value("=RIME.SEEN(1e5)")).toBe("100000 | null | null");
    expect(await value("=RIME.SEEN({1,2;3})")).toBe("[1,2;3,outsideValidity(#N/A)] | null | null");
  });

  test("an error is told with its sentence", async () => {
    expect(await answer('=RIME.HALF("x")')).toEqual({
      formula: '=RIME.HALF("x")',
      error: "#VALUE!",
      message: 'value: "x" is not a number.',
    });
    expect(await answer("=1+RIME.HALF(-1)")).toMatchObject({
      error: "#N/A",
      message: "value: -1 is below 0.",
    });
    expect(await answer("=1/0")).toMatchObject({ error: "#DIV/0!" });
  });

  test("an error within an array stands in its own place", async () => {
    expect(await value("=RIME.HALF({2,-1})")).toEqual([
      [1, { error: "#N/A", message: "value: -1 is below 0." }],
    ]);
  });

  test("an unknown function is named, with the nearest of ours", async () => {
    expect(await answer("=RIME.HALV(1)")).toMatchObject({
      error: "#NAME?",
      message: "There is no function RIME.HALV. The nearest is RIME.HALF.",
    });
  });

  test("too many arguments are refused in words", async () => {
    expect(await answer("=RIME.HALF(1,2)")).toMatchObject({
      error: "#VALUE!",
      message: "RIME.HALF takes at most 1 arguments, not 2.",
    });
  });

  test.each(["=RIME.HALF(", "=1+", '="abc', "={1,2", "=(1", "=", "1+1", "=1 2", "=SUM(1))", "=)"])(
    "%s cannot be read",
    async (formula) => {
      const { line, isReadable } = await calculator.answer(formula);
      expect(isReadable).toBe(false);
      expect(JSON.parse(line)).toMatchObject({ formula, message: expect.stringMatching(/\.$/) });
    },
  );
});

describe("a formula that refers to a workbook", () => {
  test.each([
    ["=A1", "water"],
    ["=B1:B2", [[200], [70]]],
    ["=C1", null],
    ["=D1", true],
    ["=Recipes!B2+1", 71],
    ["='My prices'!B2", 9.5],
    ["=Sugar*2", 140],
    ["=SUM(Prices[price])", 9.9],
    ["=RIME.SEEN(A1:C2)", '["water",200,null;"sucrose",70,"12,5"] | null | null'],
    ["=RIME.SEEN(C1,D2)", "[null] | [badInput(#DIV/0!)] | null"],
    ["=SUM(B1:C1)", 200],
    ["=AVERAGE(B1:C1)", 200],
  ])("%s is %j", async (formula, expected) => {
    expect(await value(formula)).toEqual(expected);
  });

  test("formulas without a stored result are calculated, in order", async () => {
    expect(await value("=B3:C3")).toEqual([[270, 540]]);
  });

  test("a sheet that does not exist is an error that names it", async () => {
    expect(await answer("=Nope!A1")).toMatchObject({
      error: "#REF!",
      message: 'There is no sheet "Nope" in the workbook.',
    });
  });
});
