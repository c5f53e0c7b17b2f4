import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

// Expected numbers by i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

const lowering = (ions: number, grams: number, molarMass: number, waterGrams = 500): number =>
  (ions * 1.86 * grams * 1000) / molarMass / waterGrams;

interface Given {
  readonly name?: string;
  readonly molarMass?: number;
  readonly ions?: number;
  readonly water?: string;
  readonly grams?: readonly number[];
  /** The formula of the second point, and what it gives. */
  readonly point?: readonly [string, number];
}

/** Masses of one substance below its data. */
function below(given: Given = {}): Rows {
  const { name = "Kochsalz", molarMass = 58.44, ions = 2, grams = [3, 5, 7] } = given;
  return [
    ["Stoff", name],
    ["Molare Masse (g/mol)", molarMass],
    ["Teilchenzahl i", ions],
    [given.water ?? "Wasser (g)", 500],
    [],
    ["m (g)", "n (mol)", "ΔT (K)", "T (°C)"],
    ...grams.map((mass, at) => {
      const row = 7 + at;
      const falls = lowering(ions, mass, molarMass);
      const [point, value] = (at === 1 ? given.point : undefined) ?? [`-C${row}`, -falls];
      const law = formula(`$B$3*1.86*B${row}/($B$4/1000)`, falls);
      return [mass, formula(`A${row}/$B$2`, mass / molarMass), law, formula(point, value)];
    }),
    ["Ideal gerechnet; auf 0,2 K genau."],
  ];
}

/** The same masses of two substances, with their data above and their answers beside each other. */
const beside = (ions: number): Rows => [
  ["", "NaCl", "sucrose"],
  ["M (g/mol)", 58.44, 342.3],
  ["i", ions, 1],
  ["Water (g)", 500],
  [],
  ["m (g)", "ΔT salt (K)", "ΔT sugar (K)"],
  ...[3, 5, 7].map((mass, at) => [
    mass,
    formula(`B$3*1.86*$A${7 + at}/B$2/$B$4*1000`, lowering(ions, mass, 58.44)),
    formula(`C$3*1.86*$A${7 + at}/C$2/$B$4*1000`, lowering(1, mass, 342.3)),
  ]),
];

/** The substance stands in the title, the water changes from row to row, and the answers are typed. */
const inTitle = (molarMass: number, last: number): Rows => [
  ["Salt in less and less water"],
  ["Mass of it (g)", 5, "", "Molar mass (g/mol)", molarMass, "", "Ions", 2],
  [],
  ["Beaker", "Water (g)", "Freezing point (°C)"],
  ...[500, 400, 300].map((water, at) => [
    `No. ${at + 1}`,
    water,
    at === 2
      ? last
      : formula(`-$H$2*1.86*$B$2/$E$2/B${5 + at}*1000`, -lowering(2, 5, 58.44, water)),
  ]),
];

const CONSTANT = "constant-of-a-solute";
const SIGN = "freezing-point-sign";
const INCLUSION = "inclusion-as-solute";

/** Tables with a solution to each row, whose substance and constants stand elsewhere. */
export const solutionRowCases: readonly RuleCase[] = [
  {
    rule: CONSTANT,
    what: "a molar mass above masses",
    rows: below({ molarMass: 85.44 }),
    cells: ["B2"],
  },
  { rule: CONSTANT, what: "particles above masses", rows: below({ ions: 1 }), cells: ["B3"] },
  { rule: CONSTANT, what: "right data above masses", rows: below(), cells: [] },
  {
    rule: CONSTANT,
    what: "one of two substances beside each other",
    rows: beside(3),
    cells: ["B3"],
  },
  { rule: CONSTANT, what: "two substances beside each other", rows: beside(2), cells: [] },
  { rule: CONSTANT, what: "a substance in the title", rows: inTitle(35.45, -1.06), cells: ["E2"] },
  { rule: CONSTANT, what: "a right one in the title", rows: inTitle(58.44, -1.06), cells: [] },
  {
    rule: SIGN,
    what: "a column named T, by its other rows",
    rows: below({ point: ["C8", 0.318] }),
    cells: ["D8"],
  },
  { rule: SIGN, what: "a column named T", rows: below(), cells: [] },
  { rule: SIGN, what: "a typed one in its row", rows: inTitle(58.44, 1.06), cells: ["C7"] },
  {
    rule: "particles-not-counted",
    what: "a row that leaves out the ions given above",
    rows: below({ ions: 2 }).map((row, at) =>
      at === 7 ? row.with(2, formula("1.86*B8/($B$4/1000)", lowering(1, 5, 58.44))) : row,
    ),
    cells: ["C8"],
  },
  { rule: "particles-not-counted", what: "ions given above", rows: below(), cells: [] },
  {
    rule: INCLUSION,
    what: "nuts named once above",
    rows: below({ name: "Mandeln", molarMass: 342.3, ions: 1 }),
    cells: ["B1"],
  },
  { rule: INCLUSION, what: "salt named once above", rows: below(), cells: [] },
  {
    rule: "ideal-law-too-far-off",
    what: "the strongest of a row of brines",
    rows: below({ grams: [3, 5, 40] }),
    cells: ["C9", "D9"],
  },
  { rule: "ideal-law-too-far-off", what: "thin brines", rows: below(), cells: [] },
  {
    rule: "input-without-unit",
    what: "water above masses",
    rows: below({ water: "Wasser" }),
    cells: ["B4"],
  },
  { rule: "result-differs", what: "right answers below their data", rows: below(), cells: [] },
  {
    rule: "result-differs",
    what: "a typed answer of its own row",
    rows: inTitle(58.44, -0.5),
    cells: ["C7"],
  },
];
