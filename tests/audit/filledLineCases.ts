import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Two recipes that share their names; the shares of the first are filled down to names that it has not. */
const SHARES = (lemon: ReturnType<typeof formula> | number): Rows => [
  ["Ingredient", "g", "%", "g"],
  ["Water", 600, formula("100*B2/$B$8", 75), 500],
  ["Sugar", 150, formula("100*B3/$B$8", 18.75), 100],
  ["Glucose", 50, formula("100*B4/$B$8", 6.25), 40],
  ["Lemon juice", null, lemon, 60],
  ["Salt", null, formula("100*B6/$B$8", 0), 2],
  ["Fructose", null, formula("100*B7/$B$8", 0), 20],
  ["Total", formula("SUM(B2:B7)", 800), formula("SUM(C2:C7)", 100), formula("SUM(D2:D7)", 722)],
];

/** Costs that are typed where there is no amount. */
const COSTS: Rows = [
  ["Ingredient", "g", "EUR/kg", "Cost (EUR)"],
  ["Water", 600, 1, formula("B2*C2/1000", 0.6)],
  ["Sugar", 150, 2, formula("B3*C3/1000", 0.3)],
  ["Glucose", 50, 4, formula("B4*C4/1000", 0.2)],
  ["Lemon juice", null, null, 0.5],
];

/** Three flavours in columns, and how many portions each makes. */
const PORTIONS = (last: ReturnType<typeof formula> | number): Rows => [
  ["Portion (g)", 50],
  ["Ingredient (g)", "Lemon", "Lime", "Orange"],
  ["water", 600, 590, 500],
  ["sugar", 200, 210, 150],
  ["lemon juice", 200, 200, 350],
  ["Total", ...["B", "C", "D"].map((column) => formula(`SUM(${column}3:${column}5)`, 1000))],
  [],
  ["Portions", formula("B6/$B$1", 20), formula("C6/$B$1", 20), last],
];

/** How many pots a nursery needs each day. */
const POTS = (third: string): Rows => [
  ["Day", "Ice", "Needed (g)", "A pot gives (g)", "Pots"],
  ["Mon", "Orange ice", 2300, 1500, formula("C2/D2", 1.53)],
  ["Tue", "Yogurt ice", 2300, 1505, formula("C3/D3", 1.53)],
  ["Wed", "Mango ice", 2340, 1500, formula(third, 3840)],
  ["Thu", "Orange ice", 2280, 1500, formula("C5/D5", 1.52)],
  ["All", null, null, null, formula("SUM(E2:E5)", 8.42)],
];

/** Who buys, in per cent or in pieces. */
const buyers = (sum: string, heading = "% of pops", kids = 44): Rows => [
  ["Who buys", heading],
  ["Kids", kids],
  ["Grown-ups", 28],
  ["Other stalls", 28],
  ["Everyone", formula(sum, sum === "SUM(B3:B4)" ? 56 : kids + 56)],
];

/** The same with what is said of each above the list. */
const ABOVE = (last: ReturnType<typeof formula> | number): Rows => [
  ["Flavour", "Lemon", "Lime", "Orange"],
  ["Portion (g)", 50, 40, 50],
  ["Portions", formula("B8/B2", 20), formula("C8/C2", 25), last],
  ["Ingredient", "g", "g", "g"],
  ["water", 600, 590, 500],
  ["sugar", 200, 210, 150],
  ["lemon juice", 200, 200, 350],
  ["Total", ...["B", "C", "D"].map((column) => formula(`SUM(${column}5:${column}7)`, 1000))],
];

/** What a canteen needs in a week, with its sum right below. */
const NEEDS = (
  third: ReturnType<typeof formula> | number,
  portions = formula("SUM(B2:B5)", 570),
): Rows => [
  ["Day", "Portions", "g each", "Needed (kg)"],
  ["Monday", 120, 60, formula("B2*C2/1000", 7.2)],
  ["Tuesday", 150, 60, formula("B3*C3/1000", 9)],
  ["Thursday", 200, 60, third],
  ["Friday", 100, 50, formula("B5*C5/1000", 5)],
  ["Week", portions, null, formula("SUM(D2:D5)", 33.2)],
];

/** Lines filled with one formula, beside what they read and beside blanks. */
export const filledLineCases: readonly RuleCase[] = [
  {
    rule: "formula-overwritten",
    what: "a number among four formulas that are summed up right below",
    rows: NEEDS(12),
    cells: ["D4"],
  },
  {
    rule: "inconsistent-formula",
    what: "one of four formulas that are summed up right below",
    rows: NEEDS(formula("B4*C4/100", 120)),
    cells: ["D4"],
  },
  {
    rule: "inconsistent-formula",
    what: "four formulas and the sum right below",
    rows: NEEDS(formula("B4*C4/1000", 12)),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a sum of a week that leaves out the day which the sum beside it counts",
    rows: NEEDS(formula("B4*C4/1000", 12), formula("SUM(B3:B5)", 450)),
    cells: ["B6"],
  },
  {
    rule: "total-incomplete",
    what: "a sum of shares of customers without the first",
    rows: buyers("SUM(B3:B4)"),
    cells: ["B5"],
  },
  {
    rule: "total-incomplete",
    what: "a sum of all shares of customers",
    rows: buyers("SUM(B2:B4)"),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a sum that leaves out the whole above its shares",
    rows: buyers("SUM(B3:B4)", "% of pops", 56),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "pieces that come to 100 by chance",
    rows: buyers("SUM(B3:B4)", "pieces"),
    cells: [],
  },
  {
    rule: "inconsistent-formula",
    what: "a sum along its row where all others divide",
    rows: POTS("C4+D4"),
    cells: ["E4"],
  },
  {
    rule: "inconsistent-formula",
    what: "quotients and the sum below them",
    rows: POTS("C4/D4"),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "two sums of a week that count the same days",
    rows: NEEDS(formula("B4*C4/1000", 12)),
    cells: [],
  },
  {
    rule: "formula-overwritten",
    what: "an answer typed in a row of answers below recipes in columns",
    rows: PORTIONS(20),
    cells: ["D8"],
  },
  {
    rule: "inconsistent-formula",
    what: "an answer worked out otherwise than those beside it",
    rows: PORTIONS(formula("D5/$B$1", 7)),
    cells: ["D8"],
  },
  {
    rule: "formula-overwritten",
    what: "a row of answers by one formula",
    rows: PORTIONS(formula("D6/$B$1", 20)),
    cells: [],
  },
  {
    rule: "formula-overwritten",
    what: "a share typed where the recipe has nothing, among formulas that are filled there, too",
    rows: SHARES(4),
    cells: ["C5"],
  },
  {
    rule: "formula-overwritten",
    what: "a share of nothing by its formula",
    rows: SHARES(formula("100*B5/$B$8", 0)),
    cells: [],
  },
  {
    rule: "inconsistent-formula",
    what: "another formula where the recipe has nothing",
    rows: SHARES(formula("100*B5/$D$8+1", 1)),
    cells: ["C5"],
  },
  {
    rule: "formula-overwritten",
    what: "a cost typed where nothing is weighed and no formula is filled",
    rows: COSTS,
    cells: [],
  },
  {
    rule: "formula-overwritten",
    what: "a number in a row above the recipes that work it out",
    rows: ABOVE(21),
    cells: ["D3"],
  },
  {
    rule: "formula-overwritten",
    what: "a row above the recipes, worked out of each",
    rows: ABOVE(formula("D8/D2", 20)),
    cells: [],
  },
];
