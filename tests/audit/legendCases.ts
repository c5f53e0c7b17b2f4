import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 34.23 g of sucrose in 500 g of water, with what each letter means behind its unit, and a recipe in per cent beside it. */
const explained = (constant: number, sign: string, third: string): Rows => [
  ["Batch A", "sucrose", null, null, null, "Ingredient", "%"],
  ["m", 34.23, "g", "weighed out", null, "Water", 70],
  ["m(W)", 500, "g", "water in the beaker", null, "Sucrose", 20],
  ["M", 342.3, "g/mol", "molar mass", null, "Fructose", 6],
  ["Kf", constant, "K·kg/mol", "cryoscopic constant of water", null, third, 4],
  ["n", formula("B2/B4", 0.1), "mol", "amount of substance"],
  ["b", formula("1000*B6/B3", 0.2), "mol/kg", "molality"],
  ["ΔT", formula("B5*B7", 0.372), "K", "freezing point lowered by"],
  [
    "T",
    formula(`${sign}B8`, sign === "-" ? -0.372 : 0.372),
    "°C",
    "freezing point of the solution",
  ],
];

const POINT = { rule: "freezing-point-sign" } as const;
const KF = { rule: "cryoscopic-constant" } as const;
const UNIT = { rule: "input-without-unit" } as const;

/** Words behind a number and its unit say what it is; what stands beyond them is of another table. */
export const legendCases: readonly RuleCase[] = [
  ...["Salt", "Glucose"].flatMap((third): RuleCase[] => [
    {
      ...{ ...KF, cells: [], what: `a legend beside "${third}" of another table` },
      rows: explained(1.86, "-", third),
    },
    {
      ...{ ...UNIT, cells: [], what: `a legend beside "${third}" without a unit` },
      rows: explained(1.86, "-", third),
    },
    {
      ...{ ...KF, cells: ["B5"], what: `a wrong constant with a legend beside "${third}"` },
      rows: explained(5.12, "-", third),
    },
  ]),
  {
    ...{ ...KF, cells: [], what: "a constant labelled on both sides before a number beyond a gap" },
    rows: [
      ["Kf", 1.86, "K·kg/mol", "cryoscopic constant", null, 3.5],
      ["Water", 500, "g"],
    ],
  },
  {
    ...{ ...KF, cells: ["D1"], what: "a constant behind its label, after another number" },
    rows: [["i", 1, "Kf", 5.12, "K·kg/mol"]],
  },
  {
    ...{ ...KF, cells: ["E1"], what: "a constant behind its label and its unit, after a number" },
    rows: [["i", 1, "Kf", "K·kg/mol", 5.12]],
  },
  {
    ...{
      ...POINT,
      cells: ["B9"],
      what: "T above 0 °C, which the words behind it call a freezing point",
    },
    rows: explained(1.86, "", "Salt"),
  },
  {
    ...{
      ...POINT,
      cells: [],
      what: "T below 0 °C, which the words behind it call a freezing point",
    },
    rows: explained(1.86, "-", "Salt"),
  },
];
