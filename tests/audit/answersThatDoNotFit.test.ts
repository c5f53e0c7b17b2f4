import { formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

const LIST: Rows = [
  ["Ingredient", "Amount (g)"],
  ["Water", 600],
  ["Sucrose", 150],
  ["Dextrose monohydrate", 50],
];
const MIXES = "A2:A4,B2:B4";

/** What stands below the list: water 604.5 g and sugars 195.5 g of 800. */
const withAnswers = (point: number, ice: number, water: number): Rows => [
  ...LIST,
  [],
  ["Freezing point (°C)", point],
  ["Water frozen at −12 °C (%)", ice],
  ["Water in the mix (g)", water],
];

test("answers of which none fits the list are told as one", () => {
  const found = findingsOf(withAnswers(-5, 40, 300));
  expect(placesOf(found)).toEqual(["B6 result-differs"]);
  expect(found[0]?.severity).toBe("warning");
  expect(found[0]?.message).toMatch(/^None of the 3 answers here fits the list: "Freezing point/);
});

test("where one of them fits, each of the others is told", () => {
  const found = findingsOf(withAnswers(-5, 40, 604));
  expect(placesOf(found)).toEqual(["B6 result-differs", "B7 result-differs"]);
});

/** Two lists on one sheet with two answers each; the last freezing point is given. */
const twoLists = (point: number): Rows => [
  ...LIST,
  ["Freezing point (°C)", -9],
  ["Water frozen at −12 °C (%)", 20],
  ["Served as", "scooped at −13"],
  [],
  ["Second", null],
  ["Ingredient", "Amount (g)"],
  ["Water", 700],
  ["Sucrose", 150],
  ["Freezing point (°C)", point],
  ["Water frozen at −12 °C (%)", 15],
  ["Served as", "scooped at −13"],
];

test("where no list of a sheet has an answer that fits, that is told once, and nothing of their mixes", () => {
  const found = findingsOf(twoLists(-8));
  expect(placesOf(found)).toEqual(["B5 result-differs"]);
  expect(found[0]?.message).toMatch(/^None of the 4 answers here fits the list/);
});

test("where one of them has, everything is told", () => {
  expect(placesOf(findingsOf(twoLists(-1.2))).sort()).toEqual([
    ...["B14 result-differs", "B15 misses-its-target", "B5 result-differs", "B6 result-differs"],
  ]);
});

const ownSolution: Rows = [
  ["Weight of it (g)", 12],
  ["Its molar mass (g/mol)", 180.16],
  ["Water around it (g)", 250],
  ["How far does the freezing point drop?", formula("1.86*B6/B7/(B8/1000)", 0.4956)],
];

test("an answer worked out from numbers of its own is not about the list above", () => {
  expect(placesOf(findingsOf([...LIST, [], ...ownSolution]))).toEqual([]);
});

test("an answer worked out from the list is about it, wherever it stands", () => {
  const rows: Rows = [
    ...LIST,
    [],
    ["A tray holds (g)", 400],
    ["Trays", 2],
    ["Freezing point (°C)", { value: -5, formula: `RIME.FREEZINGPOINT(${MIXES})+0*B6*B7` }],
  ];
  expect(placesOf(findingsOf(rows))).toContain("B8 result-differs");
});

test("a share of the water is no temperature, and what is in % or °C by its unit is never the other", () => {
  const rows: Rows = [
    ...LIST,
    [],
    ["Share of the water that freezes in the bag", 59, "%"],
    ["Freezing", 41, "% of the tubs"],
    ["Ice in the cabinet", -12, "°C"],
  ];
  expect(placesOf(findingsOf(rows))).toEqual([]);
});

test("water and alcohol among answers are no recipe", () => {
  const rows: Rows = [
    ...LIST,
    [],
    [],
    [null, null, null, "Freezing point", -2.5, "°C"],
    [null, null, null, "lower than with water by", 2.5, "K"],
    [null, null, null, "Alcohol", 0, "g"],
    [null, null, null, "Water", 604.5, "g"],
  ];
  expect(placesOf(findingsOf(rows))).not.toContain("D7 unknown-ingredient");
});

test("answers in a row that reads a recipe's total are about that recipe", () => {
  const mixes: Rows = [
    ["Ingredient", "Amount (g)"],
    ["Water", 600],
    ["Sucrose", 150],
    ["Total", formula("SUM(B2:B3)", 750)],
    [],
    ["Ingredient", "Amount (g)"],
    ["Whole milk", 600],
    ["Sucrose", 90],
    ["Total", formula("SUM(B7:B8)", 690)],
  ];
  const check: Rows = [
    ["Group", "Planned (g)", "Weighed (g)", "Freezing point (°C)"],
    ["A", formula("Mixes!B4", 750), 748, -1.4],
    ["B", formula("Mixes!B9", 690), 691, -4.4],
  ];
  const found = findingsOf({ Check: check, Mixes: mixes }).filter(({ sheet }) => sheet === "Check");
  expect(placesOf(found)).toEqual(["D3 result-differs"]);
});

/** Three recipes in columns, with sugars that are per 100 g of something else and the right freezing points. */
const threeColumns = (...sugars: readonly number[]): Rows => [
  ["Ingredient", "Mild (g)", "Sweet (g)", "Sweetest (g)"],
  ["Water", 800, 750, 700],
  ["Sucrose", 150, 200, 250],
  ["Dextrose monohydrate", 50, 50, 50],
  [],
  ["Freezing point (°C)", -1.71, -2.26, -2.93],
  ["Sugars in the mix (g)", ...sugars],
];

test("where no answer of one name fits its list and the others do, that is told once", () => {
  const found = findingsOf(threeColumns(15, 20, 25)).filter(
    ({ rule }) => rule === "result-differs",
  );
  expect(placesOf(found)).toEqual(["B7 result-differs"]);
  expect(found[0]?.severity).toBe("warning");
  expect(found[0]?.message).toMatch(/^None of the 3 answers of this name fits its list: "Sugars/);
});

test("where one of that name fits, each of the others is told", () => {
  const found = findingsOf(threeColumns(195.5, 20, 25));
  expect(placesOf(found)).toEqual(
    expect.arrayContaining(["C7 result-differs", "D7 result-differs"]),
  );
  expect(found.some(({ message }) => message.startsWith("None"))).toBe(false);
});
