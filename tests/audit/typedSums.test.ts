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
