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

/** Two recipes beside each other, amounts left of their names, the total above them; the second total as given. */
const evening = (total: ReturnType<typeof formula> | number, title = "B) Milk ice"): Rows => [
  ["A) Orange ice", null, null, null, title],
  [formula("SUM(A4:A6)", 870), "g", "in the bowl", null, total, "g", "in the bowl"],
  ["take", null, null, null, "take"],
  [600, "g", "orange juice", null, 500, "g", "whole milk"],
  [150, "g", "water", null, 200, "g", "cream 35 % fat"],
  [120, "g", "sugar", null, 165, "g", "sugar"],
];

/** What the second of two recipes shall be, below its answers on a sheet of its own. */
const handout = (goal: string) => ({
  Sheet1: evening(formula("SUM(E4:E6)", 865)),
  Handout: [
    [null, "Orange ice", "Milk ice"],
    [
      "First crystals at (°C)",
      formula("RIME.FREEZINGPOINT(Sheet1!C4:C6,Sheet1!A4:A6)", -2.03),
      formula("RIME.FREEZINGPOINT(Sheet1!G4:G6,Sheet1!E4:E6)", -2.29),
    ],
    ["Sugar in it", "a lot", "a lot"],
    ["It should be", "for the spoon", goal],
    ["Allergens", null, "milk"],
  ],
});

/** Ices in rows, and what is told of each behind its numbers. */
const inRows = (told: string | null, heading = "tell people"): Rows => [
  ["ice", "whole milk", "sugar", "water", "cream 35 % fat", "sum", "FP (°C)", heading],
  ["Milk ice", 60, 18, null, 22, formula("SUM(B2:E2)", 100), -2.8, told],
  ["Sugar ice", null, 20, 80, null, formula("SUM(B3:E3)", 100), -1.5, null],
];

/** A solution with a number that its unit alone tells. */
const byItsUnit = (label: string, value: number, unit = "K·kg/mol"): Rows => [
  ["substance", "sucrose"],
  ["mass of substance", 50, "g"],
  ["mass of water", 500, "g"],
  [label, value, unit],
  ["molar mass", 342.3, "g/mol"],
];

/** A list in percent with an ingredient that may stand twice. */
const listed = (again: number): Rows => [
  ["goes in", "%"],
  ["blueberries", 34.7],
  ["blueberries", again],
  ["water", 16],
  ["sugar", 14.4],
  ["sum", formula("SUM(B2:B5)", 65.1 + again)],
];

/** Two classes vote: sums of rows above the sum of them. */
const votes = (third: string): Rows => [
  ["Ice", "FP (°C)", "Tasted at (°C)", "9a", "9b", "together"],
  ["A", -2.3, -9, 4, 2, formula("D2+E2", 6)],
  ["B", -2.9, -10, 7, 9, formula("D3+E3", 16)],
  ["C", -2.5, -11, 6, 7, formula(third, 13)],
  ["D", -2.6, -9, 5, 8, formula("D5+E5", 13)],
  [
    "handed in",
    null,
    null,
    formula("SUM(D2:D5)", 22),
    formula("SUM(E2:E5)", 26),
    formula("SUM(F2:F5)", 48),
  ],
];

/** A question for each substance of a test. */
const questions = (ions: number): Rows => [
  ["Substance", "Taken (g)", "Into water (g)", "Mr (g/mol)", "Ions or molecules", "Read (°C)"],
  ["sucrose", 34, 300, 342.3, 1, -0.6],
  ["sodium bicarbonate", 2, 150, 84.01, ions, -0.5],
  ["sodium chloride", 7, 800, 58.44, 2, -0.5],
];

const CONSTANT = "constant-of-a-solute";
const TOTAL = "total-incomplete";
const UNTOLD = "caution-not-named";
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
  ...[TOTAL, "unknown-ingredient", "input-without-unit"].map((rule) =>
    example(rule, "recipes beside each other, amounts first", evening(formula("SUM(E4:E6)", 865))),
  ),
  example(TOTAL, "a total above its list that stops short", evening(formula("SUM(E4:E5)", 700)), [
    "E2",
  ]),
  example(TOTAL, "a typed total above, called as the others", evening(800), ["E2"]),
  ...["scooped at −13", "drinkable slush"].map((goal, at): RuleCase => ({
    rule: "misses-its-target",
    what: `what a recipe shall be, in a row of another sheet: ${goal}`,
    rows: handout(goal),
    cells: at === 0 ? [] : ["C4"],
  })),
  example(UNTOLD, "what is told behind an ice in its row", inRows("With milk.")),
  example(UNTOLD, "nothing told behind an ice", inRows(null), ["A1:H3"]),
  example(UNTOLD, "something else behind an ice", inRows("fine, but pale", "verdict"), ["A1:H3"]),
  ...["K·kg/mol", "K kg/mol"].flatMap((unit) => [
    example(KF, `a constant known by its unit ${unit}`, byItsUnit("water's own", 18.6, unit), [
      "B4",
    ]),
    example(KF, `the right constant with its unit ${unit}`, byItsUnit("water's own", 1.86, unit)),
  ]),
  example(KF, "a boiling constant in the same unit", byItsUnit("its boiling constant", 0.512)),
  example(KF, "another solvent's constant in the same unit", byItsUnit("of benzene", 5.12)),
  example("inconsistent-formula", "votes of two classes, added up below", votes("D4+E3"), ["F4"]),
  example("inconsistent-formula", "votes of two classes, all right", votes("D4+E4")),
  example(CONSTANT, "ions or molecules as a heading", questions(3), ["E3"]),
  example(CONSTANT, "ions or molecules, all right", questions(2)),
  example("ingredient-twice", "a line copied and made to fit the sum", listed(34.9), ["A3"]),
  example("ingredient-twice", "two additions that differ", listed(36)),
];
