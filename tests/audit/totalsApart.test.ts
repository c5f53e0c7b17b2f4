import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

const LIST: Rows = [
  ["In the bowl", "Poured (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Lemon juice", 60],
  ["Fructose", 40],
];
const below = (...more: Rows): Rows => [...LIST, [], ...more];
const above = (total: Rows[number][number]): Rows => [["Into the machine", total], [], ...LIST];
const sideBySide = (first: string, second: string): Rows => [
  ["Zutat", "Menge (g)", null, "Zutat", "Menge (g)"],
  ["Wasser", 500, null, "Vollmilch", 600],
  ["Zucker", 150, null, "Zucker", 120],
  ["Zitronensaft", 60, null, "Honig", 50],
  ["Fruktose", 40, null, "Kakaopulver", 60],
  [],
  ["zusammen", formula(first, 750), null, null, formula(second, 830)],
];

describe("A total that stands apart from its list", () => {
  test.each<Tried>([
    {
      what: "a sum below a blank row, under a word of the house",
      sheets: { Ice: below(["For the churn", formula("SUM(B2:B5)", 750)]) },
      found: [],
    },
    {
      what: "the same, an amount left out",
      sheets: { Ice: below(["For the churn", formula("SUM(B2:B4)", 710)]) },
      found: ["total-incomplete Ice!B7"],
    },
    {
      what: "a sum that says what it leaves out",
      sheets: { Ice: below(["Without fructose", formula("SUM(B2:B4)", 710)]) },
      found: [],
    },
    {
      what: "a sum above the list",
      sheets: { Ice: above(formula("SUM(B4:B7)", 750)) },
      found: [],
    },
    {
      what: "a sum above the list that leaves its first line out",
      sheets: { Ice: above(formula("SUM(B5:B7)", 250)) },
      found: ["total-incomplete Ice!B1"],
    },
    {
      what: "a typed total below a blank row",
      sheets: { Ice: below(["All together", 750]) },
      found: [],
    },
    {
      what: "a typed total that does not fit",
      sheets: { Ice: below(["All together", 690]) },
      found: ["total-incomplete Ice!B7"],
    },
    {
      what: "how many pieces it makes, far from the sum",
      sheets: { Ice: below(["Makes", 12]) },
      found: [],
    },
    {
      what: "one line of totals for two lists side by side, one of them short",
      sheets: { Eis: sideBySide("SUM(B2:B5)", "SUM(E3:E5)") },
      found: ["total-incomplete Eis!E7"],
    },
    {
      what: "one line of totals for two lists side by side",
      sheets: { Eis: sideBySide("SUM(B2:B5)", "SUM(E2:E5)") },
      found: [],
    },
    {
      what: "a grand total that counts the total again",
      sheets: {
        Ice: below(
          ["Raw yield", formula("SUM(B2:B5)", 750)],
          ["Grand total", formula("SUM(B2:B7)", 1500)],
        ),
      },
      found: ["total-incomplete Ice!B8"],
    },
    {
      what: "a column of sums, a batch a row",
      sheets: {
        Ledger: [
          ["Batch of", "water", "sucrose", "fructose", "lemon juice", "Batch (g)"],
          ["May", 500, 150, 40, 60, formula("SUM(B2:E2)", 750)],
          ["June", 600, 150, 40, 60, formula("SUM(B3:E3)", 850)],
          ["July", 550, 150, 40, 60, formula("SUM(C4:E4)", 250)],
        ],
      },
      found: ["total-incomplete Ledger!F4"],
    },
    {
      what: "shares whose typed total does not fit",
      sheets: {
        Ice: [
          ["Per cent", "Ingredient", "Grams"],
          [70, "Water", 700],
          [20, "Sucrose", 200],
          [10, "Lemon juice", 100],
          [94, "Total", formula("SUM(C2:C4)", 1000)],
        ],
      },
      found: ["total-incomplete Ice!A5"],
    },
  ])("$what", expectFound);
});
