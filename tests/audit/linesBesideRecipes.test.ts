import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";
import { expectFound, rulesOn } from "./tried";
import type { ShortCell } from "../../src/workbook/sheetFromRows";

const GRAMS = [600, 200, 120, 80];
const COLUMNS = ["B", "C", "D", "E"];

/** A recipe laid on its side, with the share of each below it; one of them may be something else. */
const onItsSide = (at = -1, other: ShortCell = null, grams: readonly ShortCell[] = GRAMS): Rows => [
  ["Ingredient", "water", "sucrose", "lemon juice", "fructose", "TOTAL"],
  ["Grams", ...grams, formula("SUM(B2:E2)", 1000)],
  [
    "% of total",
    ...COLUMNS.map((column, each) =>
      each === at ? other : formula(`100*${column}2/$F$2`, GRAMS[each]! / 10),
    ),
    formula("SUM(B3:E3)", 100),
  ],
];

test("shares below a recipe on its side are one line", () => {
  expectFound({ what: "", sheets: { A: onItsSide() }, found: [] });
  const typed = { A: onItsSide(2, 12) };
  expectFound({ what: "a number", sheets: typed, found: ["formula-overwritten A!D3"] });
  const slipped = { A: onItsSide(2, formula("100*D2/F2", 12)) };
  expectFound({ what: "no $", sheets: slipped, found: ["reference-slips A!D3"] });
});

test("an amount that is an error leaves the recipe a recipe", () => {
  const rows = onItsSide(-1, null, [600, 200, 120, { value: { error: "#VALUE!" } }]);
  expect(rulesOn({ A: rows })).toContain("error-in-an-amount");
});

/** Four tubs and the scoops in each, below one setting that stands above their heading. */
const scoops = (third: ShortCell): Rows => [
  ["A scoop weighs g", 50],
  ["Tub g", "Scoops in it"],
  ...[900, 800, 700, 600].map((grams, at) => [
    grams,
    at === 2 ? third : formula(`A${at + 3}/$B$1`, grams / 50),
  ]),
];

test("a number above the heading of a column leaves the column a line", () => {
  expect(rulesOn({ A: scoops(formula("A5/$B$1", 14)) })).not.toContain("formula-overwritten");
  expect(rulesOn({ A: scoops(14) })).toContain("formula-overwritten");
});

/** Two recipes in columns under a title that may say their unit, and a share elsewhere on the sheet. */
const titled = (title: string): Rows => [
  [null, null, title],
  ["In the bowl", "sugars in 100 g (g)", "as it was", "less sweet"],
  ["water", 0, 600, 650],
  ["sucrose", 100, 200, 150],
  ["lemon juice", 2, 80, 80],
  [],
  ["Sugars in all of it (%)", null, 22.9, 17.2],
];

test.each([
  ["grams I weighed", false],
  ["Gramm für einen Topf", false],
  ["what I weighed", true],
])("%p over the titles of recipes leaves their unit open: %p", (title, isOpen) => {
  const { blocks } = auditContext(bookOf({ A: titled(title) }), []);
  expect(blocks[0]?.recipes.map(({ unitAssumed }) => unitAssumed)).toEqual([isOpen, isOpen]);
  expect(rulesOn({ A: titled(title) }).includes("input-without-unit")).toBe(isOpen);
});
