import { formula, type Rows } from "./bookOf";
import { expectFound, rulesOn } from "./tried";

/** A box of ices: below each list numbers with what they are behind them, and another table beside. */
const box = (pointC: number, beside = "big tub"): Rows => [
  ["weigh (g)", "part of 1", "what", null, null, "Bucket takes (g)", 2500],
  [formula("B2*$G$1", 1750), 0.7, "water"],
  [formula("B3*$G$1", 750), 0.3, "sucrose"],
  [formula("SUM(A2:A3)", 2500), formula("SUM(B2:B3)", 1), "is the bucket"],
  [null, pointC, "°C is where it starts to freeze", null, null, beside, 450],
  [null, null, null, null, null, "small tub", 120],
];

test("words that go on with the unit of the number before them are that one's", () => {
  expectFound({ what: "", sheets: { Box: box(-2.66) }, found: [] });
  expectFound({ what: "", sheets: { Box: box(-4.4) }, found: ["result-differs Box!B5"] });
});

test("the number behind a label is its answer where it has no unit of the one before", () => {
  const rows: Rows = [
    ["Ingredient", "Amount (g)"],
    ["water", 700],
    ["sucrose", 300],
    [],
    [1, "Starts to freeze (°C)", -4.4],
  ];
  expectFound({ what: "", sheets: { Sheet1: rows }, found: ["result-differs Sheet1!C5"] });
});

/** A board in front of a mix with alcohol, with a column of what is said of each beside its freezing point. */
const board = (says: string): Readonly<Record<string, Rows>> => ({
  Board: [
    ["On the board", "Say", "Freezes °C"],
    ["Spirit pop", says, formula("RIME.FREEZINGPOINT(Mixes!A2:A4,Mixes!B2:B4)", -3.6)],
  ],
  Mixes: [
    ["Goes in", "g"],
    ["water", 600],
    ["sucrose", 250],
    ["vodka 40 %", 50],
  ],
});

test("what is told to those who eat is told, and is no label of a number beside it", () => {
  const rules = rulesOn(board("Alcohol: over 18s, never if pregnant."));
  expect(rules).not.toContain("caution-not-named");
  expect(rules).not.toContain("result-differs");
});

test("a label of so much alcohol tells nobody", () => {
  expect(rulesOn(board("Alcohol in the mix (g)"))).toContain("caution-not-named");
});
