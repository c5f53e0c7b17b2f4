import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

/** 20 g of sucrose in 100 g freeze at −1.46 °C, 25 g at −2.00 °C; with dextrose it is more. */
const HOME: Rows = [
  ["Our ice", null, null],
  [null, null, null],
  ["Grams", "Ingredients", null],
  [800, "Water", null],
  [200, "Sucrose", null],
  [null, "freezes from (°C)", -1.46],
  [null, "Water in it (g)", 800],
];

/** Salt water of a class in rows, 0.3 mol of particles in a litre. */
const jars: Rows = [
  ["Which jar freezes last?"],
  ["Salt in water, three times"],
  [],
  [],
  ["Jar", "Stirred in", "Grams", "Water (g)", "Molar mass (g/mol)", "Particles", "Drop (K)"],
  ...[1, 2, 3].map((grams, at) => {
    const row = 6 + at;
    return [
      ...["ABC"[at] ?? "", "sodium chloride", grams, 200, 58.44, 2],
      formula(`G${row}/I${row}*1000/H${row}*J${row}*1.86`, (grams / 58.44) * 5 * 3.72),
    ];
  }),
];

const beside = (left: Rows, right: Rows): Rows =>
  Array.from({ length: Math.max(left.length, right.length) }, (_, at) => [
    ...(left[at] ?? [null, null, null]),
    null,
    ...(right[at] ?? []),
  ]);

describe("Answers beside two lists", () => {
  test.each<Tried>([
    { what: "of the one they stand below", sheets: { Ice: beside(HOME, jars) }, found: [] },
    {
      what: "that are wrong of it",
      sheets: {
        Ice: beside(
          HOME.map((row, at) => (at === 5 ? [null, "freezes from (°C)", -2.6] : row)),
          jars,
        ),
      },
      found: ["result-differs Ice!C6"],
    },
  ])("$what", expectFound);
});

/** Two ices across, their answers below, and two more, of which the answers stand below, too. */
const twice = (water: number): Rows => [
  ["What goes in", "Plain", "Sweet"],
  ["water", 800, 750],
  ["sucrose", 200, 250],
  ["Freezes from, °C", formula("RIME.FREEZINGPOINT($A$2:$A$3,B2:B3)", -1.46), -2],
  ["Water in it, g", water, 750],
  [],
  ["% of the mix", "R1", "R2"],
  ["water", 90, 88],
  ["sucrose", 10, 12],
  ["Freezes from, °C", -0.64, -0.79],
];

describe("Answers between two lists below each other", () => {
  test.each<Tried>([
    { what: "that are right of one of them", sheets: { Ices: twice(800) }, found: [] },
    {
      what: "one that is right of neither",
      sheets: { Ices: twice(600) },
      found: ["result-differs Ices!B5"],
    },
  ])("$what", expectFound);
});

/** Solutions in rows; what a column is called may be unknown. */
const tubes = (water: string, third = "Particles", drop = 0.637): Rows => [
  ["Tube", "Stuff", "Grams", water, "M (g/mol)", third, "Moles", "mol/kg", "Drop (K)"],
  ...[1, 2].map((times, at) => {
    const row = 2 + at;
    const moles = (3 * times) / 58.44;
    return [
      ...[at + 1, "sodium chloride", 3 * times, 300 * times, 58.44, 2],
      formula(`C${row}/E${row}`, moles),
      formula(`G${row}*1000/D${row}`, (moles * 1000) / (300 * times)),
      formula(`1.86*H${row}*F${row}`, drop),
    ];
  }),
  [],
  [null, null, null, null, null, null, null, "Water in the jug (g)", 58],
];

describe("Water in the rows of a table", () => {
  test.each<Tried>([
    { what: "called so", sheets: { Tubes: tubes("Water (g)") }, found: [] },
    { what: "called by another word", sheets: { Tubes: tubes("Poured over (g)") }, found: [] },
    {
      what: "and a drop that does not fit it",
      sheets: { Tubes: tubes("Poured over (g)", "Particles", 0.9) },
      found: ["result-differs Tubes!I2", "result-differs Tubes!I3"],
    },
  ])("$what", expectFound);
});

/** A class's list whose masses stand on its paper: nothing here is weighed. */
const key = (particles: string): Rows => [
  ["Solute", "M (g/mol)", particles, "mol of particles"],
  ["sucrose", 342.3, 1, formula("Paper!B2/B2*C2", 0.3)],
  ["fructose", 180.16, 1, formula("Paper!B3/B3*C3", 0.35)],
];

describe("A class's list without masses", () => {
  const paper: Rows = [
    ["what", "g"],
    ["sucrose", 103],
    ["fructose", 63],
    ["water", 1000],
  ];
  test.each<Tried>([
    { what: "with its particles", sheets: { Paper: paper, Key: key("Particles") }, found: [] },
    { what: "with a word for them", sheets: { Paper: paper, Key: key("Blobs") }, found: [] },
  ])("$what", expectFound);
});

/** 74 % of the water of 200 g of sucrose in 800 g is ice in a freezer; 80 % of the mix is water. */
const shares = (label: string): Rows => [
  ["Ingredient", "g"],
  ["water", 800],
  ["sucrose", 200],
  [],
  [label, 74, "%"],
];

describe("A share of the water under an unknown word", () => {
  test("is not how much water there is", () => {
    expectFound({ what: "", sheets: { Ice: shares("Turned hard (% of water)") }, found: [] });
  });
});
