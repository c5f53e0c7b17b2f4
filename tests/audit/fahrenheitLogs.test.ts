import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

// A freezer keeps −18 °C (Directive 89/108/EEC); 0 °F is −17.8 °C, −1 °F −18.3 °C, −5 °F −20.6 °C by definition.
const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];
const log = (heading: string, readings: Rows[number], remarks: Rows[number] = []): Rows => [
  ["Day", heading, "Remarks"],
  ...readings.map((reading, at) => [DAYS[at % 7], reading, remarks[at] ?? null]),
];
const COLD = [-18, -18.5, -17.6, -18.2, -19, -18.1, -17.9, -18.4];
const withOne = (at: number, reading: Rows[number][number]) => COLD.with(at, reading as never);

describe("A freezer's log with a reading in °F", () => {
  test.each<Tried>([
    {
      what: "the first reading",
      sheets: { Log: log("Freezer (°C)", withOne(0, 0)) },
      found: ["temperature-units-mixed Log!B2"],
    },
    {
      what: "what the freezer is said to be at, beside its log",
      sheets: { Log: [["Tiefkühltruhe (°C)", -6], [], ...log("Truhe abgelesen (°C)", COLD)] },
      found: ["temperature-units-mixed Log!B1"],
    },
    {
      what: "a cabinet warmer than the freezer, whose log stands below",
      sheets: { Log: [["Serving cabinet (°C)", -8], [], ...log("Freezer read (°C)", COLD)] },
      found: [],
    },
    {
      what: "a heading that has the letter alone",
      sheets: { Log: log("hinge end C", withOne(2, -1)) },
      found: ["temperature-units-mixed Log!B4"],
    },
    {
      what: "no log, whatever letter ends its heading",
      sheets: { Log: log("Version C", [12, 14, 0, 13, 12, 11]) },
      found: [],
    },
    {
      what: "the last reading, in German",
      sheets: { Log: log("Truhe in °C", withOne(7, -1)) },
      found: ["temperature-units-mixed Log!B9"],
    },
    {
      what: "the second of two freezers",
      sheets: {
        Log: [
          ["Day", "Left (°C)", "Right (°C)"],
          ...COLD.map((left, at) => [DAYS[at % 7], left, at === 4 ? -5 : left - 3]),
        ],
      },
      found: ["temperature-units-mixed Log!C6"],
    },
    {
      what: "a day without a reading before it",
      sheets: { Log: log("Freezer (°C)", withOne(5, 0).with(2, null as never)) },
      found: ["temperature-units-mixed Log!B7"],
    },
    {
      what: "a day on which the thermometer was broken before it",
      sheets: { Log: log("Freezer (°C)", withOne(5, 0).with(2, "n/a" as never)) },
      found: ["temperature-units-mixed Log!B7"],
    },
    {
      what: "readings in groups, a blank row between",
      sheets: {
        Log: [
          ...log("Freezer (°C)", COLD.slice(0, 4)),
          [null],
          ...log("", withOne(6, 0).slice(4)).slice(1),
        ],
      },
      found: ["temperature-units-mixed Log!B9"],
    },
    {
      what: "an ice cabinet's label",
      sheets: {
        Ice: [
          ["Cabinet (°C)", 10],
          ["Ingredient", "g"],
          ["Water", 500],
          ["Sucrose", 150],
        ],
      },
      found: ["temperature-units-mixed Ice!B1"],
    },
    {
      what: "readings along a row",
      sheets: {
        Log: [
          ["Day", ...DAYS],
          ["Freezer (°C)", ...withOne(3, 0)],
        ],
      },
      found: ["temperature-units-mixed Log!E2"],
    },
  ])("$what", expectFound);
});

describe("A freezer's log that is right", () => {
  test.each<Tried>([
    {
      what: "no log, but shares of ice at a temperature, one of them far from the others",
      sheets: {
        Mixes: [
          ["Freezer (°C)", -18],
          ["Ice in the mix at −10 °C (%)", 47, 39.8, 30.8, 69.5],
        ],
      },
      found: [],
    },
    {
      what: "the door stood open",
      sheets: { Log: log("Freezer (°C)", withOne(3, -4), [null, null, null, "door left open"]) },
      found: [],
    },
    {
      what: "all of it in °F, and said so",
      sheets: { Log: log("Freezer (°F)", [0, -1, 1, 0, -2, 1, 0]) },
      found: [],
    },
    {
      what: "a fridge and a freezer side by side",
      sheets: {
        Log: [
          ["Day", "Fridge (°C)", "Freezer (°C)"],
          ...COLD.map((cold, at) => [DAYS[at % 7], 4 + (at % 3), cold]),
        ],
      },
      found: [],
    },
    {
      what: "a cabinet that cools",
      sheets: {
        Ice: [
          ["Cooling cabinet (fridge, °C)", 5],
          ["Ingredient", "g"],
          ["Water", 500],
          ["Sucrose", 150],
        ],
      },
      found: [],
    },
    {
      what: "a warmer place, a blank row below the log",
      sheets: {
        Log: [...log("Freezer (°C)", COLD), [null], ["Ice bath", -5], ["Ice bath, salted", "–"]],
      },
      found: [],
    },
    {
      what: "a mean below the readings",
      sheets: {
        Log: [...log("Freezer (°C)", COLD), ["Mean", formula("AVERAGE(B2:B9)", -18.2125)]],
      },
      found: [],
    },
    {
      what: "the core of an ice that would have thawed between two readings",
      sheets: { Log: log("Core temp. °C", [4, -7, -19, 5, -13]) },
      found: ["temperature-units-mixed Log!B5"],
    },
    {
      what: "a fridge among freezers",
      sheets: { Log: log("read at noon, °C", [-18, 5, -13]) },
      found: [],
    },
    {
      what: "the core of an ice that thaws in the end",
      sheets: { Log: log("Core temp. °C", [4, -7, -19, -13, 5]) },
      found: [],
    },
    {
      what: "a set point beside the readings",
      sheets: {
        Log: [
          ["Day", "Set point (°C)", "Read (°C)"],
          ...COLD.map((cold, at) => [DAYS[at % 7], -18, cold]),
        ],
      },
      found: [],
    },
  ])("$what", expectFound);
});
