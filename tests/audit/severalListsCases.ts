import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** A class's solutions, the temperature worked out from the depression before it. */
const solution = (row: number, solute: readonly [string, number, number], sign: "-" | "") => {
  const [name, grams, molarMass] = solute;
  const molality = (grams / molarMass / 100) * 1000;
  const depression = 1.86 * molality;
  return [
    name,
    grams,
    100,
    molarMass,
    formula(`B${row}/D${row}/C${row}*1000`, molality),
    formula(`1.86*E${row}`, depression),
    formula(`${sign}F${row}`, sign === "-" ? -depression : depression),
  ];
};
const solutions = (heading: string, ...signs: readonly ["-" | "", "-" | "", "-" | ""]): Rows => [
  ["Gelöster Stoff", "m in g", "Wasser in g", "M in g/mol", "b in mol/kg", "ΔT in K", heading],
  solution(2, ["Fruktose", 6, 180.16], signs[0]),
  solution(3, ["Saccharose", 14, 342.3], signs[1]),
  solution(4, ["Glucose", 5, 180.16], signs[2]),
];
/** Sections with sums, the last two of one line. */
const sections = (cream: number): Rows => [
  ["Raw material", "Batch (g)", null, null],
  ["DAIRY"],
  ["whole milk", 1509],
  ["cream 35 % fat", cream],
  ["Subtotal dairy", formula("SUM(B3:B4)", 2274)],
  ["SUGARS"],
  ["sugar", 465],
  ["Subtotal sugars", formula("SUM(B7)", 465)],
  ["THE REST"],
  ["egg yolk", 246],
  ["Subtotal of the rest", formula("SUM(B10)", 246)],
  ["MIX", formula("B5+B8+B11", 2985)],
  [],
  ["Freezing point (°C)", -1.98],
];
/** A wet and a dry part with a sum each; the last line of the dry one as given, or notes instead of it. */
const phases = (dry: Rows): Rows => [
  ["Komponente", "Menge (g)"],
  ["Nasse Phase"],
  ["Wasser", 600],
  ["Zitronensaft", 200],
  ["Nasse Phase gesamt", formula("SUM(B3:B4)", 800)],
  [],
  ...dry,
];
/** Two lists beside each other; the sum of one stands in the row of a blend in the other. */
const besideEachOther = (total: number): Rows => [
  ["Rohstoff", "g", null, "Rohstoff", "g"],
  ["Wasser", 500, null, "Wasser", 400],
  ["Zucker", 150, null, "Zucker", 100],
  ["Vollmilch", 100, null, "Vollmilch", 100],
  ["Hausmischung B", 50, null, "Summe", formula("SUM(E2:E4)", 600)],
  ["Summe", formula("SUM(B2:B5)", total)],
];
/** Recipes with what they take for all batches, and a shopping list of another sheet. */
const festival = (water: number | string): Readonly<Record<string, Rows>> => ({
  Rezepte: [
    ["Zutat", "1 Ansatz (g)", null, "Wasser zusammen", water, "g"],
    ["Wasser", 500],
    ["Zucker", 150],
    ["Vollmilch", 300],
    ["Summe", formula("SUM(B2:B4)", 950)],
  ],
  Einkauf: [
    ["Was", "Wie viel (g)"],
    ["Wasser", formula("Rezepte!B2*2", 1000)],
    ["Zucker", formula("Rezepte!B3*2", 300)],
    ["Vollmilch", formula("Rezepte!B4*2", 600)],
    ["zu tragen", formula("SUM(B2:B4)", 1900)],
  ],
});

/** True and false examples of lists that stand beside, above or behind each other. */
export const severalListsCases: readonly RuleCase[] = [
  {
    rule: "unknown-ingredient",
    what: "one of two in a part of its own, below its heading",
    rows: phases([
      ["Trockene Phase"],
      ["Kristallzucker", 150],
      ["Frukose", 50],
      ["Trockene Phase gesamt", formula("SUM(B8:B9)", 200)],
    ]),
    cells: ["A9"],
  },
  {
    rule: "unknown-ingredient",
    what: "what a day costs, below the sum of a list",
    rows: phases([["Tageskosten"], ["Miete", 150], ["Eis vom Händler", 50], ["Zucker", 3]]),
    cells: [],
  },
  {
    rule: "freezing-point-sign",
    what: "a temperature that is the depression beside it without the minus of its neighbours",
    rows: solutions("T in °C", "-", "", "-"),
    cells: ["G3"],
  },
  {
    rule: "freezing-point-sign",
    what: "temperatures that are all the depressions beside them with a minus",
    rows: solutions("T in °C", "-", "-", "-"),
    cells: [],
  },
  {
    rule: "freezing-point-sign",
    what: "differences of temperature that repeat the depressions",
    rows: solutions("Temperatur in °C", "", "", ""),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "sections with sums, two of them of one line",
    rows: sections(765),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a section's sum that does not fit, others of one line",
    rows: sections(965),
    cells: ["B5"],
  },
  {
    rule: "total-incomplete",
    what: "a blend in the row in which the list beside has its sum",
    rows: besideEachOther(800),
    cells: [],
  },
  {
    rule: "unknown-ingredient",
    what: "a blend in the row in which the list beside has its sum",
    rows: besideEachOther(800),
    cells: ["A5"],
  },
  {
    rule: "water-not-counted",
    what: "water together, of which only what is poured in is counted",
    rows: festival(500),
    cells: ["E1"],
  },
  {
    rule: "water-not-counted",
    what: "water together, with that of the milk",
    rows: festival(763),
    cells: [],
  },
  {
    rule: "caution-not-named",
    what: "a shopping list of recipes that tell nothing, which is told with those",
    rows: festival(763),
    cells: ["A1:B5"],
  },
];
