import { auditContext } from "../../src/audit/context";
import { unitText } from "../../src/audit/recipes/amounts/unit";
import { bookOf, formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

const ITEMS = ["water", "sucrose", "lemon juice"] as const;
const KILOS = [3.9, 1, 0.5] as const;

const recipesOf = (rows: Rows) =>
  auditContext(bookOf({ Mix: rows }), []).blocks.flatMap(({ recipes }) =>
    recipes.map(({ line, unit, unitAssumed }) => [
      line,
      `${unitText(unit)}${unitAssumed ? "?" : ""}`,
    ]),
  );

/** What is issued, its unit beside it, and what a portion is worked out to be. */
const issued = (portion: (row: number) => string, units = "Unit"): Rows => [
  ["Item", "Issue", units, "Per portion (g)", null, "Portions", 90],
  ...ITEMS.map((item, at): Rows[number] => [
    ...[item, KILOS[at]!, units === "Unit" ? "kg" : "dry store"],
    formula(portion(at + 2), (KILOS[at]! * 1000) / 90),
  ]),
  [],
  ["Total water", 4300, "g"],
];

test("what portions are worked out of is the recipe, by the unit beside it", () => {
  const rows = issued((row) => `B${row}*1000/$G$1`);
  expect(recipesOf(rows).map(([line]) => line)).toEqual([1, 3]);
  expect(placesOf(findingsOf(rows)).filter((place) => place.includes("result"))).toEqual([]);
});

test("a number before a word that is no unit, or that nothing is worked out of, is none", () => {
  expect(recipesOf(issued((row) => `B${row}*1000/$G$1`, "Where")).map(([line]) => line)).toEqual([
    3,
  ]);
  expect(recipesOf(issued(() => "43*3")).map(([line]) => line)).toEqual([3]);
});

/** One mix in a row, and below it what it takes of it today. */
const today = (label: string, unit: string, today_: (letter: string) => string): Rows => [
  ["Lemon ice", "mixes", 4],
  [null, null, ...ITEMS],
  [null, label, ...KILOS],
  [
    ...[null, `today (${unit})`],
    ...["C", "D", "E"].map((letter, at) =>
      formula(today_(letter), KILOS[at]! * (unit === "kg" ? 4 : 1000)),
    ),
  ],
];

test("amounts without a unit have that of what is worked out from them, and are told", () => {
  const rows = today("Amount", "kg", (letter) => `${letter}3*$C$1`);
  expect(recipesOf(rows)).toEqual([
    [2, "kg?"],
    [3, "kg"],
  ]);
  const [told, ...more] = findingsOf(rows).filter(({ rule }) => rule === "input-without-unit");
  expect(told?.cell).toBe("B3");
  expect(told?.message).toMatch(/taken for kg, as what is worked out from them/);
  expect(more).toEqual([]);
});

test("what is turned into another unit says nothing of theirs", () => {
  const rows = today("Amount", "g", (letter) => `${letter}3*1000`);
  expect(recipesOf(rows)[0]).toEqual([2, "g?"]);
});

test("a unit that is written goes before that of what is worked out", () => {
  const rows = today("one mix (g)", "kg", (letter) => `${letter}3*$C$1`);
  expect(recipesOf(rows)[0]).toEqual([2, "g"]);
});

/** A number that formulas multiply kilograms by; one of them has slipped into the row of names. */
const slipped = (first: string, label: string): Rows => [
  ["Lemon ice", label, 4],
  [null, null, ...ITEMS],
  [null, "one mix (kg)", ...KILOS],
  [
    ...[null, "today (kg)", formula(first, { error: "#VALUE!" })],
    ...["D", "E"].map((letter, at) => formula(`${letter}3*$C$1`, KILOS[at + 1]! * 4)),
  ],
];

test("a formula that slipped makes no mass of what the others count", () => {
  const places = placesOf(findingsOf(slipped("C2*$C$1", "mixes today")));
  expect(places).not.toContain("C1 input-without-unit");
  expect(placesOf(findingsOf(slipped("C3*$C$1", "batch size")))).toContain("C1 input-without-unit");
});

/** Two sorts side by side, what both need of each, and what is in the cellar of it. */
const weekend = (
  corner: string,
  need: string,
  sum = (row: number) => `SUM(B${row}:C${row})`,
): Rows => [
  [corner, "Lemon ice", "Sweet ice", null, need, "left (kg)"],
  ...ITEMS.map((item, at): Rows[number] => {
    const amount = KILOS[at]!;
    const row = at + 2;
    return [
      ...[item, amount, amount + 0.5, null, formula(sum(row), 2 * amount + 0.5)],
      formula(`9-E${row}`, 8.5 - 2 * amount),
    ];
  }),
];

test("sorts that are added up line by line are recipes, and in the unit of what they come to", () => {
  expect(recipesOf(weekend("Item", "Needed (kg)"))).toEqual([
    [1, "kg?"],
    [2, "kg?"],
    [4, "kg"],
  ]);
  expect(recipesOf(weekend("Item, kg", "Needed (kg)"))).toEqual([
    [1, "kg"],
    [2, "kg"],
    [4, "kg"],
  ]);
});

test("of what is worked out otherwise the columns beside are no recipes", () => {
  const rows = weekend("Item", "Needed (kg)", (row) => `B${row}*2+0.5`);
  expect(recipesOf(rows).map(([line]) => line)).not.toContain(2);
});
