import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 5.844 g of salt (0.1 mol) and 34.23 g of sucrose (0.1 mol) in 500 g of water, worked out on a second sheet. */
const protocol = (
  { water = "Vorlage Wasser / g", letter = "ν", note = "" },
  particles: number,
  kelvin: number,
): Readonly<Record<string, Rows>> => ({
  Weighed: [
    [water, 500],
    ["Kf(Wasser) / (K kg/mol)", 1.86],
    ["Substanz", "M / (g/mol)", letter, "m / g", "Flasche"],
    ["Natriumchlorid", 58.44, particles, 5.844, "R2361"],
    ["Saccharose", 342.3, 1, 34.23, "K7503"],
    [],
    [note],
  ],
  Worked: [
    ["Substanz", "n / mol", `${letter} · n / mol`],
    [
      formula("Weighed!A4", "Natriumchlorid"),
      formula("Weighed!D4/Weighed!B4", 0.1),
      formula("B2*Weighed!C4", 0.1 * particles),
    ],
    [
      formula("Weighed!A5", "Saccharose"),
      formula("Weighed!D5/Weighed!B5", 0.1),
      formula("B3*Weighed!C5", 0.1),
    ],
    ["Summe Teilchen / mol", null, formula("SUM(C2:C3)", 0.1 * particles + 0.1)],
    [],
    ["ΔT / K", formula("Weighed!B2*C4/(Weighed!B1/1000)", kelvin)],
    ["Genauigkeit 0,2 K"],
  ],
});

/** Solutions in rows below headings as chemists write them: 100 g in 400 g of water are 25 g per 100 g, 20 %. */
const strengths = (heading: string, water: string, perWater: number): Rows => [
  ["Lösung", heading, water, "Saccharose je 100 g Wasser / g"],
  ["I", 50, 450, 11.1],
  ["II", 100, 400, perWater],
];

const WATERS = ["Vorlage Wasser / g", "Wasservorlage (g)", "vorgelegtes Wasser, g"];
const EXPLAINED = { letter: "z", note: "z: Teilchen aus einer Formeleinheit" };

/** A laboratory's protocol: what was weighed on one sheet, what follows on another. */
export const protocolCases: readonly RuleCase[] = [
  ...WATERS.flatMap((water): RuleCase[] => [
    {
      ...{ rule: "result-differs", cells: ["B6"], what: `a wrong depression, "${water}"` },
      rows: protocol({ water }, 2, 2.4),
    },
    {
      ...{ rule: "result-differs", cells: [], what: `a right depression, "${water}"` },
      rows: protocol({ water }, 2, 1.116),
    },
  ]),
  {
    ...{ rule: "constant-of-a-solute", cells: ["C4"], what: "one particle of salt below ν" },
    rows: protocol({}, 1, 0.744),
  },
  {
    ...{ rule: "constant-of-a-solute", cells: [], what: "two particles of salt below ν" },
    rows: protocol({}, 2, 1.116),
  },
  {
    rule: "constant-of-a-solute",
    what: "one particle of salt below a letter that a note explains",
    rows: protocol(EXPLAINED, 1, 0.744),
    cells: ["C4"],
  },
  {
    rule: "constant-of-a-solute",
    what: "one particle of salt below a letter that a sentence explains",
    rows: protocol({ ...EXPLAINED, note: "z ist die Zahl der Teilchen einer Formel." }, 1, 0.744),
    cells: ["C4"],
  },
  {
    rule: "constant-of-a-solute",
    what: "a number below a letter that a sentence gives another meaning",
    rows: protocol({ ...EXPLAINED, note: "z ist die Zahl der Messungen." }, 1, 1.116),
    cells: [],
  },
  {
    rule: "constant-of-a-solute",
    what: "a letter that nothing explains",
    rows: protocol({ letter: "z" }, 1, 1.116),
    cells: [],
  },
  ...[
    ["m(Saccharose) / g", "m(Wasser) / g"],
    ["Saccharose / g", "Wasser / g"],
  ].flatMap(([heading = "", water = ""]): RuleCase[] => [
    {
      ...{ rule: "per-water-or-per-mix", cells: ["D3"], what: `per mix, below "${heading}"` },
      rows: strengths(heading, water, 20),
    },
    {
      ...{ rule: "per-water-or-per-mix", cells: [], what: `per water, below "${heading}"` },
      rows: strengths(heading, water, 25),
    },
  ]),
];
