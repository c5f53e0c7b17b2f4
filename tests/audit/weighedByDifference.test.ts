import { formula, type Rows } from "./bookOf";
import { expectFound } from "./tried";

// 11 g of sodium chloride and 14 g of sucrose by i·Kf·n/kg, with IUPAC standard atomic weights.

const SOLUTES = [
  ["sodium chloride", 11, 800, 58.44, 2],
  ["sucrose", 14, 150, 342.3, 1],
  ["fructose", 8, 250, 180.16, 1],
] as const;

/** What was weighed with its vessels; one may stand with a molar mass and a minus of one's own. */
const balance: Rows = [
  [
    ...["Flask", "Solute", "Boat, empty (g)", "Boat + solute (g)", "Solute, net (g)"],
    ...["Flask, empty (g)", "Flask + water (g)", "Water, net (g)"],
  ],
  ...SOLUTES.map(([name, grams, water], at) => {
    const row = at + 2;
    return [
      ...[at + 1, name, 2.5, 2.5 + grams, formula(`D${row}-C${row}`, grams)],
      ...[100, 100 + water, formula(`G${row}-F${row}`, water)],
    ];
  }),
];

/** The same worked out on a sheet that names no solute, below headings that say little. */
const worked = (molarOfSalt: number, sign: string): Rows => [
  ["Kf, water (K kg/mol)", 1.86],
  [],
  ["Flask", "Molar mass (g/mol)", "Ions, ν", "b (mol/kg)", "θ calc (K)", "T calc (°C)"],
  ...SOLUTES.map(([, grams, water, molar, ions], at) => {
    const [row, read] = [at + 4, at + 2];
    const mass = at === 0 ? molarOfSalt : molar;
    const molality = (grams / mass / water) * 1000;
    const minus = at === 1 ? sign : "-";
    const depression = 1.86 * molality * ions;
    return [
      ...[at + 1, mass, ions],
      formula(`Balance!E${read}/B${row}/Balance!H${read}*1000`, molality),
      formula(`D${row}*C${row}*$B$1`, depression),
      formula(`${minus}E${row}`, minus === "-" ? -depression : depression),
    ];
  }),
  ["Ideal, within 0.2 K for these flasks."],
];

const bookWith = (molarOfSalt: number, sign: string) => ({
  Balance: balance,
  Calculated: worked(molarOfSalt, sign),
});

test("solutions weighed by difference are worked out on another sheet, under headings that say little", () => {
  expectFound({ what: "as it should be", sheets: bookWith(58.44, "-"), found: [] });
});

test("a molar mass of chlorine is told of the salt that the other sheet names", () => {
  const found = ["constant-of-a-solute Calculated!B4", "result-differs Calculated!D4"];
  expectFound({ what: "35.45 for 58.44", sheets: bookWith(35.45, "-"), found });
});

test("a freezing point without its minus is told though only its formula says that it is one", () => {
  const found = ["freezing-point-sign Calculated!F5", "inconsistent-formula Calculated!F5"];
  expectFound({ what: "=E5", sheets: bookWith(58.44, ""), found });
});
