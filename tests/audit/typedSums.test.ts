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
    { what: "beside a single sum of recipes", sheets: { Punkte: points(17, mango) }, found: [] },
  ])("$what", expectFound);
});

/** What customers took, added up, and beside it a number about what they brought back. */
const round = (returned: number, heading = "Tubs returned"): Rows => [
  ...ICE,
  ["Customer", "Tubs taken", heading],
  ["Farm shop", 25, 1],
  ["Cinema", 29, 2],
  ["Campsite", 43, 2],
  ["Round in all", formula("SUM(B6:B8)", 97), returned],
];

describe("A number typed beside a single sum over the same rows", () => {
  test.each<Tried>([
    { what: "as they add up", sheets: { Round: round(5) }, found: [] },
    {
      what: "as they do not",
      sheets: { Round: round(5.5) },
      found: ["total-incomplete Round!C9"],
    },
    { what: "no more than one of them: an average", sheets: { Round: round(1.7) }, found: [] },
    { what: "without a heading", sheets: { Round: round(5.5, "") }, found: [] },
  ])("$what", expectFound);
});

/** What each place takes, and what is said of it all. */
const fees = (label: string, total: number, heading = "Fee (£)"): Rows => [
  ...ICE,
  ["Pitch", heading],
  ["Harbour market", 14.5],
  ["Lido steps", 25.5],
  ["Band night", 42.5],
  [label, total],
];

describe("A number typed below others that says what all of them are", () => {
  test.each<Tried>([
    { what: "as they add up", sheets: { Month: fees("Fees for the month", 82.5) }, found: [] },
    {
      what: "as they do not",
      sheets: { Month: fees("Fees for the month", 88.1) },
      found: ["total-incomplete Month!B9"],
    },
    {
      what: "in German",
      sheets: { Monat: fees("Gebühren im Monat", 88.1, "Gebühr (€)") },
      found: ["total-incomplete Monat!B9"],
    },
    { what: "of something else", sheets: { Month: fees("Rain for the month", 88.1) }, found: [] },
    { what: "what is planned", sheets: { Month: fees("Fee budget in all", 88.1) }, found: [] },
  ])("$what", expectFound);
});

describe("A number typed below others that says what a whole time comes to", () => {
  test.each<Tried>([
    { what: "as they add up", sheets: { Fair: fees("all season", 82.5) }, found: [] },
    {
      what: "as they do not",
      sheets: { Fair: fees("all season", 88.1) },
      found: ["total-incomplete Fair!B9"],
    },
    {
      what: "in German",
      sheets: { Markt: fees("das ganze Jahr", 88.1, "Gebühr (€)") },
      found: ["total-incomplete Markt!B9"],
    },
    { what: "one more time", sheets: { Fair: fees("next season", 88.1) }, found: [] },
    { what: "an average", sheets: { Fair: fees("all season, mean", 28) }, found: [] },
  ])("$what", expectFound);
});

/** Who works how long, added up below; the first section is called as if it were counted. */
const shifts = (sum: Rows[number][number], label = "Hours to pay", first = "Ices"): Rows => [
  ...ICE,
  ["Section", "Hours"],
  [first, 15.5],
  ["Plating", 14],
  ["Wash", 11],
  [label, sum],
];

describe("A sum that says its heading again, below names in the plural", () => {
  const short = formula("SUM(B7:B8)", 25);
  test.each<Tried>([
    { what: "of all", sheets: { Team: shifts(formula("SUM(B6:B8)", 40.5)) }, found: [] },
    {
      what: "without the first",
      sheets: { Team: shifts(short) },
      found: ["total-incomplete Team!B9"],
    },
    { what: "of something else", sheets: { Team: shifts(short, "Paid") }, found: [] },
    {
      what: "without a price above it",
      sheets: { Team: shifts(short, "Hours to pay", "Price (€)") },
      found: [],
    },
  ])("$what", expectFound);
});

/** Shares above which their sum is typed, beside that of the amounts. */
const shares = (sum: number, second = 20): Rows => [
  ["All of it", formula("SUM(B3:B5)", 1000), sum],
  ["Ingredient", "Amount (g)", "%"],
  ["Water", 700, formula("B3/$B$1*100", 70)],
  ["Sucrose", 200, formula("B4/$B$1*100", second)],
  ["Lemon juice", 100, formula("B5/$B$1*100", 10)],
];

describe("A number typed beside a list's total above shares that are worked out", () => {
  test.each<Tried>([
    { what: "100", sheets: { Mix: shares(100) }, found: [] },
    { what: "another", sheets: { Mix: shares(115) }, found: ["total-incomplete Mix!C1"] },
    { what: "of what are no shares of the whole", sheets: { Mix: shares(115, 80) }, found: [] },
  ])("$what", expectFound);
});
