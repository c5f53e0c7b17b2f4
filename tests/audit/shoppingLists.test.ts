import { formula, type Rows } from "./bookOf";
import { rulesOn } from "./tried";

const INGREDIENTS = ["whole milk", "cream 35 % fat", "sucrose", "honey, average"];
const GRAMS = [600, 200, 150, 50];

/** Two recipes with their cautions, and what is to be bought for both. */
const shopping = (need: (row: number) => string): Readonly<Record<string, Rows>> => {
  const recipes: Rows = [
    ["Ingredient", "Milk ice (g)", "Honey ice (g)"],
    ...INGREDIENTS.map((item, at) => [item, GRAMS[at]!, 2 * GRAMS[at]!]),
    ["Contains milk. Honey: not for infants under 12 months."],
  ];
  const list: Rows = [
    ["What", "Needed (kg)"],
    ...INGREDIENTS.map((item, at) => {
      const kilograms = (14 * GRAMS[at]!) / 1000;
      const text = need(at + 2);
      return [item, text === "" ? kilograms : formula(text, kilograms)];
    }),
  ];
  return { Recipes: recipes, Shopping: list };
};

describe("What is to be bought for several recipes", () => {
  test.each([
    ["by SUMPRODUCT", (row: number) => `SUMPRODUCT(Recipes!B${row}:C${row},{4,5})/1000`],
    ["added up", (row: number) => `(Recipes!B${row}*4+Recipes!C${row}*5)/1000`],
  ])("is no mix of its own, %s", (_how, need) => {
    expect(rulesOn(shopping(need))).not.toContain("caution-not-named");
  });
  test("is a mix where it was typed", () => {
    expect(rulesOn(shopping(() => ""))).toContain("caution-not-named");
  });
});
