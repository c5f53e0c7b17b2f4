import { formula } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST = [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Total", formula("SUM(B1:B2)", 650)],
] as const;

/** Inputs beside a recipe, with and without their units. */
export const inputCases: readonly RuleCase[] = [
  {
    rule: "input-without-unit",
    what: "a serving temperature under words of the house",
    rows: [...LIST, [], ["Sold from the van at", -14]],
    cells: ["B6"],
  },
  {
    rule: "input-without-unit",
    what: "the size of a portion, by which a total is divided",
    rows: [...LIST, [], ["One portion", 80], ["Portions", formula("B4/B6", 8.125)]],
    cells: ["B6"],
  },
  {
    rule: "input-without-unit",
    what: "the number of portions, by which a total is divided",
    rows: [...LIST, [], ["Portions", 8], ["One portion (g)", formula("B4/B6", 81.25)]],
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "a loss that a formula takes per hundred",
    rows: [...LIST, ["Sticks to the bowl", 3], ["Comes out (g)", formula("B4*(1-B5/100)", 630)]],
    cells: ["B5"],
  },
  {
    rule: "input-without-unit",
    what: "the size of a batch, read by its name from shares",
    rows: [
      ["Batch size", 1000],
      [],
      ["Ingredient", "Share (%)", "Grams"],
      ["Water", 80, formula("B4/100*BatchSize", 800)],
      ["Sucrose", 20, formula("B5/100*BatchSize", 200)],
    ],
    workbook: { names: [{ name: "BatchSize", refersTo: "Sheet1!$B$1", sheet: null }] },
    cells: ["B1"],
  },
  {
    rule: "input-without-unit",
    what: "inputs with a unit in the label, the format, beside or above; counts; typed answers",
    rows: [
      ...LIST,
      [],
      ["Sold at (°C)", -14],
      ["Cabinet", { value: -18, format: '0 "°C"' }],
      ["Van", -16, "°C"],
      ["Bars", 12],
      ["One bar (g)", formula("B4/B9", 54)],
      ["Freezing point", -1.9],
      ["Loss", { value: 0.03, format: "0 %" }],
      ["Comes out (g)", formula("B4*(1-B12)", 630)],
      ["Batch no.", 7],
      ["Label", formula('"batch "&B14', "batch 7")],
    ],
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "a log of temperatures under its heading",
    rows: [...LIST, [], ["Time", "Cabinet (°C)"], ["early", -18], ["late", -17]],
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "amounts without a unit below answers that have theirs",
    rows: [
      ["Loss (%)", 4],
      ["Ice, share of the mix (%)", 49],
      ["Water in g", 500],
      [],
      ["Ingredient", "Amount"],
      ["Water", 500],
      ["Sucrose", 150],
    ],
    cells: ["B5"],
  },
  {
    rule: "input-without-unit",
    what: "amounts left of their names, shares right of them",
    rows: [
      ["Amount", "Ingredient", "Share"],
      [500, "Water", { value: 0.77, format: "0 %" }],
      [150, "Sucrose", { value: 0.23, format: "0 %" }],
    ],
    cells: ["A1"],
  },
  {
    rule: "input-without-unit",
    what: "rows of one recipe that name their units, and prices",
    rows: [
      ["Ingredient", "Water", "Sucrose", "Lemon juice"],
      ["Share (%)", 70, 20, 10],
      ["Weighed (g)", formula("B2*10", 700), formula("C2*10", 200), formula("D2*10", 100)],
      ["Price (EUR/kg)", 0.01, 2.3, 9.5],
    ],
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "a table of bought ingredients under German headings",
    rows: [
      ["Zutat", "Menge (g)"],
      ["Wasser", 500],
      ["Zucker", 150],
      [],
      ["name", "Wasser", "Fett", "Zucker", "Eiweiß"],
      ["Hofladen-Mus", 52, 2, 43, 3],
      ["Mühlen-Kompott", 79, 1, 15, 5],
    ],
    cells: [],
  },
];

/** Totals that lists of other shapes have. */
export const otherTotalCases: readonly RuleCase[] = [
  {
    rule: "total-incomplete",
    what: "beside a column of units that are all the same",
    rows: [
      ["Ingredient", "Amount", "Unit"],
      ["Water", 500, "g"],
      ["Sucrose", 150, "g"],
      ["Lemon juice", 50, "g"],
      ["Total", formula("SUM(B2:B3)", 650), "g"],
    ],
    cells: ["B5"],
  },
  {
    rule: "total-incomplete",
    what: "amounts in several units, which no sum adds up",
    rows: [
      ["Ingredient", "Amount", "Unit"],
      ["Water", 500, "g"],
      ["Sucrose", 150, "g"],
      ["Lemon juice", 2, "tbsp"],
      ["Total", 680, "g"],
    ],
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a grand total that counts the total, in German",
    rows: [
      ["Zutat", "Menge (g)"],
      ["Wasser", 500],
      ["Zucker", 150],
      ["Zitronensaft", 50],
      ["Summe", formula("SUM(B2:B4)", 700)],
      ["Gesamtsumme", formula("SUM(B2:B5)", 1400)],
    ],
    cells: ["B6"],
  },
  {
    rule: "total-incomplete",
    what: "a typed number beside sums, under a name of its own",
    rows: [
      ["Grams", "Lime ice", "Cocoa ice"],
      ["Water", 600, 500],
      ["Sucrose", 200, 180],
      ["Lime juice", 90, null],
      ["Cocoa powder", null, 60],
      ["Weighs", 820, formula("SUM(C2:C5)", 740)],
    ],
    cells: ["B6"],
  },
];
