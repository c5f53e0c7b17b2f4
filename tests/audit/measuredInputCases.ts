import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST = [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Total", formula("SUM(B1:B2)", 650)],
] as const;

/** What a plate takes of a batch that costs so much. */
const plates = (label: string, worked = "C5/B4*B6"): Rows => [
  ["Zutat", "g", "€"],
  ["Wasser", 500, 0.1],
  ["Zucker", 150, 0.2],
  ["Summe", formula("SUM(B2:B3)", 650), null],
  [null, null, formula("SUM(C2:C3)", 0.3)],
  [label, 90],
  ["Ware je Teller (€)", formula(worked, 0.04)],
];

/** So much of a mix whose amounts are for a kilo. */
const kilos = (label: string): Rows => [
  [label, 4],
  [],
  ["Zutat", "1 kg Mix, in g", "heute, in g"],
  ["Wasser", 800, formula("B4*$B$1", 3200)],
  ["Zucker", 200, formula("B5*$B$1", 800)],
];

/** A constant that a depression is worked out with. */
const constant = (label: string, heading: string): Rows => [
  [label, 1.86],
  [],
  ["Stoff", "Masse [g]", "Wasser [g]", "M [g/mol]", heading],
  ["Saccharose", 6, 100, 342.3, formula("B4/D4*1000/C4*$B$1", 0.326)],
  ["Saccharose", 12, 100, 342.3, formula("B5/D5*1000/C5*$B$1", 0.652)],
];

/** What is measured, not counted, by its fraction or place. */
export const measuredInputCases: readonly RuleCase[] = [
  {
    rule: "input-without-unit",
    what: "a number with a fraction, by which something is divided",
    rows: [...LIST, [], ["Comes out", 3.2], ["Price (£)", formula("B4/B6", 203.1)]],
    cells: ["B6"],
  },
  {
    rule: "input-without-unit",
    what: "the size of a batch before another label with its unit",
    rows: [
      ...LIST,
      [],
      ["Batch size", 600, null, "Batch (kg)", formula("B4/1000", 0.65)],
      ["Rest", formula("B6-B4", -50)],
    ],
    cells: ["B6"],
  },
  {
    rule: "input-without-unit",
    what: "prices of a year, by which amounts without a unit are multiplied",
    rows: [
      ["Stuff", "Amount", "spring", "summer", "spring", "summer"],
      ["Water", 500, 1, 2, formula("B2*C2", 500), formula("B2*D2", 1000)],
      ["Sucrose", 150, 3, 4, formula("B3*C3", 450), formula("B3*D3", 600)],
    ],
    cells: ["B1"],
  },
  ...(
    [
      ["money by the gram", plates("Nocken je Teller"), ["B6"]],
      ["money by the gram, with its unit", plates("Nocken je Teller (g)"), []],
      ["money by what is counted", plates("Nocken je Teller", "C5*B6"), []],
      ["how much of a mix", kilos("Mix heute"), ["B1"]],
      ["how much of a mix, with its unit", kilos("Mix heute (kg)"), []],
      ["the constant by what is worked out of it", constant("E_G von Wasser", "ΔT [K]"), ["B1"]],
      ["the same with its unit", constant("E_G von Wasser (K·kg/mol)", "ΔT [K]"), []],
      ["as large a number for another thing", constant("Wasser zu Becher", "Preis"), []],
      ["cold where customers keep it", [...LIST, [], ["Lagerung beim Kunden", -18]], ["B6"]],
      ["customers", [...LIST, [], ["Kunden am Tag", 18], ["je", formula("B4/B6", 36)]], []],
    ] as const
  ).map(([what, rows, cells]) => ({ rule: "input-without-unit", what, rows, cells })),
];
