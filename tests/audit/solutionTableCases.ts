import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

// Expected numbers by i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

/** Name, grams, grams of water, molar mass and particles of a solution. */
type Solution = readonly [string, number, number, number, number];

const SOLUTIONS: readonly Solution[] = [
  ["Kaliumchlorid", 2, 200, 74.55, 2],
  ["Fruktose", 10, 250, 180.16, 1],
  ["Dextrose-Monohydrat", 15, 300, 198.17, 1],
];

/** What was weighed, a solution a row. */
const weighed = (solutions: readonly Solution[]): Rows => [
  ["Nr.", "Stoff", "Masse (g)", "Wasser (g)", "gemessen (°C)"],
  ...solutions.map(([name, grams, water], at) => [`${at + 1}.`, name, grams, water]),
];

interface Given {
  readonly solutions?: readonly Solution[];
  /** Before the addresses of what was weighed. */
  readonly sheet?: string;
  /** The depression of the second solution, and what it gives. */
  readonly second?: readonly [string, number];
  readonly promise?: string;
}

/** The same rows worked out elsewhere, from a row on. */
function workedOut(top: number, given: Given = {}): Rows {
  const { solutions = SOLUTIONS, sheet = "", promise = "Ideal gerechnet, auf 0,2 K." } = given;
  return [
    ["Nr.", "M (g/mol)", "Teilchen i", "n (mol)", "b (mol/kg)", "ΔT (K)", "Gefrierpunkt (°C)"],
    ...solutions.map(([, grams, water, molar, ions], at): Rows[number] => {
      const row = top + 1 + at;
      const moles = grams / molar;
      const perKg = (1000 * moles) / water;
      const law = [`C${row}*1.86*E${row}`, ions * 1.86 * perKg] as const;
      const [text, falls] = (at === 1 ? given.second : undefined) ?? law;
      return [
        ...[`${at + 1}.`, molar, ions, formula(`${sheet}C${2 + at}/B${row}`, moles)],
        formula(`D${row}/${sheet}D${2 + at}*1000`, perKg),
        ...[formula(text, falls), formula(`-F${row}`, -falls)],
      ];
    }),
    [promise],
  ];
}

const below = (given: Given = {}): Rows => [
  ...weighed(given.solutions ?? SOLUTIONS),
  [],
  ["Lösungen"],
  ...workedOut(7, given),
];

const elsewhere = (given: Given = {}): Readonly<Record<string, Rows>> => ({
  Sheet1: workedOut(1, { ...given, sheet: "Messung!" }),
  Messung: weighed(given.solutions ?? SOLUTIONS),
});

const withFirst = (...first: Solution): Given => ({ solutions: SOLUTIONS.with(0, first) });

const salty = (grams: number): readonly Solution[] =>
  SOLUTIONS.with(0, ["Kaliumchlorid", grams, 200, 74.55, 2]);

/** Tables that say what is dissolved in how much water, a solution a row, and are worked out in another table. */
/** Rows of solutions that are divided by a column, in grams or in something that is not said. */
const divided = (heading: string, size: number, point: number): Rows => [
  ["Solute", "m (g)", "M (g/mol)", heading, "molality", "depression (K)"],
  ...(
    [
      ["sucrose", 34.23, 342.3, 1],
      ["sodium chloride", 5.844, 58.44, 2],
    ] as const
  ).map(([solute, grams, molarMass, particles], at) => [
    ...[solute, grams, molarMass, size],
    ...[formula(`B${at + 2}/C${at + 2}/D${at + 2}`, 0.1 / size), particles * point],
  ]),
];

export const solutionTableCases: readonly RuleCase[] = [
  ...(
    [
      ["water (kg)", 0.25, 0.744, []],
      ["water (kg)", 0.25, 7.44, ["F3", "F2"]],
      ["poured in", 0.25, 0.744, []],
    ] as const
  ).map(([heading, size, point, cells]) => ({
    ...{ rule: "result-differs", what: `rows divided by "${heading}": ${point} K`, cells },
    rows: divided(heading, size, point),
  })),
  {
    rule: "more-than-dissolves",
    what: "one row has too much for its water",
    rows: weighed(salty(90)),
    cells: ["C2"],
  },
  { rule: "more-than-dissolves", what: "each row in its own water", rows: below(), cells: [] },
  { rule: "result-differs", what: "right answers of each row", rows: below(), cells: [] },
  {
    rule: "result-differs",
    what: "an answer that is not its row's",
    rows: below({ second: ["0.31", 0.31] }),
    cells: ["F9", "G9"],
  },
  ...[below, elsewhere].flatMap((rows, at): readonly RuleCase[] => {
    const where = at === 0 ? "below what was weighed" : "on another sheet";
    const row = at === 0 ? 8 : 2;
    return [
      {
        rule: "constant-of-a-solute",
        what: `molar masses ${where}`,
        rows: rows(),
        cells: [],
      },
      {
        rule: "constant-of-a-solute",
        what: `a molar mass ${where}`,
        rows: rows(withFirst("Kaliumchlorid", 2, 200, 85.44, 2)),
        cells: [`B${row}`],
      },
      {
        rule: "constant-of-a-solute",
        what: `particles ${where}`,
        rows: rows(withFirst("Kaliumchlorid", 2, 200, 74.55, 1)),
        cells: [`C${row}`],
      },
      {
        rule: "particles-not-counted",
        what: `all particles ${where}`,
        rows: rows(),
        cells: [],
      },
      {
        rule: "inclusion-as-solute",
        what: `nuts ${where}`,
        rows: rows(withFirst("Haselnüsse", 9, 200, 342.3, 1)),
        cells: [`D${row}`],
      },
      {
        rule: "ideal-law-too-far-off",
        what: `a strong solution ${where}`,
        rows: rows(withFirst("Natriumchlorid", 30, 200, 58.44, 2)),
        cells: [`F${row}`, `G${row}`],
      },
      {
        rule: "ideal-law-too-far-off",
        what: `thin solutions ${where}`,
        rows: rows(),
        cells: [],
      },
    ];
  }),
  ...(
    [
      ["Ideal gerechnet, auf 0,3 K.", []],
      ["Ideal gerechnet, auf 0,02 K.", ["F2", "G2"]],
    ] as const
  ).map(([promise, cells]) => ({
    ...{ rule: "ideal-law-too-far-off", what: `a sheet of answers, elsewhere "${promise}"`, cells },
    rows: {
      Ergebnis: [
        ["Stoff", "Gefrierpunkt (°C)"],
        ["Kochsalz", formula("Sheet1!G2", -1.273)],
      ],
      ...elsewhere({ ...withFirst("Kochsalz", 4, 200, 58.44, 2), promise }),
    },
  })),
  {
    rule: "inconsistent-formula",
    what: "one that reads its neighbour's molality",
    rows: below({ second: ["C9*1.86*E8", 1 * 1.86 * ((1000 * 2) / 74.55 / 200)] }),
    cells: ["F9"],
  },
  { rule: "inconsistent-formula", what: "each row of its own", rows: below(), cells: [] },
  {
    rule: "particles-not-counted",
    what: "particles left out of a row on another sheet",
    rows: elsewhere({
      solutions: SOLUTIONS.with(1, ["Kochsalz", 5, 250, 58.44, 2]),
      second: ["1.86*E3", 1.86 * ((1000 * 5) / 58.44 / 250)],
    }),
    cells: ["F3"],
  },
];
