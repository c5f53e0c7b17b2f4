import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

const NAMES = ["water", "sucrose", "fructose", "vodka 40 %"];
const VERSIONS = [
  [600, 200, 0, 0],
  [600, 100, 100, 0],
];
const column = (values: readonly (string | number)[]) => values.map((value) => [value]);
const freezesAt = (grams: readonly number[]): number =>
  Number(callFunction("FREEZINGPOINT", column(NAMES), column(grams))[0]?.[0]);
const points = VERSIONS.map(freezesAt);
const [first = 0, second = 0] = points;

/** Two versions of an ice in rows, and below them how the second compares with the first. */
const versions = (label: string, ...compared: Rows): Record<string, Rows> => ({
  Ice: [
    ["Version, weights in g", ...NAMES.slice(0, 3), "Sum", "Freezes at (°C)"],
    ...VERSIONS.map((grams, at): Rows[number] => [
      ["A, as now", "B, half as fructose"][at] ?? null,
      ...grams.slice(0, 3),
      formula(`SUM(B${at + 2}:D${at + 2})`, 800),
      formula(`RIME.FREEZINGPOINT($B$1:$D$1,B${at + 2}:D${at + 2})`, points[at] ?? 0),
    ]),
    [],
    ["Version", label],
    ...compared,
  ],
});

const GRAMS = [600, 150, 0, 60];
/** A drink, and what is said below its list. */
const drink = (...lines: Rows): Record<string, Rows> => ({
  Ice: [
    ["Ingredient", "g"],
    ...GRAMS.flatMap((grams, at): Rows => (grams === 0 ? [] : [[NAMES[at] ?? null, grams]])),
    ["Not for children: alcohol"],
    [],
    ...lines,
  ],
});
const lowered = -freezesAt(GRAMS);

describe("What an answer is by its formula, its unit and the words around it", () => {
  test.each<Tried>([
    {
      what: "one freezing point minus another is none",
      sheets: versions(
        "Freezing point, B after A (K)",
        ["A, as now", formula("F2-$F$2", 0)],
        ["B, half as fructose", formula("F3-$F$2", second - first)],
      ),
      found: [],
    },
    {
      what: "nor is what is typed against a version",
      sheets: versions("Gefrierpunkt gegenüber A (K)", ["B, half as fructose", second - first]),
      found: [],
    },
    {
      what: "a point that is pulled down is a depression",
      sheets: drink(["Freezing point pulled down by, K", lowered]),
      found: [],
    },
    {
      what: "and has no minus",
      sheets: drink(["Gefrierpunkt nach unten gedrückt um (K)", -lowered]),
      found: ["freezing-point-sign Ice!B7"],
    },
    {
      what: "grams of alcohol by weight are no share",
      sheets: drink(["Alcohol by weight in the batch, g", 20]),
      found: [],
    },
    {
      what: "unless they are said to be one",
      sheets: drink(["Alcohol by weight in the batch, %", 20]),
      found: ["result-differs Ice!B7"],
    },
    {
      what: "grams of alcohol by weight that are those by volume",
      sheets: drink(["Alcohol by weight in the batch, g", 24]),
      found: ["abv-as-mass Ice!B7"],
    },
  ])("$what", expectFound);
});
