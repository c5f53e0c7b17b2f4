import { formula, type Rows } from "./bookOf";
import { findingsOf, of } from "./findingsOf";
import { expectFound, type Tried } from "./tried";

/** A card with a row of labels over their numbers, and a log of other things beside it. */
const card = (log: Rows[number], ice: number): Rows => [
  ["Gramm", "Zutat"],
  [600, "Wasser"],
  [180, "Zucker"],
  [120, "Zitronensaft"],
  [],
  ["gefriert ab °C", "Wasser gefroren bei −16 °C, %", null, ...log],
  [-1.6, ice],
];

describe("A label over its number", () => {
  test.each<Tried>([
    {
      what: "is not that of a number behind other words",
      sheets: { Karten: card(["Keller", 11, 8], 82) },
      found: [],
    },
    {
      what: "is that of the one below",
      sheets: { Karten: card(["Keller", 11, 8], 50) },
      found: ["result-differs Karten!B7"],
    },
  ])("$what", expectFound);
});

/** A mix by mass fractions, whose unit stands with the names. */
const shares = (heading: string, sugar: number): Rows => [
  [heading, "V0", "V1"],
  ["Wasser", 0.667, 0.66],
  ["Zucker", 0.2, sugar],
  ["Zitronensaft", 0.133, 0.14],
];

describe("One mass in another is a share", () => {
  test.each<Tried>([
    { what: "kg/kg", sheets: { Reihe: shares("Rohstoff, Massenanteil [kg/kg]", 0.2) }, found: [] },
    {
      what: "one is in per cent",
      sheets: { Reihe: shares("Rohstoff, Massenanteil [kg/kg]", 20) },
      found: ["percent-and-fraction Reihe!C3"],
    },
    {
      what: "in words",
      sheets: { Reihe: shares("Rohstoff (g je g)", 20) },
      found: ["percent-and-fraction Reihe!C3"],
    },
    { what: "kilograms are none", sheets: { Reihe: shares("Rohstoff [kg]", 20) }, found: [] },
  ])("$what", ({ sheets, found }) => {
    const told = of(findingsOf(sheets), "percent-and-fraction");
    expect(told.map(({ rule, sheet, cell }) => `${rule} ${sheet}!${cell}`)).toEqual(found);
  });
});

const stall = (label: string, point: Rows[number][number], unit: string): Rows => [
  ["Whole mix /g", formula("SUM(B3:B5)", 900)],
  ["Stuff", "Mass /g"],
  ["water", 600],
  ["sucrose", 180],
  ["lemon juice", 120],
  [],
  [label, point, unit],
];

describe("Only a unit says what a few words are of a mix", () => {
  test.each<Tried>([
    { what: "sets from", sheets: { Ice: stall("Sets from", -1.6, "°C") }, found: [] },
    {
      what: "sets from, the other way round",
      sheets: { Ice: stall("Sets from", 1.6, "°C") },
      found: ["freezing-point-sign Ice!B7"],
    },
    {
      what: "sets from what is no temperature",
      sheets: { Ice: stall("Sets from", 16, "£") },
      found: [],
    },
    {
      what: "how far down",
      sheets: { Ice: stall("Down from 0", 3.9, "K") },
      found: ["result-differs Ice!B7"],
    },
  ])("$what", expectFound);
});

test("a total whose unit stands behind a stroke leaves a line out", () => {
  const rows = stall("Sets from", -1.6, "°C").with(0, ["Whole mix /g", formula("SUM(B3:B4)", 780)]);
  expectFound({ what: "", sheets: { Ice: rows }, found: ["total-incomplete Ice!B1"] });
});

const bucket = (label: string): Rows => [
  [label, 8],
  [],
  ["Stuff", "Per cent", "Bucket (g)"],
  ...[
    ["water", 66.7],
    ["sucrose", 20],
    ["lemon juice", 13.3],
  ].map(([name, share], at): Rows[number] => [
    ...[name!, share!],
    formula(`$B$1*1000*B${at + 4}/100`, 80 * Number(share)),
  ]),
];

test.each([
  ["Bucket holds", ["B1"]],
  ["Bucket holds (kg)", []],
])("what a vessel holds is an input with a unit: %s", (label, cells) => {
  const told = of(findingsOf(bucket(label)), "input-without-unit");
  expect(told.map(({ cell }) => cell)).toEqual(cells);
});
