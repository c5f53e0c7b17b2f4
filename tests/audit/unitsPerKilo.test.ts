import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

const perKilo = (corner: string, water: number): Rows => [
  ["Lime ice"],
  [corner, "Control", "Trial"],
  ["Water", 600, 610],
  ["Granulated sugar", 370, 358],
  ["Lime juice", 30, 32],
  [],
  ["All the water [g]", formula('RIME.COMPONENT(A3:A5,B3:B5,"water")', water), null],
];

describe("Grams said of a kilogram of mix", () => {
  test.each<Tried>([
    // Lime juice is 90.8 % water (USDA FoodData Central 168155), 627 g in all with what the other two bring.
    { what: "behind a word", sheets: { Lime: perKilo("Formula, g per kg", 627) }, found: [] },
    { what: "in brackets", sheets: { Lime: perKilo("Formula (g per kg)", 627) }, found: [] },
    {
      what: "with a water that is none of it",
      sheets: { Lime: perKilo("Formula, g per kg", 727) },
      found: ["result-differs Lime!B7"],
    },
    {
      what: "with the grams in cells of their own",
      sheets: {
        Prep: [
          ["per kg", null, "what"],
          [600, "g", "Water"],
          [370, "g", "Granulated sugar"],
          [30, "g", "Lime juice"],
          [formula("SUM(A2:A4)", 1000), "g", "all together"],
        ],
      },
      found: [],
    },
    {
      what: "one of them in kilograms",
      sheets: {
        Prep: [
          ["per kg", null, "what"],
          [560, "g", "Water"],
          [0.34, "kg", "Granulated sugar"],
          [30, "g", "Dextrose monohydrate"],
          [40, "g", "Fructose"],
          [30, "g", "Lime juice"],
          [formula("SUM(A2:A6)", 660.34), "g", "all together"],
        ],
      },
      found: ["mass-units-mixed Prep!A3"],
    },
  ])("$what", expectFound);
});

describe("A heading that says what its share is of", () => {
  const bottles = (heading: string): Rows => [
    ["Bottle", "Sucrose (g)", "Water (g)", heading],
    ["thin", 100, 500, 16.7],
    ["middling", 400, 500, 44.4],
    ["thick", 700, 500, 58.3],
  ];
  test.each<Tried>([
    { what: "of the syrup", sheets: { Bar: bottles("% of the syrup") }, found: [] },
    { what: "vom Sirup", sheets: { Bar: bottles("% vom Sirup") }, found: [] },
    {
      what: "a syrup weighed in that may be any",
      sheets: { Bar: bottles("Syrup (g)") },
      found: ["ambiguous-ingredient Bar!D1"],
    },
  ])("$what", expectFound);
});
