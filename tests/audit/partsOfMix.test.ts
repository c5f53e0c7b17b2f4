import type { Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

// 500 g of water, 150 g of sucrose and 50 g of fructose: by addition 700 g, of which 200 g are sugars and all that
// is dissolved: 28.57 % of the mix, 40 g per 100 g of water; the water is 71.43 %.
const MIX: Rows = [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  ["Fructose", 50],
];
const stating = (...lines: Rows): Record<string, Rows> => ({ Ice: [...MIX, [null], ...lines] });

describe("A stated part of the mix", () => {
  test.each<Tried>([
    { what: "water in g", sheets: stating(["Water in the mix (g)", 500]), found: [] },
    { what: "water in kg", sheets: stating(["Water in the mix (kg)", 0.5]), found: [] },
    { what: "water in %", sheets: stating(["Water in the mix (%)", 71.4]), found: [] },
    {
      what: "sugars as a percentage by its format",
      sheets: stating(["Sugars in the mix", { value: 0.2857, format: "0.0%" }]),
      found: [],
    },
    { what: "sugars in German", sheets: stating(["Zuckergehalt (%)", 28.6]), found: [] },
    { what: "sugars to water", sheets: stating(["Sugar (g per 100 g water)", 40]), found: [] },
    { what: "dissolved solids", sheets: stating(["Dissolved solids (g)", 200]), found: [] },
    {
      what: "water in g, wrong",
      sheets: stating(["Water in the mix (g)", 550]),
      found: ["result-differs Ice!B6"],
    },
    {
      what: "water in kg, wrong",
      sheets: stating(["Water in the mix (kg)", 0.7]),
      found: ["result-differs Ice!B6"],
    },
    {
      what: "sugars as a percentage by its format, wrong",
      sheets: stating(["Sugars in the mix", { value: 0.35, format: "0.0%" }]),
      found: ["result-differs Ice!B6"],
    },
    {
      what: "sugars in German, wrong",
      sheets: stating(["Zuckergehalt (%)", 35]),
      found: ["result-differs Ice!B6"],
    },
    {
      what: "sugars to water, said to be of the mix",
      sheets: stating(["Sugar in the mix (%)", 40]),
      found: ["per-water-or-per-mix Ice!B6"],
    },
    {
      what: "sugars of the mix, said to be to water",
      sheets: stating(["Sugar (g per 100 g water)", 28.6]),
      found: ["per-water-or-per-mix Ice!B6"],
    },
  ])("$what", expectFound);
});

// 600 g of water, 200 g of sucrose and 100 g of a spirit with 40 % of its volume, which are 33.3 g of ethanol at the
// densities of ethanol and water: all but the water are 26 % of the mix, without the alcohol 22.2 %.
const SPIRITED = (share: number): Record<string, Rows> => ({
  Ice: [
    ["Ingredient", "Amount (g)"],
    ["Water", 600],
    ["Sucrose", 200],
    ["Spirit 40 % vol", 100],
    [null],
    ["Dry matter (%)", share],
    ["Contains alcohol, only for adults."],
  ],
});

describe("The dry matter of a mix with a spirit", () => {
  test.each<Tried>([
    { what: "without the alcohol", sheets: SPIRITED(22.2), found: [] },
    { what: "as all but the water", sheets: SPIRITED(26), found: [] },
    { what: "with the whole spirit", sheets: SPIRITED(33.3), found: ["result-differs Ice!B6"] },
  ])("$what", expectFound);
});
