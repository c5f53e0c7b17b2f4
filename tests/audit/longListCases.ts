import type { ShortCell } from "../../src/workbook/sheetFromRows";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

type Line = readonly [name: string, grams: number];

const SYRUP: readonly Line[] = [
  ["Water", 800],
  ["Sucrose", 200],
];
const SOUR: readonly Line[] = [
  ["Water", 700],
  ["Sucrose", 200],
  ["Lemon juice", 100],
];
const HEADERS = ["Recipe", "Ingredient", "Amount (g)", "Batch (g)", "Freezing point (°C)", "For"];

/** Lines of one recipe; what is said of it stands in the first. */
const lines = (title: string, list: readonly Line[], ...said: readonly ShortCell[]): Rows =>
  list.map(([name, grams], at) => [title, name, grams, ...(at === 0 ? said : [])]);

/** Two recipes with a blank row between them: the second in rows 5 and 6. */
const listed = (...second: readonly ShortCell[]): Rows => [
  HEADERS,
  ...lines("Sour", SOUR, formula("SUM(C2:C4)", 1000)),
  [],
  ...lines("Syrup", SYRUP, ...second),
];
const total = formula("SUM(C6:C7)", 1000);

const longListCase = (rule: string, what: string, rows: Rows, ...cells: string[]): RuleCase => ({
  ...{ rule, what, rows, cells },
});

/** Several recipes in one list, each line of which names its recipe. */
export const longListCases: readonly RuleCase[] = [
  longListCase("ingredient-twice", "an ingredient of two recipes of a list", listed(total)),
  longListCase(
    "ingredient-twice",
    "an ingredient twice in one recipe of a list",
    [HEADERS, ...lines("Sour", SOUR), [], ...lines("Syrup", [...SYRUP, ["Sucrose", 200]])],
    "B8",
  ),
  longListCase("total-incomplete", "the total beside each recipe", listed(total)),
  longListCase(
    "total-incomplete",
    "a total beside a recipe that leaves a line out",
    listed(formula("SUM(C6:C6)", 800)),
    "D6",
  ),
  longListCase("total-incomplete", "kinds of ingredients in a column beside one recipe", [
    ["Group", "Ingredient", "Amount (g)"],
    ...lines("Liquids", [...SYRUP.slice(0, 1), ["Lemon juice", 50]]),
    ...lines("Sugars", [...SYRUP.slice(1), ["Glucose", 40]]),
    [null, "Total", formula("SUM(C2:C5)", 1090)],
  ]),
  // Sucrose of 20 % freezes at −1.46 °C (CRC Handbook of Chemistry and Physics, aqueous solutions).
  longListCase(
    "result-differs",
    "a freezing point beside the recipe it is of",
    listed(total, -1.46),
  ),
  longListCase("result-differs", "a freezing point of another recipe", listed(total, -2.9), "E6"),
  // 85 % of that water is ice at −13.95 °C (Young & Jones 1949): harder than is scooped at −13 °C.
  longListCase(
    "misses-its-target",
    "a target beside the recipe it is of",
    listed(total, null, "scooped at −13"),
    "F6",
  ),
];
