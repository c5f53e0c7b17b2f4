import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

/** The share of ice of 150 g of sucrose in 850 g of water, in %. */
const ice = (celsius: number, basis: "water" | "mix"): number => {
  const [[share] = []] = callFunction(
    "ICEFRACTION",
    [["water"], ["sucrose"]],
    [[850], [150]],
    celsius,
    basis,
  );
  return Math.round(Number(share) * 1000) / 10;
};
const LIST: Rows = [
  ["Ingredient", "Amount (g)", null, "Of its water frozen when drawn (%)", 0],
  ["water", 850],
  ["sucrose", 150],
  ["Total", 1000],
];
const drawn = (title: string, celsius: number, share: number): Rows => [
  [title],
  LIST[0]?.with(4, share) ?? [],
  ...LIST.slice(1),
  ["Draw temperature (°C)", celsius],
  [],
];

/** A drink with the temperature of its machine right above its list. */
const poured = (title: string, celsius: number, share: number): Rows => [
  ...[[title], ["Machine set to (°C)", celsius], ["Pour in", "Batch, g"]],
  ...[
    ["water", 850],
    ["sucrose", 150],
    ["In the jug", 1000],
  ],
  ["Slush, ice as % of the whole pour", share],
  [],
];

describe("A share of ice goes by the temperature of its own recipe", () => {
  test.each<Tried>([
    {
      what: "of two",
      sheets: {
        Day: [...drawn("One", -6, ice(-6, "water")), ...drawn("Two", -9, ice(-9, "water"))],
      },
      found: [],
    },
    {
      what: "of two, one of them of the mix",
      sheets: { Day: [...drawn("One", -6, ice(-6, "water")), ...drawn("Two", -9, ice(-9, "mix"))] },
      found: ["ice-of-water-or-mix Day!E9", "result-differs Day!E9"],
    },
    {
      what: "of two right above their lists",
      sheets: {
        Bar: [...poured("One", -6, ice(-6, "mix")), ...poured("Two", -9, ice(-9, "mix"))],
      },
      found: [],
    },
    {
      what: "of two right above their lists, one share that of the water",
      sheets: {
        Bar: [...poured("One", -6, ice(-6, "mix")), ...poured("Two", -9, ice(-9, "water"))],
      },
      found: ["ice-of-water-or-mix Bar!B15", "result-differs Bar!B15"],
    },
    {
      what: "of two, by the one its formula reads",
      sheets: {
        Day: [
          ...LIST,
          ["Freezer in the hall (°C)", -16],
          ["Cabinet (°C)", -9],
          [
            "Of the water frozen (%)",
            formula('100*RIME.ICEFRACTION(A2:A3,B2:B3,B6,"water")', ice(-9, "water")),
          ],
          [
            "Of the mix frozen (%)",
            formula('100*RIME.ICEFRACTION(A2:A3,B2:B3,B6,"mix")', ice(-16, "mix")),
          ],
        ],
      },
      found: ["result-differs Day!B8"],
    },
    {
      what: "or by that of the share above",
      sheets: {
        Day: [
          ["Ingredient", "Amount (g)"],
          ...LIST.slice(1),
          ["Water that is ice at −8 °C (%)", ice(-8, "water")],
          ["and ice in the whole mix (%)", ice(-8, "water")],
        ],
      },
      found: ["ice-of-water-or-mix Day!B6", "result-differs Day!B6"],
    },
  ])("$what", expectFound);
});
