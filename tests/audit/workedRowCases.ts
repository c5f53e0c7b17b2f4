import type { ShortCell } from "../../src/workbook/sheetFromRows";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

// Expected numbers by i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

interface Given {
  readonly saltGrams?: number;
  readonly kf?: number;
  /** The formulas of the salt's depression and of its point, and what they give times the right one. */
  readonly down?: readonly [string, number];
  readonly point?: readonly [string, number];
}

/** What is dissolved, and, behind a gap, a working whose headings say little; its constant stands on another sheet. */
function homework(given: Given = {}): Readonly<Record<string, Rows>> {
  const { saltGrams = 2, kf = 1.86 } = given;
  const [down, times] = given.down ?? ["J2*E2*Terms!$B$1", 1];
  const [point, sign] = given.point ?? ["-K2", -1];
  const molality = (grams: number, molar: number, water: number) => (grams / molar / water) * 1000;
  const line = (
    [grams, water, molar, ions]: readonly [number, number, number, number],
    at: number,
    [first, lowered]: readonly [string, number],
    [second, turned]: readonly [string, number],
  ): ShortCell[] => {
    const each = molality(grams, molar, water);
    const kelvin = each * ions * kf * lowered;
    return [
      ...[null, null, formula(`B${at}/D${at}`, grams / molar)],
      ...[formula(`I${at}/C${at}*1000`, each), formula(first, kelvin)],
      formula(second, turned * kelvin),
    ];
  };
  const row = (
    name: string,
    data: readonly [number, number, number, number],
    more: ShortCell[],
  ) => [...[name, ...data, null], ...more];
  const salt = [saltGrams, 300, 58.44, 2] as const;
  const sugar = [14, 300, 180.16, 1] as const;
  const like = (at: number) => [`J${at}*E${at}*Terms!$B$1`, 1] as const;
  return {
    Homework: [
      [
        "Dissolve",
        "g",
        "g of water",
        "g/mol",
        "splits into",
        null,
        null,
        null,
        "mol",
        "mol/kg",
        "K down",
        "°C",
      ],
      row("sodium chloride", salt, line(salt, 2, [down, times], [point, sign])),
      row("fructose", sugar, line(sugar, 3, like(3), ["-K3", -1])),
      row("glucose", [9, 300, 180.16, 1], line([9, 300, 180.16, 1], 4, like(4), ["-K4", -1])),
      [],
      ["Ideal solutions assumed; the real ones are within 0.2 K."],
    ],
    Terms: [["Kf of water (K·kg/mol)", kf]],
  };
}

const solution = (
  at: number,
  [name, water, grams, molar, z]: readonly [string, number, number, number, number],
  [by, kf]: readonly [string, number] = ["1.86", 1.86],
): ShortCell[] => {
  const each = (grams * z * 1000) / molar / water;
  return [
    ...[name, water, grams, molar, z, formula(`C${at}*E${at}/D${at}/(B${at}/1000)`, each)],
    ...[formula(`F${at}*${by}`, kf * each), formula(`-G${at}`, -kf * each)],
  ];
};

/** A table whose headings are letters: what its formulas read tells which. */
const letters = (z: number, by: readonly [string, number] = ["1.86", 1.86]): Rows => [
  ["Stoff", "Wasser (g)", "m (g)", "M (g/mol)", "z", "b (mol/kg)", "ΔTm (K)", "Tm (°C)"],
  solution(2, ["Natriumchlorid", 160, 2, 58.44, z], by),
  solution(3, ["Fruktose", 125, 5, 180.16, 1]),
  solution(4, ["Saccharose", 200, 9, 342.3, 1]),
];

/** The ice that is made afterwards, below such a table, with its freezing point beside it. */
const withIce = (point: number): Rows => [
  ...letters(2),
  [],
  ["Bestandteile", "g"],
  ["Wasser", 600, null, null, "Gefrierpunkt der Masse", point, "°C"],
  ["Zucker", 200],
  ["Zitronensaft", 50],
];

/** Two mixes side by side, each with its typed answers above its list, and nothing that reads the second. */
const answersOver = (depression: number): Rows => [
  ["FP °C", "FP lowered, K", null, null, "FP °C", "FP lowered, K"],
  [formula("RIME.FREEZINGPOINT(A5:A6,B5:B6)", -1.33), 1.33, null, null, -0.58, depression],
  [],
  ["Material", "kg", null, null, "Material", "kg"],
  ["water", 0.8, null, null, "water", 0.9],
  ["sucrose", 0.18, null, null, "sucrose", 0.09],
];

const POINT = "freezing-point-sign";
const IDEAL = "ideal-law-too-far-off";
const PARTICLES = "particles-not-counted";

/** Tables with a solution to each row whose headings do not say what its formulas give. */
export const workedRowCases: readonly RuleCase[] = [
  { rule: POINT, what: "a working behind a gap", rows: homework(), cells: [] },
  {
    rule: POINT,
    what: "a forgotten minus in a working behind a gap",
    rows: homework({ point: ["K2", 1] }),
    cells: ["L2"],
  },
  { rule: IDEAL, what: "thin brines behind a gap", rows: homework(), cells: [] },
  {
    rule: IDEAL,
    what: "a strong brine in a working behind a gap",
    rows: homework({ saltGrams: 30 }),
    cells: ["K2", "L2"],
  },
  {
    rule: PARTICLES,
    what: "ions left out in a working behind a gap",
    rows: homework({ down: ["J2*Terms!$B$1", 0.5] }),
    cells: ["K2"],
  },
  { rule: PARTICLES, what: "ions counted behind a gap", rows: homework(), cells: [] },
  {
    rule: "cryoscopic-constant",
    what: "a tenth of the constant in a working behind a gap",
    rows: homework({ down: ["J2*E2*0.186", 0.1] }),
    cells: ["K2"],
  },
  {
    rule: "result-differs",
    what: "a working by a constant that is wrong where it stands",
    rows: homework({ kf: 3.35 }),
    cells: [],
  },
  {
    rule: "cryoscopic-constant",
    what: "a constant in a column that only has a letter",
    rows: letters(2, ["0.512", 0.512]),
    cells: ["G2"],
  },
  { rule: "cryoscopic-constant", what: "right letters", rows: letters(2), cells: [] },
  {
    rule: "temperature-units-mixed",
    what: "a point beside a list that stands below a table of solutions",
    rows: withIce(28.6),
    cells: ["F7"],
  },
  {
    rule: "temperature-units-mixed",
    what: "a right one beside such a list",
    rows: withIce(-1.9),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "a typed answer over one of two lists",
    rows: answersOver(1.2),
    cells: ["F2"],
  },
  {
    rule: "result-differs",
    what: "right answers over two lists",
    rows: answersOver(0.58),
    cells: [],
  },
];
