import { auditContext } from "../../src/audit/context";
import { columnName } from "../../src/workbook/address";
import { bookOf, type Rows } from "./bookOf";

const NAMES = ["water", "sucrose", "lemon juice"];
const GRAMS = [700, 200, 100];

/** A list with the same numbers below each heading of them, initials, units, or nothing yet. */
const list = (headings: readonly string[], empty: readonly string[] = []): Rows => [
  headings,
  ...NAMES.map((name, at): Rows[number] => [
    name,
    ...headings.slice(1).map((heading) => {
      if (empty.includes(heading)) return null;
      if (heading === "Unit") return "g";
      return heading === "By" ? "ab" : (GRAMS[at] ?? 0);
    }),
  ]),
];

/** The columns whose amounts are taken for those of a recipe. */
const amountsOf = (rows: Rows): string[] =>
  auditContext(bookOf({ Sheet1: rows })).blocks.flatMap(({ recipes }) =>
    recipes.map(({ line }) => columnName(line)),
  );

test.each([
  [["Rohstoff", "Soll g"]],
  [["Ingredient", "Target (kg)", "By"]],
  [["Zutat", "Ziel g", "gewogen"]],
  [["Raw material", "Target", "Unit"]],
  [["Raw material", "By", "Target, g"]],
])("a target in grams is what to weigh in: %j", (headings) => {
  expect(amountsOf(list(headings))).toEqual([columnName(headings.findIndex(isTarget))]);
});
const isTarget = (heading: string): boolean => /^(soll|ziel|target)/i.test(heading);

test("what was weighed is still to be filled in", () => {
  expect(amountsOf(list(["Ingredient", "Target (g)", "Actual (g)"], ["Actual (g)"]))).toEqual([
    "B",
  ]);
});

test.each([
  [["Ingredient", "Target (g)", "Amount (g)"], ["C"]],
  [["Ingredient", "Target (g)", "Actual (g)"], ["C"]],
  [["Ingredient", "Target"], []],
  [["Ingredient", "Target °C"], []],
])("a target beside amounts, or in no mass, is none: %j", (headings, amounts) => {
  expect(amountsOf(list(headings))).toEqual(amounts);
});
