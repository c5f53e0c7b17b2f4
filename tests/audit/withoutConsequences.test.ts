import { formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

const POINT = "RIME.FREEZINGPOINT(A2:A4,B2:B4)";
const withThird = (item: string, amount: number | string): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 600],
  ["Sucrose", 150],
  [item, amount],
  ["Total", formula("SUM(B2:B4)", typeof amount === "number" ? 750 + amount : 750)],
];

/** The rows with a stored result below. */
const showing = (rows: Rows, value: Rows[number][number]): Rows => [
  ...rows,
  ["Freezing point (°C)", value],
];

const error = { value: { error: "#N/A" }, formula: POINT };

test("an unknown ingredient is told, not that the result has no answer", () => {
  const rows = showing(withThird("Moon dust", 50), error);
  expect(placesOf(findingsOf(rows))).toEqual(["A4 unknown-ingredient"]);
});

test("an unknown ingredient above a row of recipes is told once, not in every row", () => {
  const row = (name: string, at: number): Rows[number] => [
    ...[name, 600, 150, 50],
    { value: { error: "#N/A" }, formula: `RIME.FREEZINGPOINT($B$1:$D$1,B${at}:D${at})` },
  ];
  const rows: Rows = [
    ["Mix (g)", "Water", "stock no. 17", "Sucrose", "Freezing point (°C)"],
    row("A", 2),
    row("B", 3),
    row("C", 4),
  ];
  expect(placesOf(findingsOf(rows))).toEqual(["C1 unknown-ingredient"]);
});

test("an amount typed as text is told, not the sum that leaves it out", () => {
  const rows = withThird("Fructose", "50 ");
  expect(placesOf(findingsOf(rows))).toEqual(["B4 number-as-text"]);
});

test("a formula that is broken itself is told beside an unknown ingredient", () => {
  const broken = { value: { error: "#REF!" }, formula: "RIME.FREEZINGPOINT(A2:A4,#REF!)" };
  const rows = showing(withThird("Moon dust", 50), broken);
  expect(placesOf(findingsOf(rows))).toEqual(["A4 unknown-ingredient", "B6 error-in-an-amount"]);
});

test("a result that does not read the mistake is told beside it", () => {
  const rows = [
    ...showing(withThird("Fructose", "50 "), -1.5),
    ["Depression (K)", formula("RIME.DEPRESSION(A2:A3,B2:B3)*4", 6)],
  ];
  const places = placesOf(findingsOf(rows));
  expect(places).toContain("B4 number-as-text");
  expect(places.filter((place) => place.endsWith("result-differs")).length).toBeGreaterThan(0);
});

test("what is wrong with a mix is told once, not again of the batch calculated from it", () => {
  const grams = (at: number, value: number) => formula(`B${at}*10`, value);
  const rows: Rows = [
    ["Ingredient", "Trial (g)", "Batch (g)"],
    ["Water", 30, grams(2, 300)],
    ["Sucrose", 70, grams(3, 700)],
  ];
  const told = findingsOf(rows).filter(({ rule }) => rule === "more-than-dissolves");
  expect(placesOf(told)).toEqual(["B3 more-than-dissolves"]);
});

test("a share typed as a percentage is told, not the kilograms made from it", () => {
  const row = (name: string, share: number, at: number): Rows[number] => [
    ...[name, { value: share, format: "0.0%" }],
    formula(`B${at}*10`, share * 10),
  ];
  const rows: Rows = [
    ["Ingredient", "Mass fraction", "kg"],
    row("Water", 55, 2),
    row("Sucrose", 0.2, 3),
    row("Glucose", 0.15, 4),
    row("Fructose", 0.1, 5),
    ["Total", formula("SUM(B2:B5)", 55.45), formula("SUM(C2:C5)", 554.5)],
  ];
  expect(placesOf(findingsOf(rows))).toEqual(["B2 percent-and-fraction"]);
});

test("an amount that takes another line's number is told, not what that makes of the mix", () => {
  const scaled = (row: number, value: number, read = `B${row}`) =>
    formula(`${read}*$B$1/$B$7`, value);
  const rows: Rows = [
    ["Batch (g)", 1000],
    ["Ingredient", "Base (g)", "Batch (g)"],
    ["whole milk", 600, scaled(3, 600)],
    ["cream 35 % fat", 200, scaled(4, 200)],
    ["sucrose", 150, scaled(5, 150)],
    ["skimmed milk powder", 50, scaled(6, 600, "$B$3")],
    ["Total", formula("SUM(B3:B6)", 1000), formula("SUM(C3:C6)", 1550)],
  ];
  const places = placesOf(findingsOf(rows)).filter((place) => place.startsWith("C6"));
  expect(places).toEqual(["C6 reference-slips"]);
});

test("a share that is a fraction is told, not that the water it leaves is the water poured in", () => {
  const rows: Rows = [
    ["Ingredient", "Share (%)"],
    ["water", 67],
    ["sucrose", 0.17],
    ["lemon juice", 9],
    ["vodka 40 % vol", 7],
    [],
    ["Water in 100 g (g)", formula('RIME.COMPONENT(A2:A5,B2:B5,"water")', 79.9)],
  ];
  const places = placesOf(findingsOf(rows));
  expect(places).toContain("B3 percent-and-fraction");
  expect(places).not.toContain("B7 water-not-counted");
});
