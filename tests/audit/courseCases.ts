import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

// By i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

/** A mark sheet: what was reached, and how much that is of all there was. */
const marks = (label: string, ...more: Rows): Rows => [
  ["Criterion", "Lemon ice", "Mango ice"],
  ["Hygiene", 7, 6],
  ["Texture", 9, 10],
  [label, formula("SUM(B2:B3)", 16), formula("SUM(C2:C3)", 16)],
  ["Per cent", formula("B4/20*100", 80), formula("C4/20*100", 80)],
  ...more,
];

interface Worked {
  readonly constant?: number;
  readonly point?: string;
  readonly says?: string;
}

/** Letters, how it is found, number and unit; 20 g of potassium chloride in 500 g: 2.00 K by the law, 1.83 K in fact. */
const worked = ({ constant = 1.86, point = "0-C9", says = "Auf 0,3 K genau." }: Worked): Rows => [
  [null, "Stoff", "Kaliumchlorid"],
  ["m", "Einwaage", 20, "g"],
  ["mW", "Wasser", 500, "g"],
  ["M", "molare Masse", 74.55, "g/mol"],
  ["i", "Teilchenzahl", 2],
  ["Kf", "kryoskopische Konstante Wasser", constant, "K·kg/mol"],
  ["n", "m : M", formula("C2/C4", 0.2683), "mol"],
  ["b", "n : mW · 1000", formula("C7/C3*1000", 0.5366), "mol/kg"],
  ["ΔT", "Kf · b · i", formula("C6*C8*C5", 1.996), "K"],
  ["ϑ", "0 °C − ΔT", formula(point, point === "0-C9" ? -1.996 : 1.996), "°C"],
  [says],
];

/** Beakers below each other, each with what its law is good to; the first is 1.3 K, the second 2 K. */
const beakersDown = (first: string, second: string): Rows => [
  ["Kf (K·kg/mol)", 1.86],
  ["gelöst", "Gramm", "Molmasse", "zerfällt in", "mol", "mol Teilchen"],
  [null, "g", "g/mol", "Teilchen", "mol", "mol"],
  ["Saccharose", 32, 342.3, 1, formula("B4/C4", 0.0935), formula("E4*D4", 0.0935)],
  ["Fruktose", 21, 180.16, 1, formula("B5/C5", 0.1166), formula("E5*D5", 0.1166)],
  ["in Wasser", 300, "g", null, null, formula("SUM(F4:F5)", 0.21)],
  ["senkt um", formula("$B$1*F6/B6*1000", 1.302), "K"],
  ["gefriert ab", formula("-B7", -1.302), "°C"],
  [first],
  [],
  ["gelöst", "Gramm", "Molmasse", "zerfällt in", "mol", "mol Teilchen"],
  [null, "g", "g/mol", "Teilchen", "mol", "mol"],
  ["Kaliumchlorid", 20, 74.55, 2, formula("B13/C13", 0.2683), formula("E13*D13", 0.5366)],
  ["in Wasser", 500, "g", null, null, formula("SUM(F13:F13)", 0.5366)],
  ["senkt um", formula("$B$1*F14/B14*1000", 1.996), "K"],
  ["gefriert ab", formula("-B15", -1.996), "°C"],
  [second],
];

/** Pans beside each other, in the words of people who do not say mass or mole. */
const pans = (water: string, moleC = 342.3): Rows => [
  ["Kf for water (K kg/mol)", 1.86],
  [null, "Pan 1", "Pan 2"],
  ["Stirred in", "fructose", "sucrose"],
  ["how much of it", 20, 15, "g"],
  [water, 300, 250, "g"],
  ["a mole of it", 180.16, moleC, "g/mol"],
  ["pieces it falls into", 1, 1],
  ["Moles in the pan", formula("B4/B6", 0.111), formula("C4/C6", 0.0438), "mol"],
  [
    "Moles of pieces per kg of water",
    ...[formula("1000*B8*B7/B5", 0.37), formula("1000*C8*C7/C5", 0.1753), "mol/kg"],
  ],
  ["Times Kf: freezes lower by", formula("B9*$B$1", 0.688), formula("C9*$B$1", 0.326), "K"],
];

/** Two recipes, amounts first, their costs from one list of prices that goes on with what the second needs besides. */
const twoIces = (
  second: string,
  price: (row: number) => string,
): Readonly<Record<string, Rows>> => ({
  Both: [
    ["grams", "of", "costs £"],
    [500, "water", formula("A2/1000*Shop!A2", 0)],
    [160, "sucrose", formula("A3/1000*Shop!A3", 0.48)],
    [60, "cocoa powder", formula("A4/1000*Shop!A4", 0.84)],
    [formula("SUM(A2:A4)", 720), "altogether", formula("SUM(C2:C4)", 1.32)],
    [],
    ["grams", "of", "costs £"],
    [580, "water", formula("A8/1000*Shop!A2", 0)],
    [80, second, formula("A9/1000*Shop!A5", 0.16)],
    [40, "sucrose", formula(price(10), 0.12)],
    [60, "glucose syrup DE 42", formula("A11/1000*Shop!A6", 0.3)],
    [formula("SUM(A8:A11)", 760), "altogether", formula("SUM(C8:C11)", 0.58)],
    ["Tell people: gluten (wheat)."],
  ],
  Shop: [
    ["£ per kg", "what", "where"],
    [0, "water", "tap"],
    [3, "sucrose", "corner shop"],
    [14, "cocoa powder", "market"],
    [2, "lime juice", "mill"],
    [5, "glucose syrup DE 42", "mill"],
  ],
});

/** What is to be bought for two recipes: of the sugar it is the sum. */
const bought: Readonly<Record<string, Rows>> = {
  Recipes: [
    ["Lemon ice", "g"],
    ["water", 600],
    ["sucrose", 200],
    ["lemon juice", 150],
    [],
    ["Apple ice", "g"],
    ["apple juice", 800],
    ["sucrose", 90],
    ["glucose syrup DE 42", 60],
  ],
  Shopping: [
    ["To buy", "g"],
    ["lemon juice", formula("Recipes!B4", 150)],
    ["apple juice", formula("Recipes!B7", 800)],
    ["sucrose", formula("Recipes!B3+Recipes!B8", 290)],
    ["glucose syrup DE 42", formula("Recipes!B9", 60)],
  ],
};

/** 200 g of sucrose in 800 g of water at −13 °C, with the ice of one basis under a label. */
const frozen = (label: string, basis: "water" | "mix"): Rows => {
  const share = callFunction("ICEFRACTION", [["water"], ["sucrose"]], [[800], [200]], -13, basis);
  return [
    ["Truhe (°C)", -13],
    ["Zutat", "Menge (g)"],
    ["Wasser", 800],
    ["Saccharose", 200],
    [],
    [label, Math.round(1000 * Number(share[0]?.[0])) / 10],
  ];
};

/** Labels that say of what the ice is a share, with words between. */
const BASES = [
  ["Wasser in der Truhe bei −13 °C gefroren (%)", "water", "mix"],
  ["Water at the freezer's −13 °C frozen (%)", "water", "mix"],
  ["Eis im Gemisch bei −13 °C, in %", "mix", "water"],
] as const;

/** Sheets of courses: marks, ways of working in letters, beakers and pans. */
export const courseCases: readonly RuleCase[] = [
  ...BASES.flatMap(([label, right, wrong]): RuleCase[] => [
    { rule: "ice-of-water-or-mix", cells: ["B6"], what: label, rows: frozen(label, wrong) },
    { rule: "ice-of-water-or-mix", cells: [], what: label, rows: frozen(label, right) },
  ]),
  {
    ...{ rule: "inconsistent-formula", cells: [], what: "prices left of their names, by name" },
    rows: twoIces("lime juice", (row) => `A${row}/1000*Shop!A3`),
  },
  {
    ...{ rule: "inconsistent-formula", cells: ["C10"], what: "one price by name, per 100 g" },
    rows: twoIces("lime juice", (row) => `A${row}/100*Shop!A3`),
  },
  {
    ...{
      rule: "inconsistent-formula",
      cells: [],
      what: "what two recipes need among what one needs",
    },
    rows: bought,
  },
  {
    ...{ rule: "inconsistent-formula", cells: ["C10"], what: "the price of another thing" },
    rows: twoIces("lime juice", (row) => `A${row}/1000*Shop!A4`),
  },
  ...["Out of 20", "von 20 Punkten", "Total (max. 20)"].map((label): RuleCase => ({
    ...{ rule: "hard-coded-number", cells: [], what: `marks per cent of "${label}"` },
    rows: marks(label),
  })),
  {
    ...{
      rule: "hard-coded-number",
      cells: ["B5:C5"],
      what: "marks per cent of a number unsaid",
    },
    rows: marks("Total"),
  },
  {
    ...{
      rule: "hard-coded-number",
      cells: ["B5:C5"],
      what: "marks that have a cell for the most",
    },
    rows: marks("Out of 20", ["Highest mark", 20]),
  },
  {
    ...{ rule: "cryoscopic-constant", cells: [], what: "how a depression is found, with Kf in it" },
    rows: worked({}),
  },
  {
    ...{ rule: "cryoscopic-constant", cells: ["C6"], what: "the constant that is worked with" },
    rows: worked({ constant: 18.6 }),
  },
  {
    ...{ rule: "freezing-point-sign", cells: ["C10"], what: "a point in letters above 0 °C" },
    rows: worked({ point: "C9" }),
  },
  {
    ...{
      rule: "freezing-point-sign",
      cells: [],
      what: "a point in letters, 0 minus its depression",
    },
    rows: worked({}),
  },
  {
    ...{
      rule: "ideal-law-too-far-off",
      cells: ["C9", "C10"],
      what: "answers in a column of letters",
    },
    rows: worked({ says: "Auf 0,1 K genau." }),
  },
  {
    ...{
      rule: "unknown-ingredient",
      cells: [],
      what: "by how much a beaker's freezing point is lowered",
    },
    rows: beakersDown("Auf 0,2 K genau.", "Auf 0,3 K genau."),
  },
  {
    ...{ rule: "ideal-law-too-far-off", cells: [], what: "what each beaker's law is good to" },
    rows: beakersDown("Auf 0,1 K genau.", "Diese weicht weniger als 0,3 K davon ab."),
  },
  {
    ...{ rule: "ideal-law-too-far-off", cells: ["B15", "B16"], what: "one of two promises broken" },
    rows: beakersDown("Auf 0,1 K genau.", "Auf 0,1 K genau."),
  },
  ...["into how much water", "in wie viel Wasser"].flatMap((water): RuleCase[] => [
    {
      ...{ rule: "input-without-unit", cells: [], what: `pans with units behind them, "${water}"` },
      rows: pans(water),
    },
    {
      ...{ rule: "constant-of-a-solute", cells: ["C6"], what: `a pan's molar mass, "${water}"` },
      rows: pans(water, 360.31),
    },
  ]),
];
