import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

const KILOS = [
  ["Water", 10, 0.5, 1200],
  ["Sucrose", 2.5, 3.1, 280],
  ["Dextrose monohydrate", 12.5, 34, 60],
] as const;

/** What is bought by the case and what of it goes into a tub; the price of a kilogram has its own column. */
const bought = (cost: string, dissolved: number): Record<string, Rows> => ({
  Tub: [
    ["Goes in", "Case (kg)", "Case price (£)", "£ per kg", "Tub (g)", "Cost (£)"],
    ...KILOS.map(([name, kilos, price, grams], at): Rows[number] => [
      ...[name, kilos, price, formula(`C${at + 2}/B${at + 2}`, price / kilos), grams],
      formula(cost.replaceAll("#", String(at + 2)), (price / kilos / 1000) * grams),
    ]),
    ["All of it", null, null, null, formula("SUM(E2:E4)", 1540)],
    [],
    ["Dissolved in it (g)", dissolved],
  ],
});

/** Kilograms with a column of units and, on the other side, who weighed them. */
const weighed = (units: readonly string[], initials: readonly string[]): Record<string, Rows> => ({
  Montag: [
    ["Zutat", "Einheit", "Menge (kg)", "Kürzel"],
    ...(
      [
        ["Wasser", 3.9],
        ["Kristallzucker", 0.79],
        ["Fruktose", 0.31],
      ] as const
    ).map(([name, kilos], at): Rows[number] => [
      ...[name, units[at] ?? null, kilos, initials[at] ?? null],
    ]),
    ["Kessel", "kg", formula("SUM(C2:C4)", 5)],
  ],
});

describe("Numbers and marks beside amounts that are not theirs", () => {
  test.each<Tried>([
    {
      what: "a case whose price per kilogram stands apart is not the recipe",
      sheets: bought("D#*E#/1000", 334),
      found: [],
    },
    {
      what: "what is dissolved in the tub is compared with the tub",
      sheets: bought("D#*E#/1000", 420),
      found: ["result-differs Tub!B7"],
    },
    {
      what: "initials that look like a unit beside a column of units",
      sheets: weighed(["kg", "kg", "kg"], ["ML", "ML", "ML"]),
      found: [],
    },
    {
      what: "an odd unit in the column of units",
      sheets: weighed(["kg", "g", "kg"], ["ML", "TS", "ML"]),
      found: ["mass-units-mixed Montag!C3"],
    },
  ])("$what", expectFound);
});
