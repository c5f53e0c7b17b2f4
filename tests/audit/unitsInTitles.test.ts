import { formula, type Rows } from "./bookOf";
import { expectFound, rulesOn, type Tried } from "./tried";

const compared = (heading: string, ...titles: Rows): Rows => [
  ...titles,
  [heading],
  ["strawberries", 59, null],
  ["sugar", 18, 15.2],
  ["water", 23, 40],
  ["whole milk", null, 44.8],
  ["Sum", 100, 100],
  // 18 and 15.2 parts of sucrose beside the sugars of strawberries and milk.
  ["Contains milk."],
];
const TITLES: Rows = [["Recipe", "Berry ice", "Milk ice"]];

const columns = (title: string): Rows => [
  [title],
  [],
  ["Ingredient", "€/kg", "Berry ice", "Milk ice"],
  ["water", 0.01, 500, 300],
  ["sugar", 1.1, 150, 120],
  ["whole milk", 1.2, 0, 400],
  ["Sum", null, formula("SUM(C4:C6)", 650), formula("SUM(D4:D6)", 820)],
  ["Contains milk."],
];

describe("Recipes in columns whose unit is said once", () => {
  test.each<Tried>([
    {
      what: "as a share",
      sheets: { Ice: compared("Ingredient, in % by mass", ...TITLES) },
      found: [],
    },
    {
      what: "as a share, in German, below two rows of titles",
      sheets: {
        Eis: compared(
          "Zutat, Angaben in Massen-%",
          ["Gruppe", "A", "B"],
          ["Rezeptur", "Beere", "Milch"],
        ),
      },
      found: [],
    },
    {
      what: "in grams per batch",
      sheets: { Ice: columns("Our ices (grams per batch)") },
      found: [],
    },
    { what: "in German", sheets: { Ice: columns("Sommersorten (Gramm je Ansatz)") }, found: [] },
    { what: "as the title itself", sheets: { Ice: columns("kg je Ansatz") }, found: [] },
  ])("$what", expectFound);

  test.each(["Our ices of the summer", "Our ices (per batch)", "Our ices in July"])(
    "%s says none",
    (title) => {
      expect(rulesOn({ Ice: columns(title) })).toContain("input-without-unit");
      expect(rulesOn({ Ice: columns("Our ices (g)") })).not.toContain("input-without-unit");
    },
  );

  test("a share that is missing is told", () => {
    const rows = compared("Ingredient, in % by mass", ...TITLES);
    const sheets = { Ice: rows.with(2, ["strawberries", 49, null]) };
    expectFound({ what: "", sheets, found: ["total-incomplete Ice!B7"] });
  });
});

test.each([
  ["per cent by weight", false],
  ["grams for one batch", false],
  ["all weights in g", false],
  ["as tasted in May", true],
  ["2 kg each", true],
])("%s stands above the first of some titles, away from the names", (said, isTold) => {
  const rows: Rows = [
    [null, null, said],
    ["Sample", null, "P – Berry ice", "Q – Milk ice"],
    ["strawberries", null, 59, null],
    ["sugar", null, 18, 15.2],
    ["water", null, 23, 40],
    ["whole milk", null, null, 44.8],
    ["Contains milk."],
  ];
  expect(rulesOn({ Ice: rows }).includes("input-without-unit")).toBe(isTold);
});

describe("A row of units below the titles", () => {
  const week = (unit: string, total: string): Rows => [
    ["Raw material", "Berry ice", "Lemon ice"],
    [null, unit, unit],
    ["strawberries", 600, null],
    ["water", 200, 700],
    ["sugar", 200, 200],
    ["lemon juice", null, 100],
    [total, formula("SUM(B3:B6)", 1000), formula("SUM(C3:C6)", 1000)],
    ["Sugar put in (g)", 200, 200],
  ];
  const at = (sheets: Tried["sheets"]) => ({ what: "", sheets, found: [] });

  test("may say of how much", () => {
    expectFound(at({ Week: week("g per kg", "Whole") }));
    expectFound(at({ Woche: week("g je kg", "ein Kilo") }));
    expect(rulesOn({ Week: week("g per kg", "one kilo") })).not.toContain("input-without-unit");
  });

  test("of which a total that is one kilogram says none", () => {
    expect(rulesOn({ Week: week("for the stall", "one kilo") })).toContain("input-without-unit");
    expect(rulesOn({ Week: week("for the stall", "Total, g") })).not.toContain(
      "input-without-unit",
    );
  });
});
