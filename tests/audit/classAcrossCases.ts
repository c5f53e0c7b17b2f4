import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Sugar, salt and soda beside each other in one bowl: 1.86 · (0.0876 + 0.1369 + 0.0714) / 0.5 = 1.10 K. */
const bowl = ({ constant = 1.86, salt = 58.44, sodium = "C5/C6*C7", moles = 0.1369 }): Rows => [
  ["Water in the bowl, g", 500],
  ["Kf, K per mol/kg", constant],
  [],
  ["In it", "sucrose", "sodium chloride", "sodium bicarbonate"],
  ["weighed, g", 30, 4, 3],
  ["one mole weighs, g", 342.3, salt, 84.01],
  ["particles it gives", 1, 2, 2, "all together"],
  [
    ...["moles of particles", formula("B5/B6*B7", 0.0876), formula(sodium, moles)],
    ...[formula("D5/D6*D7", 0.0714), formula("SUM(B8:D8)", 0.159 + moles)],
  ],
  [],
  ["Freezing point drops by, K", formula("B2*E8*1000/B1", (constant * (0.159 + moles)) / 0.5)],
];

/** 20 g of sugar and 4 g of salt, their particles counted to each kilogram of 500 g of water. */
const perKilogram = (salt: string, molality: number): Rows => [
  ["Wasser im Becher (g)", 500],
  ["Kf (K·kg/mol)", 1.86],
  [
    "Zugabe",
    "Masse m (g)",
    "Molmasse M (g/mol)",
    "n = m/M (mol)",
    "i",
    "n·i je kg Wasser (mol/kg)",
  ],
  ["Saccharose", 20, 342.3, formula("B4/C4", 0.0584), 1, formula("D4*E4/$B$1*1000", 0.1169)],
  ["Natriumchlorid", 4, 58.44, formula("B5/C5", 0.0684), 2, formula(salt, molality)],
  [null, null, null, null, "Summe", formula("SUM(F4:F5)", 0.1169 + molality)],
  [],
  ["Der Gefrierpunkt sinkt um (K)", formula("B2*F6", 1.86 * (0.1169 + molality))],
];

/** As physicists head their columns. */
const flasks = (particles: number): Rows => [
  ["Kf / K kg mol⁻¹", 1.86],
  [
    "Flask",
    "Dissolved substance",
    "i",
    "M / g mol⁻¹",
    "Mass added / g",
    "Water / g",
    "Amount n / mol",
    "b / mol kg⁻¹",
    "ΔT / K",
  ],
  [
    ...["A", "sodium chloride", particles, 58.44, 4, 250, formula("E3/D3", 0.0684)],
    ...[formula("G3/F3*1000", 0.2738), formula("C3*$B$1*H3", 0.5093 * particles)],
  ],
  [
    ...["B", "fructose", 1, 180.16, 22, 400, formula("E4/D4", 0.1221)],
    ...[formula("G4/F4*1000", 0.3053), formula("C4*$B$1*H4", 0.5678)],
  ],
];

const example = (
  rule: string,
  what: string,
  rows: Rows,
  cells: readonly string[] = [],
): RuleCase => ({ rule, what, rows, cells });

/** Class sheets with their substances beside each other, and how their columns are headed. */
export const classAcrossCases: readonly RuleCase[] = [
  ...["particles-not-counted", "cryoscopic-constant", "constant-of-a-solute", "result-differs"].map(
    (rule) => example(rule, "substances beside each other, all right", bowl({})),
  ),
  example("more-than-dissolves", "the water of a bowl stands apart", bowl({})),
  example(
    "particles-not-counted",
    "a salt among substances beside each other",
    bowl({ sodium: "C5/C6", moles: 0.0684 }),
    ["C8"],
  ),
  example("cryoscopic-constant", "K per mol/kg", bowl({ constant: 18.6 }), ["B2"]),
  example("constant-of-a-solute", "a molar mass below its salt", bowl({ salt: 35.45 }), ["C6"]),
  example(
    "particles-not-counted",
    "particles to each kilogram of water",
    perKilogram("D5*E5/$B$1*1000", 0.2738),
  ),
  example(
    "particles-not-counted",
    "formula units to each kilogram of water",
    perKilogram("D5/$B$1*1000", 0.1369),
    ["F5"],
  ),
  example("result-differs", "columns headed as physicists do", flasks(2)),
  example("constant-of-a-solute", "columns headed as physicists do", flasks(2)),
  example("constant-of-a-solute", "one particle under the letter i", flasks(1), ["C3"]),
];
