import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

const TWO: Rows = [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
];
const PRICES: Rows = [
  ["Item", "EUR/kg"],
  ["Water", 0.01],
  ["Sucrose", 1.2],
];
const priced = (text: string): Rows => [
  ["Ingredient", "Amount (g)", "Cost (EUR)"],
  ["Water", 500, formula(text.replaceAll("#", "2"), 0.005)],
  ["Sucrose", 150, formula(text.replaceAll("#", "3"), 0.18)],
];
const HIDDEN = { hidden: true };

describe("A hidden sheet of prices that feeds a cost", () => {
  test.each<Tried>([
    {
      what: "by INDEX and MATCH",
      sheets: {
        Prices: PRICES,
        Ice: priced("B#*INDEX(Prices!B2:B3,MATCH(A#,Prices!A2:A3,0))/1000"),
      },
      extras: { Prices: HIDDEN },
      found: ["hidden-amount Prices!B2:B3"],
    },
    {
      what: "by whole columns",
      sheets: { Prices: PRICES, Ice: priced("B#*VLOOKUP(A#,Prices!A:B,2,FALSE)/1000") },
      extras: { Prices: HIDDEN },
      found: ["hidden-amount Prices!A1:B3"],
    },
    {
      what: "with an apostrophe in its name",
      sheets: {
        "Kim's prices": PRICES,
        Ice: priced("B#*VLOOKUP(A#,'Kim''s prices'!$A$2:$B$3,2,FALSE)/1000"),
      },
      extras: { "Kim's prices": HIDDEN },
      found: ["hidden-amount Kim's prices!A2:B3"],
    },
    {
      what: "by a name for its cells",
      sheets: { Prices: PRICES, Ice: priced("B#*VLOOKUP(A#,PriceList,2,FALSE)/1000") },
      extras: { Prices: HIDDEN },
      workbook: { names: [{ name: "PriceList", refersTo: "Prices!$A$2:$B$3", sheet: null }] },
      found: ["hidden-amount Prices!A2:B3"],
    },
    {
      what: "by its table",
      sheets: { Prices: PRICES, Ice: priced("B#*VLOOKUP(A#,Store,2,FALSE)/1000") },
      extras: {
        Prices: {
          hidden: true,
          tables: [
            {
              ...{ name: "Store", range: { top: 0, left: 0, bottom: 2, right: 1 } },
              ...{ columns: ["Item", "EUR/kg"], hasTotals: false },
            },
          ],
        },
      },
      found: ["hidden-amount Prices!A2:B3"],
    },
    {
      what: "only on paper: a note names it",
      sheets: {
        Prices: PRICES,
        Ice: [...TWO, [null], [formula('"See Prices!A2:B3"', "See Prices!A2:B3")]],
      },
      extras: { Prices: HIDDEN },
      found: [],
    },
    {
      what: "that is shown",
      sheets: { Prices: PRICES, Ice: priced("B#*VLOOKUP(A#,Prices!A:B,2,FALSE)/1000") },
      found: [],
    },
  ])("$what", expectFound);
});
