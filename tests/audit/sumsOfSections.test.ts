import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

/** A mix weighed in sections, what each weighs, and under an own word what all of them do. */
const prep = (name: string, sum: string, ...more: Rows): Rows => [
  [`PREP ${name}`],
  ["item", "weight", "unit"],
  ["LIQUIDS"],
  ["water", 600, "g"],
  ["lemon juice", 100, "g"],
  ["subtotal", formula("SUM(B4:B5)", 700)],
  ["DRY"],
  ["sucrose", 150, "g"],
  ["dextrose monohydrate", 50, "g"],
  ["subtotal", formula("SUM(B8:B9)", 200)],
  ["IN THE BEAKER", formula(sum, 900)],
  ...more,
];

const book = (point: number, sum = "B6+B10", ...more: Rows): Tried["sheets"] => ({
  P1: prep("Lemon ice", sum, ...more),
  P2: prep("Sour ice", "B6+B10"),
  Board: [
    ["mix", "beaker, g", "freezes °C"],
    ["Lemon ice", formula("'P1'!B11", 900), point],
    ["Sour ice", formula("'P2'!B11", 900), -2.1],
  ],
});

describe("What the sums of sections add up to is the total of the mix", () => {
  test.each<Tried>([
    { what: "and a board that reads it tells of the mix", sheets: book(-2.1), found: [] },
    {
      what: "so that its answers can be wrong",
      sheets: book(-4.4),
      found: ["result-differs Board!C2"],
    },
    {
      what: "or without their sign",
      sheets: book(2.1),
      found: ["freezing-point-sign Board!C2"],
    },
    {
      what: "as a SUM of cells, too",
      sheets: book(-4.4, "SUM(B6,B10)"),
      found: ["result-differs Board!C2"],
    },
    {
      what: "and counted once more it is too much",
      sheets: book(-2.1, "B6+B10", ["Grand total", formula("SUM(B4:B11)", 2700)]),
      found: ["total-incomplete P1!B12"],
    },
  ])("$what", expectFound);
});

const days = (shifts: readonly string[], third: string): Rows => [
  ["Ingredient", "Grams"],
  ["water", 500],
  ["sucrose", 120],
  [],
  ["Day", "Shift", "Cups out", "Cups back", "Sold"],
  ...["Thu", "Fri", "Sat", "Sun"].map((day, at): Rows[number] => [
    ...[day, shifts[at]!, [241, 216, 194, 290][at]!, 5 + at],
    formula(at === 2 ? third : `C${6 + at}-D${6 + at}`, 200),
  ]),
  ["Weekend", null, ...["C", "D", "E"].map((each) => formula(`SUM(${each}6:${each}9)`, 941))],
];

describe("A word for all in a line that a sum counts makes no total of it", () => {
  test.each<Tried>([
    {
      what: "whoever works",
      sheets: { Ice: days(["Jo", "Mo", "Jo", "all"], "C8-D8") },
      found: [],
    },
    {
      what: "and its formula is one of its column",
      sheets: { Ice: days(["Jo", "Mo", "all", "Jo"], "C7-D8") },
      found: ["inconsistent-formula Ice!E8"],
    },
    {
      what: "nor do all lines have a name by it",
      sheets: { Ice: days(["all", "all", "all", "all"], "C7-D8") },
      found: ["inconsistent-formula Ice!E8"],
    },
  ])("$what", expectFound);
});

test("the sum of a section that leaves out what a filter hides is right", () => {
  const section = (sum: string, value: number): Tried["sheets"] => ({
    Ice: [
      ["Ingredient", "Grams"],
      ["water", 600],
      ["lemon juice", 100],
      ["subtotal", formula("SUM(B2:B3)", 700)],
      ["sucrose", 150],
      ["dextrose monohydrate", 50],
      ["fructose", 20],
      ["subtotal", formula(sum, value)],
      ["Total", formula("B4+B8", 700 + value)],
    ],
  });
  const extras = { Ice: { hiddenRows: new Set([5]) } };
  const tried = (sum: string, value: number, found: readonly string[]) => {
    expectFound({ what: "", sheets: section(sum, value), extras, found });
  };
  tried("SUBTOTAL(109,B5:B7)", 170, ["hidden-amount Ice!B6"]);
  tried("SUBTOTAL(109,B5:B7)", 220, ["hidden-amount Ice!B6"]);
});
