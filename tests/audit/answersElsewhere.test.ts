import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

interface Marked {
  readonly point?: number;
  readonly water?: number;
  readonly target?: string;
}

const HANDED_IN: Rows = [
  ["A. K.: Lemon ice"],
  ["Line", "Used", "How much", null, "Remark"],
  [1, "water", 600, "g"],
  [2, "sucrose", 200, "g"],
  [3, "lemon juice", 100, "g"],
  [null, "Weight of the mix", formula("SUM(C3:C5)", 900)],
  [],
  [],
  ["B. T.: Orange ice"],
  ["Line", "Used", "How much", null, "Remark"],
  [1, "orange juice", 700, "g"],
  [2, "sucrose", 150, "g"],
  [3, "water", 100, "g"],
  [null, "Weight of the mix", formula("SUM(C11:C13)", 950)],
];

/** Recipes on one sheet, a line on each of them on another; what can be had stands between the headings and the lines. */
const marks = ({ point = -1.8, water = 692, target = "firm bar at −18" }: Marked = {}): Rows => [
  [
    "Learner",
    "Their freezing point (°C)",
    "My check (°C)",
    "Their water (g)",
    "Meant to be",
    "Marks",
  ],
  ["can be had", null, null, null, null, 5],
  [
    "A. K.",
    point,
    formula("RIME.FREEZINGPOINT('Handed in'!B3:B5,'Handed in'!C3:C5)", -1.84),
    water,
    target,
    4,
  ],
  [
    "B. T.",
    -2.3,
    formula("RIME.FREEZINGPOINT('Handed in'!B11:B13,'Handed in'!C11:C13)", -2.35),
    718,
    "scooped at −13",
    3,
  ],
];

const tried = (what: string, marked: Marked, ...found: string[]): Tried => ({
  ...{ what, sheets: { Marks: marks(marked), "Handed in": HANDED_IN }, found },
});

/** A front page of three sorts, each mixed on a sheet of its own; the water of the last one is typed. */
const frontPage = (water: number): Tried["sheets"] => {
  const sorts = ["One", "Two", "Three"];
  const line = (sort: string, at: number): Rows[number] => [
    ...[sort, formula(`RIME.FREEZINGPOINT('${sort}'!A2:A4,'${sort}'!B2:B4)`, -1.84)],
    ...[at === 2 ? water : 692, 61],
  ];
  const mixed: Rows = [
    ["Item", "g"],
    ["water", 600],
    ["sucrose", 200],
    ["lemon juice", 100],
  ];
  return {
    Front: [
      ["Course", "Freezing point (°C)", "Water (g)", "Ice at −14 °C (% of the mix)"],
      ...sorts.map(line),
    ],
    ...Object.fromEntries(sorts.map((sort) => [sort, mixed])),
  };
};

test.each([
  [692, []],
  [600, ["water-not-counted Front!C4"]],
  [900, ["result-differs Front!C4"]],
])("water of %p g in the last line of a front page", (water, found) => {
  expectFound({ what: "", sheets: frontPage(water), found });
});

describe("Answers in a table on another sheet than their recipes", () => {
  test.each<Tried>([
    tried("are about the recipe that the formulas of their row read", {}),
    tried("a freezing point that differs", { point: -3.4 }, "result-differs Marks!B3"),
    tried("only the water that was poured", { water: 600 }, "water-not-counted Marks!D3"),
    tried("another target than is met", { target: "scooped at −13" }, "misses-its-target Marks!E3"),
  ])("$what", expectFound);
});
