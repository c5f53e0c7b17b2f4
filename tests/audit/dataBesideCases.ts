import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

// Expected numbers by i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

type Cell = Rows[number][number];

const DATA = [
  ["sucrose", 342.3, 1],
  ["sodium chloride", 58.44, 2],
  ["fructose", 180.16, 1],
  ["potassium chloride", 74.55, 2],
] as const;
const WEIGHED = [
  ["potassium chloride", 2, 200],
  ["sucrose", 20, 250],
  ["sodium chloride", 2, 300],
  ["fructose", 15, 250],
] as const;

/** A solution in each row; its molar mass and particles are those of its name in a table beside. */
function table(change: Readonly<Record<string, Cell>> = {}): Rows {
  const rows = WEIGHED.map(([name, grams, water], at): Cell[] => {
    const row = at + 2;
    const of = DATA.findIndex(([one]) => one === name);
    const [, molarMass, ions] = DATA[of] ?? ["", 1, 1];
    const molality = (1000 * grams) / molarMass / water;
    const [other, ...values] = DATA[at] ?? [""];
    return [
      ...[grams, name, water],
      change[`D${row}`] ?? formula(`1000*A${row}/H${of + 2}/C${row}`, molality),
      change[`E${row}`] ?? formula(`1.86*D${row}*I${of + 2}`, 1.86 * molality * ions),
      ...["", other, ...values],
    ];
  });
  return [
    ["m(solute) / g", "Solute", "m(water) / g", "b / mol kg⁻¹", "ΔT / K", "", "Data", "M", "i"],
    ...rows,
  ];
}

/** Pairs' masses, the molar masses of which stand in another order beside them. */
export const dataBesideCases: readonly RuleCase[] = [
  { rule: "inconsistent-formula", what: "rows by their names", rows: table(), cells: [] },
  {
    rule: "inconsistent-formula",
    what: "the row of another name",
    rows: table({ D4: formula("1000*A4/H4/C4", 0.037) }),
    cells: ["D4"],
  },
  { rule: "formula-overwritten", what: "rows by their names", rows: table(), cells: [] },
  {
    rule: "formula-overwritten",
    what: "a number among rows by their names",
    rows: table({ E4: 0.424 }),
    cells: ["E4"],
  },
  {
    rule: "constant-of-a-solute",
    what: "a typed answer beside a table of data",
    rows: table({ E4: 0.424 }),
    cells: [],
  },
  {
    rule: "constant-of-a-solute",
    what: "an answer from another row's molality",
    rows: table({ E4: formula("1.86*D$3*I3", 0.869) }),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "an answer from another row's molality",
    rows: table({ E4: formula("1.86*D$3*I3", 0.869) }),
    cells: ["E4"],
  },
  { rule: "result-differs", what: "rows by their names", rows: table(), cells: [] },
];
