import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

const ICE: Rows = [["Zutat", "Menge (g)"], ["Wasser", 500], ["Zucker", 150], []];
const paid = (total: Rows[number][number], ...more: Rows): Rows => [
  ...ICE,
  ["Umlage", "€"],
  ["Markt", 12.15],
  ["Supermarkt", 14.1],
  ["Küche", 9.19],
  ...more,
  ["Gesamt", total],
];

/** What was paid beside a recipe: numbers that were typed, and their sum. */
describe("The sum of typed numbers that are no recipe", () => {
  test.each<Tried>([
    { what: "of all", sheets: { Eis: paid(formula("SUM(B6:B8)", 35.44)) }, found: [] },
    {
      what: "without the last",
      sheets: { Eis: paid(formula("SUM(B6:B7)", 26.25)) },
      found: ["total-incomplete Eis!B9"],
    },
    {
      what: "without the first",
      sheets: { Eis: paid(formula("SUM(B7:B8)", 23.29)) },
      found: ["total-incomplete Eis!B9"],
    },
    {
      what: "above a count that is none of it",
      sheets: { Eis: paid(formula("SUM(B6:B8)", 35.44), ["Anzahl Gäste", 12]) },
      found: [],
    },
    {
      what: "above what another sum reads",
      sheets: {
        Eis: [
          ...paid(formula("SUM(B6:B8)", 35.44), ["Strom", 3.2], ["Gas", 4.1]),
          ["Nebenkosten", formula("SUM(B9:B10)", 7.3)],
        ],
      },
      found: [],
    },
    { what: "typed", sheets: { Eis: paid(35.44) }, found: [] },
    {
      what: "typed wrongly",
      sheets: { Eis: paid(38.44) },
      found: ["total-incomplete Eis!B9"],
    },
    { what: "typed, far from the sum: another thing", sheets: { Eis: paid(4) }, found: [] },
  ])("$what", expectFound);
});

/** Points that each ice got, added up below. */
const points = (...sums: Rows[number]): Rows => [
  ["Platz", "Kirsche", "Mango", "Birne"],
  [1, 4, 4, 3],
  [2, 6, 2, 3],
  [3, 5, 2, 4],
  ["Summe", ...sums],
];

describe("A number typed beside sums over the same rows", () => {
  const [mango, pear] = [formula("SUM(C2:C4)", 8), formula("SUM(D2:D4)", 10)];
  const TYPED = "formula-overwritten Punkte!B5";
  test.each<Tried>([
    { what: "as they add up", sheets: { Punkte: points(15, mango, pear) }, found: [TYPED] },
    {
      what: "as they do not",
      sheets: { Punkte: points(17, mango, pear) },
      found: [TYPED, "total-incomplete Punkte!B5"],
    },
    { what: "far from their sum", sheets: { Punkte: points(1, mango, pear) }, found: [TYPED] },
    { what: "beside a single sum", sheets: { Punkte: points(17, mango) }, found: [] },
  ])("$what", expectFound);
});
