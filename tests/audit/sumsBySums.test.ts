import { formula, type Rows } from "./bookOf";
import { expectFound, rulesOn, type Tried } from "./tried";

const MILK: readonly (readonly [name: string, grams: number])[] = [
  ["whole milk", 571],
  ["cream 35 % fat", 193],
  ["sugar", 145],
  ["dextrose monohydrate", 30],
];

/** A list with a column of what the bowl weighs after each line. */
function weighedUp(running: (row: number, sofar: number) => Rows[number][number]): Rows {
  let sofar = 0;
  return [
    ["Step", "Into the bowl", "Weight, g", "Bowl, g"],
    ...MILK.map(([name, grams], at): Rows[number] => {
      sofar += grams;
      return [`${at + 1}.`, name, grams, running(at + 2, sofar)];
    }),
    [null, "Total", formula("SUM(C2:C5)", 939)],
    [null, "Contains milk."],
  ];
}

describe("A column of what has been added so far", () => {
  test.each<Tried>([
    {
      what: "by sums that begin at the top",
      sheets: { Ice: weighedUp((row, sofar) => formula(`SUM($C$2:C${row})`, sofar)) },
      found: [],
    },
    {
      what: "by adding to the line above",
      sheets: {
        Ice: weighedUp((row, sofar) => formula(row === 2 ? "C2" : `D${row - 1}+C${row}`, sofar)),
      },
      found: [],
    },
    { what: "typed", sheets: { Ice: weighedUp((_, sofar) => sofar) }, found: [] },
    {
      what: "with a name that nobody knows in the last line",
      sheets: {
        Ice: [
          ["Into the bowl", "Weight, g", "Bowl, g"],
          ["orange juice", 373, formula("SUM($B$2:B2)", 373)],
          ["sugar", 50, formula("SUM($B$2:B3)", 423)],
          ["House blend B", 31, formula("SUM($B$2:B4)", 454)],
          ["Total", formula("SUM(B2:B4)", 454)],
        ],
      },
      found: ["unknown-ingredient Ice!A4"],
    },
  ])("$what", expectFound);

  test("a second recipe beside the first is one all the same", () => {
    // 60 g of lactose monohydrate in 100 g of water, where 19 g dissolve at 20 °C.
    const sheets = {
      Ice: [
        ["Ingredient", "Mild (g)", "Rich (g)"],
        ["water", 500, 500],
        ["sugar", 100, 600],
        ["lactose monohydrate", 5, 300],
      ] satisfies Rows,
    };
    expect(rulesOn(sheets)).toContain("more-than-dissolves");
  });
});

const recipe: Rows = [
  ["Ingredient", "g"],
  ["water", 500],
  ["sugar", 120],
];
const week = (corner: Rows[number][number], last: Rows[number][number]): Rows => [
  ["Day", "Lime", "Cocoa", "Berry", "That day"],
  ...["Mon", "Tue", "Wed"].map((day, at): Rows[number] => [
    day,
    ...[1, 2, 3],
    formula(`SUM(B${at + 2}:D${at + 2})`, 6),
  ]),
  [
    "This week",
    ...["B", "C", "D"].map((column, at) => formula(`SUM(${column}2:${column}4)`, 3 * at + 3)),
    corner,
  ],
  ["Mix (kg)", 7.5, 15, 22.5, last],
];

describe("A row of sums that crosses a column of sums", () => {
  test.each<Tried>([
    {
      what: "goes on with the row",
      sheets: { Recipe: recipe, Plan: week(formula("SUM(E2:E4)", 18), formula("SUM(B6:D6)", 45)) },
      found: [],
    },
    {
      what: "goes on with the column",
      sheets: { Recipe: recipe, Plan: week(formula("SUM(B5:D5)", 18), formula("SUM(B6:D6)", 45)) },
      found: [],
    },
    {
      what: "goes on with neither",
      sheets: { Recipe: recipe, Plan: week(formula("SUM(E2:E3)", 12), formula("SUM(B6:D6)", 45)) },
      found: ["total-incomplete Plan!E5"],
    },
  ])("$what", expectFound);
});
