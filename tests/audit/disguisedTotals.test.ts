import { formula, type Rows } from "./bookOf";
import { expectFound, rulesOn, type Tried } from "./tried";

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

// The base's column ends above the fruit, which is weighed for each ice: its total is shorter, and the fruit typed.
const madeOf = (fruit: Rows[number][number], baseTotal: string): Rows => [
  ["Share of the base", null, 0.8, 0.75, 0.7],
  ["Ingredient (g)", "Base", "Mild", "Middle", "Tart"],
  ...["water", "sucrose", "fructose", "lemon juice", "glucose"].map((name, at): Rows[number] => {
    const grams = [500, 120, 60, 40, 20][at]!;
    const part = (column: string, share: number) =>
      formula(`$B${at + 3}*${column}$1`, grams * share);
    return [name, grams, part("C", 0.8), part("D", 0.75), part("E", 0.7)];
  }),
  ["raspberries", fruit, 150, 180, 210],
  [
    "Total",
    formula(baseTotal, fruit === null ? 740 : 0),
    formula("SUM(C3:C8)", 742),
    formula("SUM(D3:D8)", 735),
    formula("SUM(E3:E8)", 728),
  ],
];

test("a base among ices made of it has a shorter total, and fruit has no part in the base", () => {
  expectFound({ what: "", sheets: { Ices: madeOf(null, "SUM(B3:B7)") }, found: [] });
});

test("a shorter total that leaves something out is told", () => {
  const sheets = { Ices: madeOf(10, "SUM(B3:B7)") };
  expect(rulesOn(sheets)).toContain("total-incomplete");
  expect(rulesOn(sheets)).toContain("formula-overwritten");
});

const cups = (third: number | null): Rows => [
  ["What", "g in the cup", "€ per kg"],
  ["white sugar", 13, 38],
  ["water", 15, 24],
  ["moonflower base", 28, third],
  ["lime juice", 27, 3.2],
];

test("a line with a price of its own may weigh as much as the two above it", () => {
  expectFound({ what: "", sheets: { Cups: cups(26) }, found: ["unknown-ingredient Cups!A4"] });
  expectFound({ what: "", sheets: { Cups: cups(null) }, found: [] });
});

test("a part of one line that nobody knows has its own sum, and belongs to the list", () => {
  const parts = (sweet: string): Rows => [
    ["Ingredient", "Grams"],
    [sweet, 396],
    ["Subtotal", formula("SUM(B2)", 396)],
    [],
    ["Fruit and the rest"],
    ["water", 1625],
    ["lime juice", 221],
    ["Subtotal", formula("SUM(B6:B7)", 1846)],
    ["Total", formula("B3+B8", 2242)],
  ];
  expectFound({ what: "", sheets: { Ice: parts("sugar") }, found: [] });
  expectFound({
    what: "",
    sheets: { Ice: parts("moonflower base") },
    found: ["unknown-ingredient Ice!A2"],
  });
});
