import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST: Rows = [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Total", formula("SUM(B2:B3)", 650)],
  [],
];

const unit = { rule: "input-without-unit" } as const;

/** Readings under a heading, and temperatures that none is over. */
export const readingCases: readonly RuleCase[] = [
  {
    ...{
      ...unit,
      cells: [],
      what: "readings down a plan of the evening in which nobody looked at first",
    },
    rows: [
      ...LIST,
      ["When", "What", "Shown at the door (°C)"],
      ["18:00", "Hands are washed"],
      ["18:20", "Mix goes in", -16],
      ["19:10", "Freezer is opened", -17.5],
      ["20:00", "Ice is served", -16],
    ],
  },
  {
    ...{
      ...unit,
      cells: ["C9", "C10"],
      what: "readings down such a plan whose heading has no unit",
    },
    rows: [
      ...LIST,
      ["When", "What", "Shown"],
      ["18:00", "Hands are washed"],
      ["18:20", "Mix is poured"],
      ["19:10", "Freezer is at", -17.5],
      ["20:00", "Served at", -16],
    ],
  },
  {
    ...{ ...unit, cells: ["B9"], what: "a temperature below another one in words" },
    rows: [
      ...LIST,
      ["Freezer", "new"],
      ["Wanted", "scoops at −13 °C"],
      ["Opens", "9"],
      ["Freezer", -18],
    ],
  },
  {
    ...{ ...unit, cells: ["B9"], what: "a temperature below a free row" },
    rows: [...LIST, ["Door", "Read (°C)"], ["left", -16], [], ["Freezer", -18]],
  },
  ...["freezer tape", "Boxes for the freezer", "Gefrierbeutel"].map((bought) => ({
    ...{ ...unit, cells: [], what: `things for a freezer, which are counted: ${bought}` },
    rows: [...LIST, [bought, 2], [], ["Stored at (°C)", -18]],
  })),
  {
    ...{ ...unit, cells: [], what: "a freezer among what is bought" },
    rows: [...LIST, ["To buy", "How many"], ["tubs", 20], ["small freezer", 1]],
  },
  {
    ...{ ...unit, cells: ["B6"], what: "a freezer without a heading" },
    rows: [...LIST, ["small freezer", -18]],
  },
];

const threeDays = (heading: string, readings: readonly number[]): Rows => [
  ...LIST,
  ["Day", heading],
  ...["Fri", "Sat", "Sun"].map((day, at) => [day, readings[at] ?? null]),
];

const mixed = { rule: "temperature-units-mixed" } as const;

/** What a table says of a freezer, on a sheet in °C. */
const ofFreezer = (heading: string): Rows => [
  ...LIST,
  ["Freezing point (°C)", -1.6],
  [],
  ["What", heading],
  ["labels", 20],
  ["small freezer", 1],
];

/** Three readings of a freezer, of which one may be in °F: −3 °F is −19.4 °C. */
export const threeReadingsCases: readonly RuleCase[] = [
  {
    ...{ ...mixed, cells: [], what: "a freezer among what is bought" },
    rows: ofFreezer("How many"),
  },
  {
    ...{ ...mixed, cells: ["B10"], what: "a freezer that is far too warm in °C" },
    rows: ofFreezer("set"),
  },
  {
    ...{ ...mixed, cells: ["B7"], what: "one of three readings below 0, at home when it is in °F" },
    rows: threeDays("Freezer at 3 (°C)", [-3, -18, -18.5]),
  },
  {
    ...{ ...mixed, cells: ["B8"], what: "the second of three readings of a Truhe" },
    rows: threeDays("Truhe 15 Uhr (°C)", [-19, -2, -18.5]),
  },
  {
    ...{ ...mixed, cells: ["B8"], what: "one of three readings of a fridge" },
    rows: threeDays("Kühlschrank °C", [3.5, 38, 3]),
  },
  {
    ...{ ...mixed, cells: [], what: "what was warm when it was put into the fridge" },
    rows: threeDays("Mix in the fridge (°C)", [38, 4, 3]),
  },
  {
    ...{ ...mixed, cells: [], what: "settings of several devices" },
    rows: threeDays("Set (°C)", [4, 40, 5]),
  },
  {
    ...{ ...mixed, cells: [], what: "a fridge that was far too warm on a day" },
    rows: threeDays("Fridge (°C)", [4, 18, 5]),
  },
  {
    ...{ ...mixed, cells: [], what: "a freezer that was only too warm on a day" },
    rows: threeDays("Freezer at 3 (°C)", [-9, -18, -18.5]),
  },
  {
    ...{ ...mixed, cells: ["B9"], what: "the last of three of a mix that cools" },
    rows: threeDays("Core of the mix (°C)", [3.5, -1, 22]),
  },
  {
    ...{ ...mixed, cells: [], what: "what is cooled and then warm again" },
    rows: threeDays("Core of the mix (°C)", [3.5, -1, 8]),
  },
  ...[1, -15].map((last) => ({
    ...{
      ...mixed,
      cells: last > 0 ? ["C9"] : [],
      what: `words left of a unit, and ${String(last)}`,
    },
    rows: [
      ...LIST,
      ["Who", "Freezer read at", "°C"],
      ["Ann", "1.45", -19.5],
      ["Ben", "2.30", -16],
      ["Cem", "3.15", last],
    ],
  })),
  {
    ...{ ...mixed, cells: [], what: "what is read of the mix as it freezes" },
    rows: threeDays("Mix at 3 (°C)", [-3, -18, -18.5]),
  },
];

const days = (third: string): Rows => [
  ["No.", "on", "Water", "Sucrose", "Fructose", "Sum (g)"],
  [1, "3.5.", 500, 150, 20, formula("SUM(C2:E2)", 670)],
  [2, "10.5.", 500, third, 20, formula("SUM(C3:E3)", 520)],
  [3, "17.5.", 500, 140, 20, formula("SUM(C4:E4)", 660)],
];

/** Days as they are written in German, which are no numbers. */
export const dayCases: readonly RuleCase[] = [
  {
    ...{ rule: "number-as-text", cells: ["D3"], what: "an amount as text, not the days beside it" },
    rows: days("145,5"),
  },
  {
    ...{ rule: "unknown-ingredient", cells: [], what: "the days on which each version was made" },
    rows: days("145,5"),
  },
];
