import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Name, grams, molar mass and particles of a solution. */
type Solution = readonly [string, number, number, number];

const SOLUTIONS: readonly Solution[] = [
  ["Natriumchlorid", 1, 58.44, 2],
  ["Glycerin", 3, 92.09, 1],
  ["Ethanol", 4, 46.07, 1],
];

/** Solutions in 100 g of water that stand above them; their units stand in a row below the headings. */
const unitsBelow = (unit: string | null): Rows => [
  ["m(Wasser) in g", 100],
  ["Kf(Wasser) in K·kg/mol", 1.86],
  [],
  ["Gruppe", "Stoff", "Einwaage", "M", "n", "b", "z (Teilchen)", "ΔT", "T(Gefr.) berechnet"],
  [null, null, unit, "g/mol", "mol", "mol/kg", null, "K", "°C"],
  ...SOLUTIONS.map(([name, grams, molar, ions], at): Rows[number] => {
    const row = 6 + at;
    const perKg = grams / molar / 0.1;
    return [
      ...["ABC"[at] ?? "", name, grams, molar],
      ...[formula(`C${row}/D${row}`, grams / molar), formula(`E${row}/($B$1/1000)`, perKg), ions],
      ...[formula(`G${row}*F${row}*$B$2`, ions * perKg * 1.86)],
      formula(`-H${row}`, -ions * perKg * 1.86),
    ];
  }),
];

/** Solutes right of what was weighed, and left of their molar masses. */
const namedBetween = (weighed: string, named: string, first = 0.8075): Rows => [
  [null, null, null, null, null, null, null, null, "Kf water, K kg/mol", 1.86],
  [...["water g", "kg of water", weighed, named, "MM g/mol", "i", "mol"], "ΔT in K"],
  ...(
    [
      [50, 1, "ethanol", 46.07],
      [75, 2, "glycerol", 92.09],
      [75, 3, "ethylene glycol", 62.07],
    ] as const
  ).map(([water, grams, name, molar], at): Rows[number] => {
    const row = 3 + at;
    const [kg, moles] = [water / 1000, grams / molar];
    return [
      ...[water, formula(`A${row}/1000`, kg), grams, name, molar, 1],
      formula(`C${row}/E${row}`, moles),
      at === 0 ? first : formula(`$J$1*G${row}*F${row}/B${row}`, (1.86 * moles) / kg),
    ];
  }),
];

/** Ethanol and salt are names of solutes, where elsewhere they say what a number is. */
export const ethanolCases: readonly RuleCase[] = [
  {
    rule: "input-without-unit",
    what: "ethanol among solutes whose grams stand in a row of units",
    rows: unitsBelow("g"),
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "the same without the grams",
    rows: unitsBelow(null),
    cells: ["C6", "C7", "C8"],
  },
  ...[
    ["solute g", "what was dissolved"],
    ["solute in it (g)", "which"],
    ["g dissolved", "of what"],
  ].map(([weighed = "", named = ""]): RuleCase => ({
    rule: "result-differs",
    what: `molar masses right of solutes, with "${weighed}" and "${named}"`,
    rows: namedBetween(weighed, named),
    cells: [],
  })),
  {
    rule: "result-differs",
    what: "a depression of such a table that is another's",
    rows: namedBetween("solute g", "what was dissolved", 1.1987),
    cells: ["H3"],
  },
];
