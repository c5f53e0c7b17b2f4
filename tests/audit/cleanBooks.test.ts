import { callFunction } from "../../src/worksheet/callFunction";
import type { ShortCell } from "../../src/workbook/sheetFromRows";
import { formula, type Rows } from "./bookOf";
import { findingsOf } from "./findingsOf";

/** What the sheets of a careful cook state: our own numbers, rounded as people round. */
function stated(
  name: string,
  mix: Readonly<Record<string, number>>,
  ...more: readonly unknown[]
): number {
  const items = Object.keys(mix).map((item) => [item]);
  const grams = Object.values(mix).map((value) => [value]);
  return Number(callFunction(name, items, grams, ...more)[0]?.[0]);
}
const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

const SORBET = { water: 480, sucrose: 170, "lemon juice": 120 } as const;
const MILK_ICE = {
  "whole milk": 620,
  "cream 35 % fat": 180,
  "skim milk powder": 40,
  sucrose: 130,
} as const;

const lines = (
  mix: Readonly<Record<string, number>>,
  more: (grams: number) => ShortCell[] = () => [],
): Rows => Object.entries(mix).map(([item, grams]) => [item, grams, ...more(grams)]);

const freezing = (mix: Readonly<Record<string, number>>) =>
  rounded(stated("FREEZINGPOINT", mix), 1);

/** Layouts of our own; each is right in all it says. */
const BOOKS: Readonly<Record<string, Rows | Readonly<Record<string, Rows>>>> = {
  "a recipe with total and freezing point": [
    ["Lemon sorbet", null],
    ["Ingredient", "Amount (g)"],
    ...lines(SORBET),
    ["Total", formula("SUM(B3:B5)", 770)],
    [],
    ["Freezing point (°C)", freezing(SORBET)],
    ["Freezing point depression (K)", -freezing(SORBET)],
  ],
  "a costing sheet with prices, packaging, yield and labour": [
    ["Milk ice, 24 bars"],
    ["Ingredient", "g", "€ per kg", "Cost €"],
    ...lines(MILK_ICE, (grams) => [2, formula("x", (grams * 2) / 1000)]),
    ["Wooden sticks", 24, 0.01, 0.24],
    ["Labour", 0.5, 18, 9],
    [],
    ["Yield, bars", 24],
    ["Cost per bar", 0.45],
    ["Selling price", 2.5],
  ],
  "a sheet of shares with the grams beside them": [
    ["Zutat", "Menge (g)", "Anteil %"],
    ...lines(SORBET, (grams) => [rounded((grams / 770) * 100, 1)]),
    ["Summe", 770, 100],
  ],
  "per cent only, in percent format": [
    ["Ingredient", "Share"],
    ["water", { value: 0.72, format: "0.0%" }],
    ["sucrose", { value: 0.2, format: "0.0%" }],
    ["lemon juice", { value: 0.08, format: "0.0%" }],
    ["Total", { value: 1, format: "0.0%" }],
  ],
  "recipes in rows with their freezing points": [
    ["Recipe", "water", "sucrose", "lemon juice", "Batch g", "Freezing point °C"],
    ["mild", 480, 150, 100, 730, freezing({ water: 480, sucrose: 150, "lemon juice": 100 })],
    ["sharp", 480, 170, 140, 790, freezing({ water: 480, sucrose: 170, "lemon juice": 140 })],
    ["average", 480, 160, 120, 760, null],
  ],
  "two versions beside each other, each with its ice share": [
    ["Ingredient", "Monday g", "Friday g"],
    ["water", 480, 500],
    ["sucrose", 170, 150],
    ["lemon juice", 120, 120],
    [],
    [
      "Ice at −10 °C, % of the water",
      ...[480, 500].map((water, at) =>
        rounded(
          100 *
            stated(
              "ICEFRACTION",
              { water, sucrose: at === 0 ? 170 : 150, "lemon juice": 120 },
              -10,
            ),
          0,
        ),
      ),
    ],
  ],
  "a recipe in cups and spoons with its notes": [
    ["Ingredient", "Amount", "Unit", "Note"],
    ["water", 2, "cup", "cold"],
    ["sucrose", 150, "g", "sifted, about 3/4 cup"],
    ["lemon juice", 4, "tbsp", "from 2 lemons"],
    ["Makes 8 pops"],
  ],
  "a class sheet that works by i·Kf·m and is right": [
    ["Ingredient", "g", "g/mol", "i", "Moles"],
    ["Water", 500, 18.02, null, null],
    ["Sodium chloride", 5, 58.44, 2, 0.171],
    ["Kf (°C·kg/mol)", 1.86],
    ["Molality of particles (mol/kg)", 0.342],
    ["Depression (°C)", 0.636],
    ["Freezing point (°C)", -0.64],
    ["Measured freezing point (°C)", -0.6],
  ],
  "a log of temperatures with both scales": [
    ["Place", "°C", "°F"],
    ["Freezer, top shelf", -18, -0.4],
    ["Freezer, door", -15, 5],
    ["Hall", 21, 69.8],
  ],
  "own ingredients and a recipe by plain names": {
    Names: [
      ["name", "same as", "water", "sucrose"],
      ["Milk", "whole milk", null, null],
      ["Sugar", "refined sugar", null, null],
      ["Plum jam", null, 40, 60],
    ],
    Batch: [
      ["Ingredient", "g"],
      ["Milk", 600],
      ["Sugar", 120],
      ["Plum jam", 80],
      ["Total", formula("SUM(B2:B4)", 800)],
    ],
  },
  "a base mix used in another recipe, with sums of solids below": [
    ["Base syrup"],
    ["Ingredient", "g"],
    ["water", 400],
    ["sucrose", 300],
    ["Batch total (g)", 700],
    ["Total solids (g)", 300],
    ["Total sugar %", 42.9],
    [],
    ["Sharp sorbet"],
    ["Ingredient", "g"],
    ["Base syrup", 500],
    ["water", 150],
    ["lemon juice", 180],
    ["Total weight", 830],
  ],
  "a lesson that recalls the freezing point of water": [
    ["Ingredient", "g"],
    ["water", 500],
    ["sucrose", 50],
    [],
    ["Freezing point of pure water (°C)", 0],
    ["Freezing point of the syrup (°C)", freezing({ water: 500, sucrose: 50 })],
    ["Desired freezing point (°C)", -3],
    ["Boiling point elevation (K)", 0.15],
  ],
  "a shopping list and a rota": [
    ["Item", "Packs", "Who"],
    ["Sugar", 3, "Ada"],
    ["Milk", 6, "Ben"],
    ["Napkins", 2, "Ada"],
  ],
  "a written recipe": [
    ["Ingredient", "Amount"],
    ["water", "480 g"],
    ["sucrose", "170 g"],
    ["Method", "Boil, cool, churn."],
  ],
  "a bar with nuts, whose dissolved solids leave the nuts out": [
    ["Ingredient", "g", "Dissolved solids g"],
    ["water", 500, 0],
    ["sucrose", 150, 150],
    ["pistachios", 60, 0],
    ["Total", 710, 150],
  ],
};

test.each(Object.keys(BOOKS))("Nothing is wrong in %s", (title) => {
  const wrong = findingsOf(BOOKS[title] ?? []).filter(({ severity }) => severity !== "note");
  expect(wrong).toEqual([]);
});
