import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

const told = (rows: Rows): string[] => placesOf(findingsOf(rows));

/** The units that the recipes of a sheet were taken to be in; null where none was found written. */
const unitsOf = (rows: Rows) =>
  auditContext(bookOf({ Sheet1: rows }), []).blocks.flatMap(({ recipes }) =>
    recipes.map(({ unit, unitAssumed }) => (unitAssumed ? null : unit)),
  );

describe("Amounts with a unit each, below a heading that says how much they make", () => {
  const leaf = (heading: string, sugar = 200, unit = "g"): Rows => [
    [heading, null, "of"],
    [700, "g", "water"],
    [sugar, unit, "sugar"],
    [100, "g", "lemon juice"],
    [formula("SUM(A2:A4)", 800 + sugar), "g", "altogether"],
    ["Water in it (g)", 791],
  ];

  test.each([
    "for a kilo",
    "for one kilo",
    "makes a kilo",
    "for half a kilo",
    "fürs ganze Kilo",
    "für ein Kilo",
  ])("%s", (heading) => {
    expect(told(leaf(heading))).toEqual([]);
    expect(told(leaf(heading, 0.2, "kg"))).toContain("A3 mass-units-mixed");
  });

  test("along a row, too", () => {
    const row = (label: string): Rows => [
      [null, "water", "sugar", "lemon juice"],
      [label, 700, 200, 100],
    ];
    expect(unitsOf(row("for a kilo"))).toEqual([null]);
    expect(unitsOf(row("for a kilo, g"))).toEqual(["g"]);
    expect(unitsOf(row("amount in kg"))).toEqual(["kg"]);
  });

  test("in another unit than the heading has", () => {
    expect(told(leaf("amount in kg"))).toContain("A2 mass-units-mixed");
  });
});

describe("Shares that a heading calls a mass in the same mass", () => {
  const file = (heading: string): Rows => [
    [heading, "F-31", "F-32"],
    ["name", "Lemon ice", "Orange ice"],
    ["water", 0.7, 0.5],
    ["sugar", 0.2, 0.2],
    ["orange juice", 0.1, 0.3],
  ];

  test.each([
    "mass fraction (g per g of mix)",
    "kg/kg",
    "kg je kg Masse",
    "g per g of the finished mix",
    "Gramm (g pro g der Eismasse)",
  ])("%s", (heading) => {
    expect(unitsOf(file(heading))).toEqual(["fraction", "fraction"]);
  });

  test.each(["g per g of sugar", "amount (g)", "g for a kg of mix"])("not %s", (heading) => {
    expect(unitsOf(file(heading))).not.toContain("fraction");
  });
});

describe("Lists that are known by the functions that are given them", () => {
  const point = (column: string) =>
    formula(`RIME.FREEZINGPOINT($A$5:$A$7,${column}5:${column}7)`, -2);
  const runs = (over: string, juice = 10): Rows => [
    ["Run", "R1", "R2"],
    ["Date", "9 Jan", "16 Jan"],
    ["Change", "as supplied", "re-weighed"],
    [over],
    ["water", 70, 68],
    ["sugar", 20, 20],
    ["lemon juice", juice, 12],
    ["Total", formula("SUM(B5:B7)", 90 + juice), formula("SUM(C5:C7)", 100)],
    [],
    ["Freezing pt, °C", point("B"), point("C")],
  ];

  test("have the unit that is said between their headings and their lines", () => {
    expect(unitsOf(runs("% of finished mix"))).toEqual(["%", "%"]);
    expect(told(runs("% of finished mix"))).not.toContain("B5:B7 total-incomplete");
    expect(told(runs("% of finished mix", 6))).toContain("B5:B7 total-incomplete");
  });

  test("or none, where that is a remark", () => {
    expect(unitsOf(runs("weighed by Ann"))).toEqual([null, null]);
  });
});

describe("A list below an answer of the one above", () => {
  const twice = (answer: string, heading: string): Rows => [
    ["Lemon ice", "water", "sugar", "lemon juice"],
    ["one bucket, g", 700, 200, 100],
    [],
    [answer, formula('RIME.COMPONENT(B1:D1,B2:D2,"water")', 791)],
    [],
    ["Orange ice", "water", "sugar", "orange juice"],
    [heading, 500, 200, 300],
  ];

  test.each(["All the water (g)", "Water in it (g)", "alles Wasser (g)"])(
    "does not take the unit of %s",
    (answer) => {
      expect(told(twice(answer, "Amount"))).toContain("A7 input-without-unit");
      expect(told(twice(answer, "Amount, g"))).not.toContain("A7 input-without-unit");
    },
  );
});
