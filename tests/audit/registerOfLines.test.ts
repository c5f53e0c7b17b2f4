import { auditContext } from "../../src/audit/context";
import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { bookOf, formula, type Rows } from "./bookOf";

// One sheet holds the lines of all recipes, another says of each what functions give for its lines.

const LISTS = [
  ["R-1", ["water", 600], ["sucrose", 160], ["lemon juice", 90]],
  ["R-2", ["whole milk", 700], ["sucrose", 120], ["honey", 40], ["cream 35%", 90]],
  ["R-3", ["water", 500], ["dextrose monohydrate", 150]],
  ["R-4", ["apple puree", 500], ["water", 200], ["sucrose", 140]],
  ["R-5", ["water", 480], ["sucrose", 150], ["lime juice", 60]],
] as const;

type Line = readonly [string, number];

/** First and last row, counted from 1, of each list. */
const spans = LISTS.map(([, ...lines], at) => {
  const first = LISTS.slice(0, at).reduce((row, list) => row + list.length - 1, 2);
  return [first, first + lines.length - 1] as const;
});

const linesUnder = (heading: string): Rows => [
  ["Case", "As on spec", heading],
  ...LISTS.flatMap(([code, ...lines]) =>
    (lines as readonly Line[]).map(([name, grams]) => [code, name, grams]),
  ),
];

const register = (sums: (at: number) => string): Rows => [
  ["Case", "Weighs (g)", "Freezing point (°C)", "Water / g", "Ethanol / g"],
  ...LISTS.map(([code, ...lines], at) => {
    const [first, last] = spans[at]!;
    const call = `Lines!B${first}:B${last},Lines!C${first}:C${last}`;
    const sum = (lines as readonly Line[]).reduce((all, [, grams]) => all + grams, 0);
    return [
      ...[code, formula(sums(at), sum), formula(`RIME.FREEZINGPOINT(${call})`, -2)],
      ...[formula(`RIME.COMPONENT(${call},"water")`, 400), 0],
    ];
  }),
];

const sumOf = (at: number) => `SUM(Lines!C${spans[at]![0]}:C${spans[at]![1]})`;
const bookWith = (heading: string) =>
  bookOf({ Register: register(sumOf), Lines: linesUnder(heading) });

test.each(["Batch / g", "Batch (g)", "Trial"])(
  "lines headed “%s” are as many recipes as functions are given, each with its own lines",
  (heading) => {
    const { blocks } = auditContext(bookWith(heading), []);
    const found = blocks.map(
      ({ sheet, names }) => `${sheet.name} ${names.map(({ row }) => row + 1).join(" ")}`,
    );
    const wanted = spans.map(
      ([first, last]) =>
        `Lines ${Array.from({ length: last - first + 1 }, (_, at) => first + at).join(" ")}`,
    );
    expect(found).toEqual(wanted);
  },
);

test("formulas that each read as many rows as their recipe has are no strangers to each other", () => {
  const rules = auditWorkbook(bookWith("Batch / g")).findings.map(({ rule }) => rule);
  expect(rules).not.toContain("inconsistent-formula");
});

test("what lies in a freezer, counted, is no recipe; a list with a unit, or few strange names, is", () => {
  const freezer = (first: string, heading: string): Rows => [
    ["What is in", heading],
    [first, 6],
    ["Ice", 6],
    ["Soup", 9],
    ["Milk", 6],
  ];
  const recipesIn = (rows: Rows) => auditContext(bookOf({ Sheet1: rows }), []).blocks.length;
  expect([
    recipesIn(freezer("Beans", "Tins")),
    recipesIn(freezer("Beans", "Amount (g)")),
    recipesIn(freezer("Water", "Tins")),
  ]).toEqual([0, 1, 1]);
});

/** What is told of the register when a number is typed into one of its cells. */
const toldWith = (row: number, column: number, typed: number) => {
  const rows = register(sumOf).map((cells, at) =>
    cells.map((cell, place) => (at === row && place === column ? typed : cell)),
  );
  const { findings } = auditWorkbook(bookOf({ Register: rows, Lines: linesUnder("Batch / g") }));
  return findings.filter(({ rule }) => /overwritten|water-not/.test(rule));
};

test("a number among sums that read one list after the other is told, with what it should read", () => {
  const [found, ...more] = toldWith(3, 1, 650);
  expect(more).toEqual([]);
  expect([found?.rule, found?.cell]).toEqual(["formula-overwritten", "B4"]);
  expect(found?.fix).toContain("SUM(Lines!C9:C10)");
  expect(toldWith(3, 4, 12)).toEqual([]);
});

test("the water poured in, typed below “Water / g” among formulas, is told as such", () => {
  const told = toldWith(4, 3, 200).map(({ rule, cell }) => `${rule} ${cell}`);
  expect(told).toEqual(["water-not-counted D5"]);
});

/** Lines of two recipes, and below them a table with a row for each. */
const exported = (rowTitle: string): Rows => [
  ["Recipe", "Ingredient", "Amount (g)"],
  ["Lemon", "water", 600],
  ["Lemon", "sucrose", 160],
  ["Lemon", "lemon juice", 90],
  ["Milk", "whole milk", 700],
  ["Milk", "sucrose", 120],
  [],
  ["Recipe", "Freezing point (°C)", "Water (g)", "Sugar (g)", "Alcohol (g)"],
  ["Lemon", -1.9, 683, 163, 0],
  [rowTitle, -1.6, 613, 153, 0],
];

test("what is said below of recipes by their titles is no recipe in rows, unless it has a title of its own", () => {
  const layouts = (rowTitle: string) =>
    auditContext(bookOf({ Sheet1: exported(rowTitle) }), []).blocks.map(({ layout }) => layout);
  expect(layouts("Milk")).toEqual(["down", "down"]);
  expect(layouts("Cola")).toContain("across");
});
