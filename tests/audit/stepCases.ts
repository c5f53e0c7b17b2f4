import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** 34.23 g of sucrose and 5.844 g of salt in 1 kg of water, 0.3 mol of pieces, 0.56 K; and a recipe at the right. */
const lesson = (molar: string, kelvin: number, mixWater: number): Rows => [
  ["Step 1. Water in the saucepan (g)", 1000, null, null, null, null, "Shopping", "Weigh"],
  [...Array<null>(6).fill(null), "milk 3.5 % fat", 800, "g"],
  ["Stirred in", "g", molar, "pieces it falls into", "moles of pieces", null, "sugar", 150, "g"],
  ["sucrose", 34.23, 342.3, 1, formula("B4/C4*D4", 0.1), null, "tap water", 50, "g"],
  ["salt", 5.844, 58.44, 2, formula("B5/C5*D5", 0.2), null, "makes", formula("SUM(H2:H4)", 1000)],
  ["fructose", 18.016, 180.16, 1, formula("B6/C6*D6", 0.1)],
  [null, null, null, "all pieces", formula("SUM(E4:E6)", 0.4)],
  [
    ...["Step 2. Moles of pieces in 1 kg of water", formula("E7/B1*1000", 0.4), "mol/kg", null],
    ...[null, null, "all the water in it", mixWater, "g"],
  ],
  ["Step 3. Together they lower it by", formula("1.86*B8", kelvin), "K", null, null, null],
  [
    ...["Step 4. It freezes at", formula("0-B9", -kelvin), "°C", null, null, null],
    ...["lowered by, K", formula("RIME.DEPRESSION(G2:G4,H2:H4)", 1.67), "K"],
  ],
];
const differs = { rule: "result-differs" } as const;

/** A lesson in steps whose solutes have their water at the top, beside a recipe that has water of its own. */
export const stepCases: readonly RuleCase[] = [
  ...["g for one mole", "Molar mass (g/mol)"].flatMap((molar): RuleCase[] => [
    {
      ...{ ...differs, cells: [], what: `a lesson with "${molar}" beside a recipe` },
      rows: lesson(molar, 0.744, 751),
    },
    {
      ...{ ...differs, cells: ["B9", "B10"], what: `a wrong step with "${molar}"` },
      rows: lesson(molar, 1.5, 751),
    },
    {
      ...{ ...differs, cells: ["H8"], what: `wrong water of the recipe beside "${molar}"` },
      rows: lesson(molar, 0.744, 950),
    },
  ]),
];
