import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

const HEAD = ["Ingredient", "Amount (g)"];
const TWO: Rows = [HEAD, ["Water", 500], ["Sucrose", 150]];
const staged = (base: Rows[number], ...more: Rows): Rows => [
  ...TWO,
  base,
  ["Lemon juice", 60],
  ["Fructose", 40],
  ...more,
];

describe("A total that is not called one", () => {
  test.each<Tried>([
    {
      what: "a sum under another word",
      sheets: { Ice: [...TWO, ["Into the machine", formula("SUM(B2:B3)", 650)]] },
      found: [],
    },
    {
      what: "a typed sum under another word",
      sheets: { Ice: [...TWO, ["Lemon juice", 60], ["Into the machine", 710]] },
      found: [],
    },
    {
      what: "a base that is a subtotal, and what comes of it",
      sheets: {
        Ice: staged(["Base", formula("SUM(B2:B3)", 650)], ["Finished", formula("SUM(B4:B6)", 750)]),
      },
      found: [],
    },
    {
      what: "a base that is a subtotal, and a total of base and fruit",
      sheets: {
        Ice: staged(["Base", formula("SUM(B2:B3)", 650)], ["Total", formula("B4+B5+B6", 750)]),
      },
      found: [],
    },
    {
      what: "a typed base that is a subtotal, and a typed total",
      sheets: { Ice: staged(["White mix", 650], ["Total", 750]) },
      found: [],
    },
    {
      what: "a base that is a subtotal, in two columns",
      sheets: {
        Ice: [
          ["Ingredient", "Mild (g)", "Tart (g)"],
          ["Water", 500, 520],
          ["Sucrose", 150, 140],
          ["Base", formula("SUM(B2:B3)", 650), formula("SUM(C2:C3)", 660)],
          ["Lemon juice", 60, 90],
          ["Total", formula("B4+B5", 710), formula("C4+C5", 750)],
        ],
      },
      found: [],
    },
    {
      what: "a base that the total counts again",
      sheets: {
        Ice: staged(["Base", formula("SUM(B2:B3)", 650)], ["Total", formula("SUM(B2:B6)", 1400)]),
      },
      found: ["total-incomplete Ice!B7"],
    },
    {
      what: "a typed base that the typed total counts again",
      sheets: { Ice: staged(["Base", 650], ["Total", 1400]) },
      found: ["total-incomplete Ice!B7"],
    },
    {
      what: "a German base that the total counts again",
      sheets: {
        Eis: [
          ["Zutat", "Menge (g)"],
          ["Wasser", 500],
          ["Zucker", 150],
          ["Grundmasse", formula("SUM(B2:B3)", 650)],
          ["Zitronensaft", 60],
          ["Summe", formula("SUM(B2:B5)", 1360)],
        ],
      },
      found: ["total-incomplete Eis!B6"],
    },
  ])("$what", expectFound);
});
