import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Jars of a class beside each other, by i·Kf·n/kg with Kf = 1.86 K·kg/mol; below them what is to be drunk, with answers beside it. */
const jug = (drop: number, dissolved = 158, probe = -0.4): Rows => [
  ["jar P", null, null, "jar Q"],
  ["water, g", 300, null, "water, g", 400],
  ["stirred in", "potassium chloride", null, "stirred in", "sodium chloride"],
  ["how much of it, g", 2, null, "how much of it, g", 3],
  ["bits each unit splits into", 2, null, "bits each unit splits into", 2],
  ["g for one mole", 74.55, null, "g for one mole", 58.44],
  ["Kf (K kg/mol)", 1.86, null, "Kf (K kg/mol)", 1.86],
  ["moles", formula("B4/B6", 0.02683), null, "moles", formula("E4/E6", 0.05133)],
  [
    ...["moles per kg water", formula("1000*B8/B2", 0.08943), null],
    ...["moles per kg water", formula("1000*E8/E2", 0.12834)],
  ],
  ["drop (K)", formula("B7*B5*B9", 0.3327), null, "drop (K)", formula("E7*E5*E9", 0.4774)],
  ["should freeze at (°C)", formula("-B10", -0.3327), null, null, null],
  ["probe said (°C)", -0.3, null, "probe said (°C)", probe],
  [],
  ["into the jug", "g", null, "slush starts at (°C)", -1.9],
  ["water", 693, null, "drop (K)", drop],
  ["sugar", 119, null, "sugars to 100 g of water (g)", 22.17],
  ["dextrose monohydrate", 39, null, "dissolved, g", dissolved],
  ["salt", 4],
  ["whole jug", formula("SUM(B15:B18)", 855)],
];

/** A class's solutions in rows, and below them the ice it eats, with its answers beside it; one solution is of a sugar in it. */
const reward = (share: number): Rows => [
  ["Team", "Stoff", "m Stoff (g)", "m Wasser (g)", "M (g/mol)"],
  ["A", "Fruktose", 25, 800, 180.16],
  ["B", "Saccharose", 105, 800, 342.3],
  [],
  [null, "man nehme", "Gramm"],
  [null, "Heidelbeeren", 553, null, "unser Eis friert ab", -2.82, "°C"],
  [null, "Wasser", 235],
  [null, "Haushaltszucker", 151],
  [null, "Fruktose", 30, null, "bei −10 °C schon Eis (vom Wasser)", share, "%"],
  [null, "Zitronensaft", 31],
];

/** Two puddings beside each other, what they make above each. */
const puddings = (makes: number, scoop = "one scoop (g)", words = "MAKES, all in"): Rows => [
  ["WHITE ICE", null, null, "BERRY ICE"],
  [formula("SUM(A4:A7)", 2796), "MAKES, all in", null, makes, words],
  ["weight (g)", "of what", null, "weight (g)", "of what"],
  [1693, "whole milk", null, 1481, "strawberries"],
  [584, "cream 35 % fat", null, 440, "granulated sugar"],
  [428, "granulated sugar", null, 90, "dextrose monohydrate"],
  [91, "dextrose monohydrate", null, 303, "water"],
  [],
  [scoop, 60, null, "one scoop (g)", 60],
  [
    ...["scoops out of it", formula("A2/B9", 46.6), null],
    ...["scoops out of it", formula("D2/E9", makes / 60)],
  ],
];

/** What a school needs: so much for each of so many. */
const school = (each: string): Rows => [
  [each, 60],
  ["pupils having it", 63],
  ["so make (g)", formula("B1*B2", 3780)],
  [],
  ["what", "grams"],
  ["mango", formula("0.8*$B$3", 3024)],
  ["caster sugar", formula("0.2*$B$3", 756)],
];

/** True and false examples of what stands beside a list below worked examples, and above one beside another. */
export const jugCases: readonly RuleCase[] = [
  { rule: "result-differs", what: "answers beside a jug below jars", rows: jug(1.9), cells: [] },
  {
    rule: "result-differs",
    what: "a drop beside a jug below a jar that it is not of either",
    rows: jug(3.28),
    cells: ["E15"],
  },
  {
    rule: "result-differs",
    what: "what is dissolved beside a jug in the columns of a jar",
    rows: jug(1.9, 190),
    cells: ["E17"],
  },
  {
    rule: "temperature-units-mixed",
    what: "what a probe said in °F",
    rows: jug(1.9, 158, 31),
    cells: ["E12"],
  },
  {
    rule: "temperature-units-mixed",
    what: "what a probe said in °C",
    rows: jug(1.9),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "a share beside a line of a list that is called as a solution above",
    rows: reward(67),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "a wrong share beside such a line",
    rows: reward(49),
    cells: ["F9"],
  },
  {
    rule: "total-incomplete",
    what: "a total typed above a list where that beside it has its sum",
    rows: puddings(2660),
    cells: ["D2"],
  },
  {
    rule: "total-incomplete",
    what: "the same total, which is right",
    rows: puddings(2314),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a number there that other words tell of",
    rows: puddings(2660, "one scoop (g)", "sold so far"),
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "one scoop, by which a total above the list is divided",
    rows: puddings(2314, "one scoop"),
    cells: ["B9"],
  },
  {
    rule: "input-without-unit",
    what: "what each gets, beside how many they are",
    rows: school("each gets"),
    cells: ["B1"],
  },
  {
    rule: "input-without-unit",
    what: "what each gets in grams, beside how many they are",
    rows: school("each gets (g)"),
    cells: [],
  },
];
