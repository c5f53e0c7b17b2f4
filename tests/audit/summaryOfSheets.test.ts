import { formula, type Rows } from "./bookOf";
import { findingsOf, of } from "./findingsOf";

const SORTS = ["Orange", "Birne", "Kirsche", "Mango"];

const recipe: Rows = [
  ["Zutat", "Menge (g)"],
  ["Wasser", 500],
  ["Zucker", 150],
  ["Zitronensaft", 20],
];

/** A row for each sheet; the share in the second row is worked out with the given cell. */
const summary = (cell: string): Readonly<Record<string, Rows>> => ({
  Sheet1: [
    ["Theke bei (°C)", -12],
    [],
    ["Sorte", "gefroren (% des Wassers)"],
    ...SORTS.map((name, at) => {
      const last = 4 - (at % 2);
      const read = `'${name}'!$A$2:$A$${last},'${name}'!$B$2:$B$${last}`;
      return [name, formula(`100*RIME.ICEFRACTION(${read},${at === 1 ? cell : "$B$1"})`, 70)];
    }),
  ],
  ...Object.fromEntries(SORTS.map((name) => [name, recipe])),
});

const slips = (cell: string) =>
  of(findingsOf(summary(cell)), "reference-slips").map((found) => [found.cell, found.edits]);

test("a summary of sheets shows a reference that has slipped, whatever each sheet is called", () => {
  const [[cell, edits] = []] = slips("B2");
  expect(cell).toBe("B5");
  expect(JSON.stringify(edits)).toContain("'Birne'!$B$2:$B$3,$B$1)");
});

test("it shows one that reads the same cell for now", () => {
  expect(slips("B1").map(([cell]) => cell)).toEqual(["B5"]);
});

test("it shows a formula unlike the others", () => {
  const found = of(findingsOf(summary("$B$1+2")), "inconsistent-formula");
  expect(found.map(({ cell }) => cell)).toEqual(["B5"]);
  expect(of(findingsOf(summary("$B$1")), "inconsistent-formula")).toEqual([]);
});

test("it is silent where all rows are alike", () => {
  expect(slips("$B$1")).toEqual([]);
});

/** Kilograms of each sort by the tanks of it; the third as given. */
const week = (third: ReturnType<typeof formula> | number): Readonly<Record<string, Rows>> => ({
  Sheet1: [
    ["Sorte", "Wannen", "kg"],
    ...SORTS.map((name, at) => [
      name,
      at + 1,
      at === 2 ? third : formula(`B${2 + at}*${name}!B${5 + (at % 2)}/1000`, 0.67 * (at + 1)),
    ]),
    ["Alle", formula("SUM(B2:B5)", 10), formula("SUM(C2:C5)", 6.7)],
  ],
  ...Object.fromEntries(
    SORTS.map((name, at) => {
      const sum = ["Summe", formula("SUM(B2:B4)", 670)];
      return [name, at % 2 === 0 ? [...recipe, sum] : [...recipe, [], sum]];
    }),
  ),
});

test.each([
  [2.01, ["C4"]],
  [formula("B4*Kirsche!B5/1000", 2.01), []],
])("a number typed where each row reads its own sheet: %j", (third, cells) => {
  const found = of(findingsOf(week(third)), "formula-overwritten");
  expect(found.map(({ cell }) => cell)).toEqual(cells);
});
