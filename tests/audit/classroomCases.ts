import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Two tubes whose units stand behind their numbers, and a log of the freezer beside them. */
const besideLog = (constant: number, unit: string): Rows => [
  ["tube", "I", "II", null, null, "day", "freezer (°C)"],
  ["substance", "fructose", "potassium chloride", null, null, "Mon", -18],
  ["mass of substance", 10, 3, "g", null, "Tue", -19],
  ["mass of water", 150, 250, "g", null, "Wed", -18],
  ["cryoscopic constant of water", constant, 1.86, unit, null, "Thu", -17],
  ["molar mass", 180.16, 74.55, "g/mol", null, "Fri", -18],
  ["particles per formula unit", 1, 2],
  [
    ...["molality", formula("B3/B6/(B4/1000)", 0.37)],
    ...[formula("C3/C6/(C4/1000)", 0.161), "mol/kg"],
  ],
  ["depression", formula("B5*B8*B7", 0.37 * constant), formula("C5*C8*C7", 0.599), "K"],
];

/** Two problems on one sheet, each with its letters, its words, its numbers and their units. */
const problems = ({ molarMass = 342.3, particles = 1, drop = "=C4/C5*C6*C8/C7*1000" }): Rows => [
  ["Problem A", null, null, null, null, "Problem B"],
  [null, "substance", "sucrose", null, null, null, "substance", "fructose"],
  [],
  ["m", "how much of it", 48, "g", null, "m", "how much of it", 9, "g"],
  ["M", "molar mass", molarMass, "g/mol", null, "M", "molar mass", 180.16, "g/mol"],
  ["i", "pieces it falls into", particles, "–", null, "i", "pieces it falls into", 1, "–"],
  ["m(w)", "water", 400, "g", null, "m(w)", "water", 150, "g"],
  ["Kf", "water's constant", 1.86, "K·kg/mol", null, "Kf", "its constant", 1.86, "K·kg/mol"],
  [
    ...["ΔT", "drop", formula(drop.slice(1), 0.652 * particles * (342.3 / molarMass)), "K", null],
    ...["ΔT", "drop", formula("H4/H5*H6*H8/H7*1000", 0.619), "K"],
  ],
];

/** Substances across, with rows whose words alone do not tell what they say. */
const bottle = ({ salt = 58.44, ions = 2 }): Rows => [
  ["Water in the bottle (g)", 750],
  ["Kf for water (K·kg/mol)", 1.86],
  [],
  ["Dissolved in it", "sucrose", "sodium chloride", "together"],
  ["Weighed (g)", 29, 6, formula("SUM(B5:C5)", 35)],
  ["One mole weighs (g)", 342.3, salt],
  ["Each unit gives", 1, ions],
  ["Moles", formula("B5/B6", 0.0847), formula("C5/C6", 6 / salt)],
  [
    ...["Moles of particles", formula("B8*B7", 0.0847), formula("C8*C7", (6 * ions) / salt)],
    formula("SUM(B9:C9)", 0.0847 + (6 * ions) / salt),
  ],
  [
    ...["Its part of it (%)", formula("100*B9/$D$9", 29), formula("100*C9/$D$9", 71)],
    formula("SUM(B10:C10)", 100),
  ],
  [],
  ["So it freezes lower by (K)", formula("B2*D9/(B1/1000)", 2.48 * (0.0847 + (6 * ions) / salt))],
];

const CONSTANT = "constant-of-a-solute";
const KF = "cryoscopic-constant";

const example = (
  rule: string,
  what: string,
  rows: Rows,
  cells: readonly string[] = [],
): RuleCase => ({ rule, what, rows, cells });

/** Sheets of a chemistry class as their teachers lay them out. */
export const classroomCases: readonly RuleCase[] = [
  example(
    KF,
    "a log of the freezer beside a row whose unit stands last",
    besideLog(1.86, "K·kg/mol"),
  ),
  example(KF, "ten times the constant beside a log of the freezer", besideLog(18.6, "K·kg/mol"), [
    "B5",
  ]),
  ...["K·kg/mol", "K kg mol⁻¹"].map((unit) =>
    example("input-without-unit", `constants with ${unit} behind the last`, besideLog(1.86, unit)),
  ),
  example("input-without-unit", "constants with no unit behind the last", besideLog(1.86, ""), [
    "B5",
  ]),
  ...[CONSTANT, "result-differs", "more-than-dissolves"].map((rule) =>
    example(rule, "two problems whose letters stand left of their words", problems({})),
  ),
  example(
    CONSTANT,
    "the molar mass of the first of two problems",
    problems({ molarMass: 180.16 }),
    ["C5"],
  ),
  example(CONSTANT, "the particles of the first of two problems", problems({ particles: 2 }), [
    "C6",
  ]),
  ...[CONSTANT, "more-than-dissolves", "total-incomplete", "result-differs"].map((rule) =>
    example(rule, "substances across, with what each unit gives", bottle({})),
  ),
  example(CONSTANT, "a molar mass in a row of a bottle", bottle({ salt: 35.45 }), ["C6"]),
  example(CONSTANT, "what each unit gives, which formulas tell", bottle({ ions: 1 }), ["C7"]),
];
