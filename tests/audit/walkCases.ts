import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const ITEMS = ["water", "whole milk", "sucrose"] as const;
const PERCENT = [20, 65, 15] as const;
const asColumn = (values: readonly (string | number)[]) => values.map((value) => [value]);

/** The functions' own water of 100 g: the rule only has to tell of how much it is said. */
const WATER = callFunction("COMPONENT", asColumn(ITEMS), asColumn(PERCENT), "water")[0]?.[0];

/** A batch worked out from shares, and what is said of it under a heading. */
const batch = (heading: string, water: number): Rows => [
  ["Batch (g)", 1200],
  ["Ingredient", "% w/w", "Weigh (g)"],
  ...ITEMS.map((item, at): Rows[number] => [
    item,
    PERCENT[at] ?? null,
    formula(`B${at + 3}/100*$B$1`, (PERCENT[at] ?? 0) * 12),
  ]),
  [],
  [heading],
  ["All the water (g)", water],
];

/** Name, grams, grams of water, molar mass (IUPAC weights) and particles of a solution. */
type Solution = readonly [string, number, number, number, number];

const SOLUTIONS: readonly Solution[] = [
  ["potassium chloride", 2, 200, 74.55, 2],
  ["fructose", 10, 250, 180.16, 1],
  ["sodium chloride", 4, 400, 58.44, 2],
];

/** Solutions worked out along their rows by i·Kf·n/kg, the constant in each of them; the third as given. */
const table = (constant: number, counted: boolean, solvent = ""): Rows => [
  ["Solute", "M (g/mol)", "Particles", "Mass (g)", "Water (g)", "Kf (K kg/mol)"].concat(
    ...["n (mol)", "Lowered by (K)", "Freezing point (°C)", solvent],
  ),
  ...SOLUTIONS.map(([name, grams, water, molar, ions], at): Rows[number] => {
    const [row, isThird] = [at + 2, at === 2];
    const kf = isThird ? constant : 1.86;
    const times = isThird && !counted ? 1 : ions;
    const falls = (times * kf * (grams / molar) * 1000) / water;
    const law = `F${row}*G${row}*1000/E${row}`;
    return [
      ...[name, molar, ions, grams, water, kf, formula(`D${row}/B${row}`, grams / molar)],
      formula(isThird && !counted ? law : `${law}*C${row}`, falls),
      ...[formula(`-H${row}`, -falls), isThird ? solvent : ""],
    ];
  }),
];

/** Cups that a formula weighs: the unit beside them is theirs, not that of the grams. */
const cups = (heading: string, lost = ""): Rows => [
  ["What you need", "How many", "Measure", heading],
  ...["sucrose", "water", "whole milk"].map((name, at): Rows[number] => {
    const grams = callFunction("GRAMS", name, at + 1, "cup")[0]?.[0] as number;
    const isLost = at === 2 && lost !== "";
    const content = `RIME.GRAMS(A${at + 2},B${at + 2},C${at + 2})`;
    return [
      isLost ? lost : name,
      at + 1,
      "cup",
      formula(content, isLost ? { error: "#N/A" } : grams),
    ];
  }),
];

/** What people on a walk had on their sheets. */
export const walkCases: readonly RuleCase[] = [
  {
    rule: "result-differs",
    what: "water of 100 g by the heading above, far from the recipe's",
    rows: {
      English: batch("Expected of 100 g", 0.7 * Number(WATER)),
      German: batch("Je 100 g Masse", 0.7 * Number(WATER)),
      Batch: batch("What comes of it", Number(WATER)),
    },
    cells: ["B8", "B8", "B8"],
  },
  {
    rule: "result-differs",
    what: "water of 100 g as the heading says, and of the batch where none does",
    rows: {
      English: batch("Expected of 100 g", Number(WATER)),
      German: batch("Je 100 g Masse", Number(WATER)),
      Batch: batch("What comes of it", 12 * Number(WATER)),
    },
    cells: [],
  },
  {
    rule: "cryoscopic-constant",
    what: "another constant in one row of a table of solutions",
    rows: table(5.12, true),
    cells: ["F4"],
  },
  {
    rule: "cryoscopic-constant",
    what: "the constant of water in each row, or of the benzene that one row names",
    rows: { Water: table(1.86, true), Benzene: table(5.12, true, "in benzene") },
    cells: [],
  },
  {
    rule: "particles-not-counted",
    what: "a depression without the particles, from which the freezing point comes",
    rows: table(1.86, false),
    cells: ["H4"],
  },
  {
    rule: "input-without-unit",
    what: "grams that a formula makes of cups, under a heading without a unit",
    rows: cups("Amount"),
    cells: ["D1"],
  },
  {
    rule: "input-without-unit",
    what: "grams that a formula makes of cups",
    rows: cups("Weight in g"),
    cells: [],
  },
  {
    rule: "unknown-ingredient",
    what: "a name for which the formula of its weight has no answer",
    rows: cups("Weight in g", "house blend B"),
    cells: ["A4"],
  },
  {
    rule: "ambiguous-ingredient",
    what: "cream of no fat content, which the formula of its weight cannot weigh",
    rows: cups("Weight in g", "cream"),
    cells: ["A4"],
  },
  {
    rule: "hydrate-not-stated",
    what: "dextrose with or without its water, which the formula of its weight cannot weigh",
    rows: cups("Weight in g", "dextrose"),
    cells: ["A4"],
  },
];
