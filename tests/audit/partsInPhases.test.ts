import { findRecipes } from "../../src/audit/recipes/findRecipes";
import { bookOf, formula, type Rows } from "./bookOf";
import { expectFound, rulesOn, type Tried } from "./tried";

/** A recipe in phases with headings and sums of their own, and its freezing point. */
const phases = (sugar: string, point: number): Rows => [
  ["Rohstoff", "Menge [g]"],
  ["Phase A: vorlegen"],
  ["Trinkwasser", 600],
  ["Zitronensaft", 60],
  ["Summe Phase A", formula("SUM(B3:B4)", 660)],
  ["Phase B: einrühren"],
  [sugar, 150],
  ["Dextrose-Monohydrat", 50],
  ["Summe Phase B", formula("SUM(B7:B8)", 200)],
  ["Charge gesamt", formula("B5+B9", 860)],
  [],
  ["Gefrierpunkt (°C)", point],
];

describe("A list in phases, each with its heading and its sum", () => {
  test.each<Tried>([
    { what: "all known", sheets: { Eis: phases("Saccharose", -2.2) }, found: [] },
    {
      what: "the one below a heading unknown",
      sheets: { Eis: phases("Hausmischung B", -2.2) },
      found: ["unknown-ingredient Eis!A7"],
    },
    {
      what: "with another freezing point",
      sheets: { Eis: phases("Saccharose", -4.1) },
      found: ["result-differs Eis!B12"],
    },
  ])("$what", expectFound);
});

/** Two parts, the second of unknown things under words of its own, and what is said of both together. */
const partsOf = (second: readonly string[], whole: string, point: number): Rows => [
  ["Rohstoff", "Menge (g)", null, "Gefrierpunkt (°C)", point],
  ["Vollmilch", 500, null, "Ziel", "fester Riegel bei −18"],
  ["Sahne 35 %", 170],
  ["zusammen", formula("SUM(B2:B3)", 670)],
  ["Trocken dazu"],
  [],
  [],
  ...second.map((item): Rows[number] => [item, 150]),
  ["zusammen", formula("SUM(B8:B9)", 300)],
  [],
  ["gesamt", formula(whole, 970)],
];

test("beside a part of more than is known nothing is said of it that may be said of the whole", () => {
  const house = ["Hausmischung A", "Hausmischung B"];
  expectFound({ what: "", sheets: { Eis: partsOf(house, "B4+B10", -6.1) }, found: [] });
  const rules = (whole: string) => rulesOn({ Eis: partsOf(house, whole, -6.1) });
  expect(rules("SUM(B4,B10)")).not.toContain("result-differs");
  expect(rules("B4*1.45")).toContain("result-differs");
});

/** A list with what stands in a column beside it, at the last line of each vessel. */
const vessels = (jug: Rows[number][number], bowl: Rows[number][number]): Rows => [
  ["Vessel", "Stuff", "Grams", "Vessel holds (g)"],
  ["Jug", "whole milk", 620, null],
  [null, "cream 35 % fat", 120, jug],
  ["Bowl", "sucrose", 150, null],
  [null, "dextrose monohydrate", 34, bowl],
  ["Contains milk."],
];

test("what each vessel holds is no recipe of its own; what is typed beside the first may be", () => {
  const columns = (rows: Rows) =>
    findRecipes(bookOf({ Ice: rows })).blocks.flatMap(({ recipes }) =>
      recipes.map(({ line }) => line),
    );
  expect(columns(vessels(formula("SUM(C2:C3)", 740), formula("SUM(C4:C5)", 184)))).toEqual([2]);
  expect(columns(vessels(formula("SUM(C2:C4)", 890), formula("SUM(C5)", 34)))).toEqual([2]);
  expect(columns(vessels(700, 190))).toEqual([2, 3]);
});
