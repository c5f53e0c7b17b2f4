import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { callFunction } from "../../src/worksheet/callFunction";
import { bookOf, formula, type Rows } from "./bookOf";

/** What of a sheet is told to differ, by cell. */
const differing = (rows: Rows): readonly string[] =>
  auditWorkbook(bookOf({ Sheet: rows }))
    .findings.filter(({ rule }) => rule === "result-differs")
    .map(({ cell }) => cell);

const LINES: readonly (readonly [string, number])[] = [
  ["whole milk", 600],
  ["cream 35 %", 160],
  ["sugar", 190],
  ["skim milk powder", 50],
];

/** What of the water is ice, in per cent. */
const iceAt = (temperatureC: number): number => {
  const [items, grams] = [LINES.map(([item]) => [item]), LINES.map(([, g]) => [g])];
  return Math.round(100 * Number(callFunction("ICEFRACTION", items, grams, temperatureC)[0]?.[0]));
};

describe("Numbers that say something else than an answer of the mix beside them", () => {
  test("solids of each line are not those of the mix; those beside a label are", () => {
    const rows = (inMix: number, label = "Total solids (g)"): Rows => [
      ["Base, grams", null, "€", "solids g"],
      ...LINES.map(([item, grams], at) => {
        const share = [0.119, 0.408, 1, 0.968][at]!;
        return [item, grams, 1 + at, formula(`B${at + 2}*${share}`, share * grams)];
      }),
      ["contains milk"],
      [label, inMix],
    ];
    expect(differing(rows(374))).toEqual([]);
    expect(differing(rows(500))).toEqual(["B7"]);
    expect(differing(rows(500, "dry matter (g)"))).toEqual(["B7"]);
  });
  test("what is compared above a list is not its answer", () => {
    const rows = (more: Rows[number]): Rows => [
      ["", "paste 1", ...(more.length > 0 ? ["paste 2"] : [])],
      ["water, g/100 g", 2, ...more],
      [],
      ["the base", "g"],
      ...LINES.map((line) => [...line]),
      ["contains milk"],
    ];
    expect(differing(rows([1.5]))).toEqual([]);
    expect(differing(rows([]))).toEqual(["B2"]);
  });
  test("the share of ice is asked at the temperature over it", () => {
    const rows = (shares: readonly number[]): Rows => [
      ["Base", "g"],
      ...LINES.map((line) => [...line]),
      ["contains milk"],
      [],
      ["", "−6 °C", "−12 °C", "−18 °C"],
      ["ice, % of the water", ...shares],
      ["I serve at", -12, "°C"],
    ];
    const [warm, served, cold] = [-6, -12, -18].map(iceAt) as [number, number, number];
    expect(differing(rows([warm, served, cold]))).toEqual([]);
    expect(differing(rows([served, served, cold]))).toEqual(["B9"]);
  });
  test("sweetness as so much sugar is no sugar of the mix", () => {
    const rows: Rows = [
      ["Base", "g"],
      ...LINES.map((line) => [...line]),
      ["contains milk"],
      ["tastes like so much sugar, g per 100 g", formula("RIME.SWEETNESS(A2:A5,B2:B5)", 12)],
    ];
    expect(differing(rows)).toEqual([]);
  });
});

describe("Lists under each other without a header", () => {
  const log = (second: number): Rows => [
    ["#1", "2 March", "plain"],
    ["whole milk", 500],
    ["heavy cream", 250],
    ["sugar", 150],
    ["fp °C", -2.1],
    [],
    ["#2", "9 March", "more sugar"],
    ["whole milk", 500],
    ["heavy cream", 250],
    ["sugar", 190],
    ["fp °C", second],
  ];
  test("have answers of their own, each below its title", () => {
    expect(differing(log(-2.5))).toEqual([]);
    expect(differing(log(-3.5))).toEqual(["B11"]);
  });
});
