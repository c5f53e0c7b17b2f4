import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const rule = "number-as-text";
const flags = (what: string, rows: Rows, ...cells: readonly string[]): RuleCase => ({
  ...{ rule, what, rows, cells },
});
const leaves = (what: string, rows: Rows): RuleCase => ({ rule, what, rows, cells: [] });

const mix: Rows = [
  ["Ingredient", "g"],
  ["Water", 600],
  ["Sucrose", 150],
  ["Lemon juice", 50],
];
const error = (text: string) => ({ value: { error: "#VALUE!" }, formula: text });

/** Numbers typed as text beside and below recipes, and texts that are none: codes, dates, telephones, notes. */
export const textNumberCases: readonly RuleCase[] = [
  flags(
    "a price with a decimal comma, whose cost is an error",
    [
      ["Ingredient", "g", "Price (EUR/kg)", "Cost"],
      ["Water", 600, 0.1, formula("B2*C2/1000", 0.06)],
      ["Sucrose", 150, "3,40", error("B3*C3/1000")],
      ["Lemon juice", 100, 4, formula("B4*C4/1000", 0.4)],
    ],
    "C3",
  ),
  flags("a temperature with a blank at its end", [...mix, [], ["Freezer (°C)", "-18 "]], "B6"),
  flags(
    "a yield that a formula reads",
    [
      ...mix,
      ["Total", formula("SUM(B2:B4)", 800)],
      ["Yield (%)", "96,5"],
      ["Made (g)", error("B5*B6/100")],
    ],
    "B6",
  ),
  flags(
    "one reading of a log",
    [
      ["Day", "Freezer °C"],
      ["Mon", -18],
      ["Tue", "-17,9"],
      ["Wed", -18.2],
      ["Sum", formula("SUM(B2:B4)", -36.2)],
    ],
    "B3",
  ),
  flags(
    "a result beside recipes in rows",
    [
      ["Mix (g)", "Water", "Sucrose", "Measured (°C)"],
      ["A", 600, 150, -1.4],
      ["B", 500, 150, "-1,7"],
      ["C", 550, 150, -1.5],
    ],
    "D3",
  ),
  flags(
    "a result below recipes in columns",
    [
      ["Ingredient (g)", "A", "B", "C"],
      ["Water", 600, 500, 550],
      ["Sucrose", 150, 150, 150],
      ["Measured (°C)", -1.4, "-1.7 ", -1.5],
    ],
    "C4",
  ),
  flags(
    "a share beside the grams",
    [
      ["Ingredient", "g", "Share (%)"],
      ["Water", 600, 75],
      ["Sucrose", 150, "18,75"],
      ["Lemon juice", 50, 6.25],
    ],
    "C3",
  ),
  flags(
    "an input without words for it that a formula multiplies by",
    [...mix, [], [null, null, "2,5", error("B2*C6"), formula("B3*2", 300)]],
    "C6",
  ),
  leaves("codes and articles", [
    ["Ingredient", "g", "Code", "Art.-Nr."],
    ["Water", 600, "007", 1001],
    ["Sucrose", 150, "12", "1002"],
    ["Lemon juice", 50, "13.5", 1003],
  ]),
  leaves("a date, a telephone, a batch and a version above a recipe", [
    ["Date", "12.05"],
    ["Phone", "0664 1234567"],
    ["Batch no.", "12"],
    ["Version", "1.2"],
    ...mix,
  ]),
  leaves("steps and years", [
    ["Step", "What"],
    ["1", "Warm the water"],
    ["2", "Stir in the sugar"],
    [],
    ["Bars sold", "2022", "2023"],
    ["Lemon", 100, 120],
    ["Berry", 20, 30],
  ]),
  leaves("notes with a number among words", [
    ["Ingredient", "g", "Note"],
    ["Water", 600, "2"],
    ["Sucrose", 150, "twice sieved"],
    ["Lemon juice", 50, "3.5"],
  ]),
  leaves("a written page without a number that counts", [
    ["Zutat", "Menge"],
    ["Wasser", "600"],
    ["Zucker", "150,5"],
    ["Preis", "2,50"],
  ]),
  leaves("a text that a formula looks up", [
    ...mix,
    [],
    ["Kind", "2"],
    ["Found", formula('MATCH("x"&B6,A1:A4,0)', 1)],
  ]),
  flags("a weight with its unit in the next cell", [...mix, [], ["One scoop", "62.50", "g"]], "B6"),
  leaves("a number of a shelf beside words", [...mix, [], ["Shelf", "27", "left"]]),
  leaves("times of a day beside what was read", [
    ...mix,
    [],
    ["Freezer read at", "°C"],
    ["11.45", -19.5],
    ["12.30", -16],
    ["1.15", -17.5],
  ]),
  leaves("times of a day before what was read in a column of its own", [
    ...mix,
    [],
    ["Who", "Fridge checked", "°C"],
    ["Ann", "9.00", 4],
    ["Ben", "14.30", 5],
  ]),
  flags(
    "temperatures with decimals that rise and fall",
    [...mix, [], ["Day", "Fridge read"], ["Mon", "4.15"], ["Tue", "3.50"], ["Wed", "3.25"]],
    ...["B7", "B8", "B9"],
  ),
  flags(
    "temperatures that rise under a heading with their unit",
    [...mix, [], ["Day", "Fridge (°C)"], ["Mon", "4.15"], ["Tue", "4.50"], ["Wed", "5.25"]],
    ...["B7", "B8", "B9"],
  ),
  flags(
    "prices that look like times",
    [...mix, [], ["Kind", "Price"], ["Cone", "1.45"], ["Tub", "2.30"], ["Bar", "3.15"]],
    ...["B7", "B8", "B9"],
  ),
];
