import type { ShortCell } from "../../src/workbook/sheetFromRows";
import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

const WEIGHTS = [2000, 1500, 800, 1200];
const LETTERS = ["B", "C", "D", "E"];
const TABLE: Rows = [
  ["Flavour", "Lemon", "Orange", "Lime", "Cherry"],
  ["Water (g)", ...WEIGHTS.map((weight) => 0.7 * weight)],
  ["Sugar (g)", ...WEIGHTS.map((weight) => 0.3 * weight)],
  [
    "Weighs (g)",
    ...WEIGHTS.map((weight, at) => formula(`SUM(${LETTERS[at]}2:${LETTERS[at]}3)`, weight)),
  ],
];

/** Portions of each flavour of a table, one below the other; the third cell as given. */
const summary = (third: ShortCell): Rows => [
  ["Portion (g)", 80],
  ["Flavour", "Bowls", "Portions"],
  ...WEIGHTS.map((weight, at) => [
    ["Lemon", "Orange", "Lime", "Cherry"][at]!,
    4,
    at === 2 ? third : formula(`B${at + 3}*Table!${LETTERS[at]}4/$B$1`, weight / 20),
  ]),
  ["All", formula("SUM(B3:B6)", 16), formula("SUM(C3:C6)", 275)],
];

const tried = (what: string, third: ShortCell, ...found: string[]): Tried => ({
  ...{ what, found, sheets: { Table: TABLE, Overview: summary(third) } },
});

describe("Rows of what stands in the columns of another table", () => {
  test.each<Tried>([
    tried("follow one formula", formula("B5*Table!D4/$B$1", 40)),
    tried(
      "read another column",
      formula("B5*Table!C4/$B$1", 75),
      "inconsistent-formula Overview!C5",
    ),
    tried("have lost a $", formula("B5*Table!D4/B3", 800), "reference-slips Overview!C5"),
    tried("have a number among them", 40, "formula-overwritten Overview!C5"),
  ])("$what", expectFound);

  test("may stand on its own sheet", () => {
    const share = (row: number, letter: string) => formula(`A${row}*${letter}4`, 1);
    const below = (third: ShortCell): Rows => [
      ...TABLE,
      [],
      ["Bowls", "Goes out (g)"],
      ...[5, 2, 5, 1].map((part, at): Rows[number] => [
        part,
        at === 2 ? third : share(at + 7, LETTERS[at]!),
      ]),
    ];
    const what = "";
    expectFound({ what, sheets: { Table: below(share(9, "D")) }, found: [] });
    const found = ["inconsistent-formula Table!B9"];
    expectFound({ what, sheets: { Table: below(share(9, "C")) }, found });
  });
});
