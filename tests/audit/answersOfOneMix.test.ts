import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

// 500 g of water, 150 g of sucrose and 50 g of fructose: by addition 200 g are dissolved in 700 g of mix.
const PER_TABLE: readonly (readonly [name: string, grams: number])[] = [
  ["Water", 500],
  ["Sucrose", 150],
  ["Fructose", 50],
];

/** A list for one table and, left of that, for all of three tables; with lines below. */
const shoppingFirst = (...lines: Rows): Record<string, Rows> => ({
  Ice: [
    ["Tables", 3],
    ["Ingredient", "Shopping for all (g)", "Per table (g)"],
    ...PER_TABLE.map(([name, grams], at): Rows[number] => [
      name,
      formula(`C${at + 3}*$B$1`, 3 * grams),
      grams,
    ]),
    [null],
    ...lines,
  ],
});

/** A list whose shares stand between the names and the amounts; a kind and a name may be the same word. */
const sharesFirst = (...lines: Rows): Record<string, Rows> => ({
  Ice: [
    ["Kind", "Ingredient", "Share (%)", "Amount (g)"],
    ["Liquid", "Water", formula("D2/SUM($D$2:$D$4)*100", 71.43), 500],
    ["Sugar", "Sugar", formula("D3/SUM($D$2:$D$4)*100", 21.43), 150],
    ["Sugar", "Fructose", formula("D4/SUM($D$2:$D$4)*100", 7.14), 50],
    [null],
    ...lines,
  ],
});

describe("What is said once of a list that is one mix is of the mix, whichever column stands first", () => {
  test.each<Tried>([
    {
      what: "typed, of the amounts that are typed",
      sheets: shoppingFirst(["Dissolved solids (g)", 200]),
      found: [],
    },
    {
      what: "typed and wrong",
      sheets: shoppingFirst(["Dissolved solids (g)", 260]),
      found: ["result-differs Ice!B7"],
    },
    {
      what: "of the amounts that its formula reads",
      sheets: shoppingFirst([
        "Water in all of it (g)",
        formula('RIME.COMPONENT(A3:A5,B3:B5,"water")', 1500),
      ]),
      found: [],
    },
    {
      what: "one for each column",
      sheets: shoppingFirst(["Dissolved solids (g)", 600, 200]),
      found: [],
    },
    {
      what: "one for each column, one of them wrong",
      sheets: shoppingFirst(["Dissolved solids (g)", 200, 200]),
      found: ["result-differs Ice!B7"],
    },
    {
      what: "shares between names and amounts are no answers",
      sheets: sharesFirst([null, "Freezing point (°C)", null, -1.66]),
      found: ["result-differs Ice!D6"],
    },
  ])("$what", expectFound);
});
