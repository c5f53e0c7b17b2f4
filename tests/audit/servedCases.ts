import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const rule = "temperature-units-mixed";
const mix: Rows = [["Ingredient", "g"], ["Water", 600], ["Sucrose", 150], ["Lemon juice", 50], []];
const log = (title: string, head: string, readings: readonly number[]): Rows => [
  [title],
  ["Day", head],
  ...readings.map((value, at) => [`day ${at + 1}`, value]),
];
const iceAt = (cell: string) => `100*RIME.ICEFRACTION(A2:A4,B2:B4,${cell},"water")`;
const readings = [-18, -18.5, -17, 1, -18, -19, -18];

/** Serving temperatures and logs; 10 °F is −12.2 °C, 1 °F is −17.2 °C (by definition, (F − 32) · 5/9). */
export const servedCases: readonly RuleCase[] = [
  {
    ...{ rule, cells: ["B6"], what: "a serving temperature with its unit in a cell of its own" },
    rows: [...mix, ["Serving temperature", 10, "°C"]],
  },
  {
    ...{ rule, cells: ["D3"], what: "one of the servings of recipes in rows" },
    rows: [
      ["Mix (g)", "Water", "Sucrose", "Serving temperature (°C)"],
      ["A", 600, 150, -12],
      ["B", 500, 150, 10],
      ["C", 550, 150, -14],
    ],
  },
  {
    ...{ rule, cells: ["C4"], what: "one of the servings of recipes in columns" },
    rows: [
      ["Ingredient (g)", "A", "B", "C"],
      ["Water", 600, 500, 550],
      ["Sucrose", 150, 150, 150],
      ["Serve at (°C)", -12, 10, -14],
    ],
  },
  ...(["Distribution temperature (°C)", "Lagertemperatur (°C)"] as const).map((label) => ({
    ...{ rule, cells: ["B6"], what: `ice is not kept so warm: ${label}` },
    rows: [...mix, [label, -4], ["Ice, % of the water", formula(iceAt("B6"), 40)]],
  })),
  {
    ...{ rule, cells: [], what: "some ice is served as warm" },
    rows: [
      ...mix,
      ["Serving temperature (°C)", -4],
      ["Ice, % of the water", formula(iceAt("B6"), 40)],
    ],
  },
  {
    ...{ rule, cells: ["B6"], what: "a reading of a log whose title says °C" },
    rows: log("Cellar freezer, all in °C", "Reading", readings),
  },
  {
    ...{ rule, cells: [], what: "sauces among what is served" },
    rows: [
      ["What", "Served at (°C)"],
      ["Hot sauce", 60],
      ["Cold sauce", 6],
      ["Scoops", -12],
      ["Bars", -18],
    ],
  },
  {
    ...{ rule, cells: [], what: "a numbering beside a log, and winter days" },
    rows: [
      ...log("Outside, °C", "Reading", [-8, -5, -6, 0, 2, -3, -4]),
      ...[[], ["No.", "Sold"], [1, 20], [2, 30], [3, 25]],
    ],
  },
  {
    ...{ rule, cells: [], what: "brines whose freezing points are right, however far apart" },
    rows: [
      ["Month", "Water (kg)", "Salt (kg)", "Brine would freeze at (°C)"],
      ["May", 60, 13, -13.9],
      ["June", 60, 17, -19.4],
      ["July", 60, 17, -19.4],
      ["August", 60, 13, -13.9],
    ],
  },
];
