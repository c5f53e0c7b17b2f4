import { type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

// −2 °F is −18.9 °C, −4 °F −20 °C by definition.
const chest = (...days: Rows): Rows => [
  ["Chest", "Opening (°C)", "Closing (°C)"],
  ...days.map(([opening, closing], at) => [["Thu", "Fri", "Sat"][at], opening, closing] as const),
];

describe("A table with a few readings under each heading", () => {
  test.each<Tried>([
    { what: "all in °C", sheets: { Log: chest([-21, -17], [-20, -16], [-21, -16]) }, found: [] },
    {
      what: "one in °F among all the others",
      sheets: { Log: chest([-21, -17], [-20, -16], [-21, -2]) },
      found: ["temperature-units-mixed Log!C4"],
    },
    {
      what: "the first of two freezers in °F",
      sheets: {
        Eis: [
          ["Kühlzelle", "früh (°C)", "abends (°C)"],
          ["links", -4, -18],
          ["rechts", -19, -18],
        ],
      },
      found: ["temperature-units-mixed Eis!B2"],
    },
    {
      what: "two warm ones",
      sheets: { Log: chest([-21, -2], [-20, -16], [-21, -2]) },
      found: [],
    },
    {
      what: "what is no freezer's in °F",
      sheets: { Log: chest([-21, -17], [-20, 30]) },
      found: [],
    },
    {
      what: "what is cooled, warm at first",
      sheets: { Log: chest([-2, -10], [-18, -17], [-19, -18]) },
      found: [],
    },
    {
      what: "the lid stood open",
      sheets: {
        Log: [
          ["Chest", "Opening (°C)", "Closing (°C)", "Remarks"],
          ["Thu", -21, -17, null],
          ["Fri", -20, -2, "lid left open"],
        ],
      },
      found: [],
    },
  ])("$what", expectFound);
});

test.each<Tried>([
  {
    what: "a chest by a compound",
    sheets: { Eis: [["Versuchstruhe (°C)", -4]] },
    found: ["temperature-units-mixed Eis!B1"],
  },
  { what: "one that is cold", sheets: { Eis: [["Versuchstruhe (°C)", -20]] }, found: [] },
  { what: "one that chills", sheets: { Eis: [["Kühltruhe (°C)", 4]] }, found: [] },
])("what a chest is set to: $what", expectFound);

/** What a bath is set to and at what it runs out, in °C. */
const bath = (...runs: Rows): Rows => [["Run", "Bath °C in", "Bath °C out"], ...runs];

describe("Two columns in °C beside each other", () => {
  test.each<Tried>([
    {
      what: "one reading far from what is wanted, in °F as cold",
      sheets: { Log: bath([1, -29, -28], [2, -29, -30], [3, -31, -22]) },
      found: ["temperature-units-mixed Log!C4"],
    },
    {
      what: "a bath that runs out warmer than it is set to",
      sheets: { Log: bath([1, -32, -27], [2, -29, -23], [3, -29, -27]) },
      found: [],
    },
    {
      what: "one column warmer in each line, one line by more",
      sheets: { Log: bath([1, -29, -26], [2, -29, -26.5], [3, -31, -23]) },
      found: [],
    },
  ])("$what", expectFound);
});
