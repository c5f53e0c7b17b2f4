import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

// Expected numbers by i·Kf·n/kg with Kf = 1.86 K·kg/mol and IUPAC standard atomic weights.

interface Given {
  readonly molarMass?: number;
  readonly ions?: number;
  /** What stands above the names of what is dissolved, and beside the water. */
  readonly names?: string;
  readonly water?: string;
  readonly unit?: string;
  readonly second?: string;
}

/** Beakers beside each other, a column of units between labels and values. */
function beakers(given: Given = {}): Rows {
  const { molarMass = 58.44, ions = 2, names = "What is in it", water = "Tap water" } = given;
  const falls = [
    (1.86 * 20) / 342.3 / 0.3,
    (ions * 1.86 * 4) / molarMass / 0.3,
    (1.86 * 9) / 180.16 / 0.2,
  ];
  return [
    ["Beaker", "", "A", "B", "C"],
    [names, "", "sucrose", given.second ?? "sodium chloride", "fructose"],
    [water, given.unit ?? "g", 300, 300, 200],
    ["Weighed in", "g", 20, 4, 9],
    ["One mole weighs", "g/mol", 342.3, molarMass, 180.16],
    ["Splits into so many particles", "", 1, ions, 1],
    ["So it freezes lower by", "K", ...falls.map((fall, at) => law("CDE"[at] ?? "", fall))],
    ["Freezing point", "°C", ...falls.map((fall, at) => formula(`-${"CDE"[at] ?? ""}7`, -fall))],
  ];
}

const law = (column: string, fall: number) =>
  formula(`${column}6*1.86*${column}4/${column}5/(${column}3/1000)`, fall);

/** The same in letters, with a sugar that nobody knows below it. */
const inLetters = (molarMass: number): Rows => [
  ["Teil A"],
  ["Vergleich", "", "Saccharose", "Fruktose"],
  ["m(H₂O)", "g", 150, 150],
  ["m(Stoff)", "g", 9, 5],
  ["M(Stoff)", "g/mol", 342.3, molarMass, 180.16],
  ["n(Stoff)", "mol", formula("C4/C5", 0.0263), formula("D4/D5", 5 / molarMass)],
  ["Kf(H₂O)", "K·kg/mol", 1.86, 1.86],
  [
    "ΔT berechnet",
    "K",
    formula("C7*C6/(C3/1000)", 0.326),
    formula("D7*D6/(D3/1000)", 62 / molarMass),
  ],
  [],
  ["Teil B: Zucker ohne Etikett"],
  ["m(H₂O)", "g", 400],
  ["m(Probe)", "g", 17],
  ["ΔT gemessen", "K", 0.44],
  ["M(Probe)", "g/mol", formula("1.86*C12*1000/(C13*C11)", 179.66)],
];

const CONSTANT = "constant-of-a-solute";
const NO_UNIT = "input-without-unit";

/** Solutions beside each other, with a column of units between their labels and their values. */
const SOLUTES = [
  ["Sodium chloride", 1, 58.44, 2],
  ["Sucrose", 14, 342.3, 1],
  ["Potassium chloride", 2, 74.55, 2],
] as const;

/** Substances side by side in 250 g of water, and the moles of their particles below; the unit stands behind. */
function sideBySide(ofSalt: string, salt: number): Rows {
  const moles = SOLUTES.map(([, grams, molar]) => grams / molar);
  const particles = SOLUTES.map(([, , , ions], at) => (at === 0 ? salt : ions * (moles[at] ?? 0)));
  const all = particles.reduce((sum, one) => sum + one, 0);
  const worked = (values: readonly number[], text: (column: string, at: number) => string) =>
    values.map((value, at) => formula(text("CDE"[at] ?? "", at), value));
  return [
    ["Substance", "", ...SOLUTES.map(([name]) => name), null],
    ["Weighed in", "m", ...SOLUTES.map(([, grams]) => grams), "g"],
    ["Molar mass", "M", ...SOLUTES.map(([, , molar]) => molar), "g/mol"],
    ["Amount of substance", "n", ...worked(moles, (column) => `${column}2/${column}3`), "mol"],
    ["Particles per formula unit", "i", ...SOLUTES.map(([, , , ions]) => ions), null],
    [
      "Dissolved particles",
      "n·i",
      ...worked(particles, (column, at) => (at === 0 ? ofSalt : `${column}4*${column}5`)),
      "mol",
    ],
    [],
    ["Solvent water", "m(W)", 250, "g"],
    ["Particles together", "Σ", formula("SUM(C6:E6)", all), "mol"],
    ["Molality", "b", formula("1000*C9/C8", 4 * all), "mol/kg"],
    ["Freezing point depression", "ΔT", formula("1.86*C10", 7.44 * all), "K"],
  ];
}

/** A card for each pot, the unit behind each number; labels that nobody knows, told by their formulas only. */
function cards(molarMass: number, ions: number): Rows {
  const card = (value: string, solute: string, grams: number, molar: number, count: number) => {
    const fall = (count * 1.86 * grams) / molar / 0.4;
    const law = `${value}4*1.86*${value}2/${value}3/(${value}5/1000)`;
    return [
      ["goes in", solute, null],
      ["of that", grams, "g"],
      ["M", molar, "g/mol"],
      ["i", count, null],
      ["pot water", 400, "g"],
      ["lower by", formula(law, fall), "K"],
    ];
  };
  const [one, other] = [
    card("B", "sucrose", 60, 342.3, 1),
    card("F", "potassium chloride", 2, molarMass, ions),
  ];
  return one.map((row, at) => [...row, null, ...(other[at] ?? [])]);
}

export const beakerCases: readonly RuleCase[] = [
  { rule: CONSTANT, what: "a beaker", rows: beakers({ molarMass: 35.45 }), cells: ["D5"] },
  { rule: CONSTANT, what: "a beaker's particles", rows: beakers({ ions: 3 }), cells: ["D6"] },
  { rule: CONSTANT, what: "right beakers", rows: beakers(), cells: [] },
  { rule: "result-differs", what: "right beakers of tap water", rows: beakers(), cells: [] },
  { rule: CONSTANT, what: "a card beside another", rows: cards(58.44, 2), cells: ["F3"] },
  { rule: CONSTANT, what: "the ions on a card beside", rows: cards(74.55, 3), cells: ["F4"] },
  { rule: CONSTANT, what: "right cards side by side", rows: cards(74.55, 2), cells: [] },
  { rule: CONSTANT, what: "letters with digits below", rows: inLetters(198.17), cells: ["D5"] },
  { rule: CONSTANT, what: "right letters", rows: inLetters(180.16), cells: [] },
  { rule: "more-than-dissolves", what: "letters in rows", rows: inLetters(180.16), cells: [] },
  {
    rule: "inclusion-as-solute",
    what: "nuts in a beaker",
    rows: beakers({ second: "hazelnuts" }),
    cells: ["D5"],
  },
  { rule: "inclusion-as-solute", what: "right beakers", rows: beakers(), cells: [] },
  { rule: NO_UNIT, what: "letters in rows", rows: inLetters(180.16), cells: [] },
  {
    rule: NO_UNIT,
    what: "water of beakers",
    rows: beakers({ unit: "" }),
    cells: ["C3", "D3", "E3"],
  },
  {
    rule: "particles-not-counted",
    what: "moles of particles below those of formula units, without the factor",
    rows: sideBySide("C4", 1 / 58.44),
    cells: ["C6"],
  },
  {
    rule: "particles-not-counted",
    what: "moles of particles below those of formula units, with it",
    rows: sideBySide("C4*C5", 2 / 58.44),
    cells: [],
  },
  {
    rule: CONSTANT,
    what: "moles of particles as such",
    rows: sideBySide("C4*C5", 2 / 58.44),
    cells: [],
  },
  { rule: NO_UNIT, what: "a unit behind masses", rows: sideBySide("C4*C5", 2 / 58.44), cells: [] },
];
