import type { ShortCell } from "../../src/workbook/sheetFromRows";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const BASE = ["Water", "Sucrose", "Glucose", "Lemon juice"];
const COLUMNS = ["C", "D", "E"];
const SHARES = [0.6, 0.7, 0.8];
const baseGrams = (row: number): number => 100 * (8 - row);
const additionGrams = (row: number): number => 100 + 10 * row;

type Cells = Readonly<Record<string, ShortCell>>;

/** A base in column B, and in C to E what is made of it with one addition each, by the factors of row 1. */
const variations = (others: Cells = {}): Rows => {
  const at = (cell: string, usual: ShortCell): ShortCell => others[cell] ?? usual;
  const share = (row: number) =>
    COLUMNS.map((column, index) =>
      at(`${column}${row}`, formula(`B${row}*${column}$1`, baseGrams(row) * SHARES[index]!)),
    );
  const addition = (name: string, row: number) => [
    name,
    null,
    ...COLUMNS.map((column, index) =>
      at(`${column}${row}`, index === row - 7 ? additionGrams(row) : null),
    ),
  ];
  return [
    ["Share of the base", null, ...SHARES],
    ["Ingredient (g)", "Base", "with apple", "with mango", "with banana"],
    ...BASE.map((name, index) => [name, baseGrams(3 + index), ...share(3 + index)]),
    ...["Apple", "Mango", "Banana"].map((name, index) => addition(name, 7 + index)),
    [
      ...["Total", at("B10", formula("SUM(B3:B6)", 1400))],
      ...COLUMNS.map((column, index) => {
        const grams = 1400 * SHARES[index]! + additionGrams(7 + index);
        return at(`${column}10`, formula(`SUM(${column}3:${column}9)`, grams));
      }),
    ],
  ];
};

const variationCase = (
  rule: string,
  what: string,
  others: Cells,
  ...cells: string[]
): RuleCase => ({
  ...{ rule, what, cells, rows: variations(others) },
});

/** Per cent above grams for one batch of 2000 g; the sum of the grams is made by a formula of its own. */
const percentOverGrams = (sum: string): Rows => [
  ["One batch (g)", 2000],
  ["Mix", "in", "Water", "Sucrose", "Lemon juice", "Sum"],
  ["Sour", "%", 70, 20, 10, formula("SUM(C3:E3)", 100)],
  [
    ...[null, "g", formula("C3/100*$B$1", 1400), formula("D3/100*$B$1", 400)],
    ...[formula("E3/100*$B$1", 200), formula(sum, sum.endsWith("E4)") ? 2000 : 1800)],
  ],
];

/** A mix, and its topping in the same columns. */
const twoLists: Rows = [
  ["Ingredient", "Grams"],
  ["water", 700],
  ["sucrose", 200],
  [],
  ["Freezing point (°C)", -1.9],
  [],
  ["On top", "Grams"],
  ["glucose", 30],
  ["cream 35 % fat", 60],
];

/** True and false examples in columns that are filled in part, and sums that end where their numbers do. */
export const variationCases: readonly RuleCase[] = [
  variationCase(
    "formula-overwritten",
    "additions typed where the column's formula would read a blank",
    {},
  ),
  variationCase(
    "formula-overwritten",
    "a number among the formulas of a column that is blank below",
    { D4: 280 },
    "D4",
  ),
  variationCase("inconsistent-formula", "a sum that ends where its column is blank", {}),
  variationCase(
    "inconsistent-formula",
    "a sum of what a filter shows among sums of the same column's numbers",
    { B10: formula("SUBTOTAL(109,B3:B6)", 1400) },
  ),
  variationCase(
    "total-incomplete",
    "a sum that leaves a number out which those beside it count",
    { B10: formula("SUM(B3:B5)", 1200) },
    "B10",
  ),
  variationCase(
    "inconsistent-formula",
    "another formula in a column that is blank below",
    { C5: formula("B4*C$1", 240) },
    "C5",
  ),
  variationCase(
    "reference-slips",
    "a factor fixed in one row only of a column that is blank below",
    { E4: formula("B4*$E$1", 320) },
    "E4",
  ),
  variationCase("reference-slips", "factors fixed alike", {}),
  {
    rule: "total-incomplete",
    what: "the sum of grams below the sum of their percentages",
    rows: percentOverGrams("SUM(C4:E4)"),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a sum of grams below percentages that leaves one out",
    rows: percentOverGrams("SUM(C4:D4)"),
    cells: ["F4"],
  },
  {
    rule: "hidden-amount",
    what: "one hidden column with the amounts of a mix and of its topping",
    rows: twoLists,
    cells: ["B2:B9"],
    extras: { hiddenColumns: new Set([1]) },
  },
  {
    rule: "hidden-amount",
    what: "the column beside them",
    rows: twoLists,
    cells: [],
    extras: { hiddenColumns: new Set([2]) },
  },
];
