import { describe, expect, test } from "@jest/globals";
import { ingredients } from "../../src/catalogue/ingredients";

const dairy = ingredients.filter(({ group }) => group === "dairy");
const of = (name: string) => ingredients.find((one) => one.name === name)!.composition;

describe("milk salts", () => {
  test.each([
    "whole milk",
    "milk 2 % fat",
    "skim milk",
    "cream 20 % fat",
    "cream 35 % fat",
    "skim milk powder",
    "whole milk powder",
    "evaporated milk",
    "sweetened condensed milk",
  ])("of %s are 0.078 of its milk solids-not-fat (protein, lactose, minerals)", (name) => {
    const { protein = 0, ash = 0, solutes = {} } = of(name);
    const salts = solutes["milk salts"]!;
    const solidsNotFat = protein + solutes["lactose"]! + ash + salts;
    expect(Math.abs(salts / solidsNotFat - 0.078)).toBeLessThan(0.0005);
  });

  // Fox & McSweeney, Dairy Chemistry and Biochemistry, 1998, chapter 5: about 7 g of salts per litre of milk
  test("make about 7 g per litre of milk", () => {
    expect(of("whole milk").solutes!["milk salts"]! * 10.31).toBeCloseTo(7, 0);
  });

  test("are never counted twice: dissolved and undissolved minerals together are the printed ash", () => {
    // ash as USDA Standard Reference 26 prints it, g per 100 g
    const printed: [string, number][] = [
      ["whole milk", 0.67],
      ["skim milk", 0.75],
      ["sour cream", 0.85],
      ["skim milk powder", 7.93],
      ["whole milk powder", 6.08],
      ["sweet whey powder", 8.35],
      ["salted butter", 2.11],
      ["cream cheese", 1.32],
      ["ricotta", 1.02],
      ["Greek yogurt, nonfat", 0.72],
      ["evaporated milk", 1.55],
    ];
    for (const [name, grams] of printed) {
      const { ash = 0, solutes = {} } = of(name);
      const minerals = ash + (solutes["milk salts"] ?? 0) + (solutes["sodium chloride"] ?? 0);
      expect([name, Math.abs(minerals - grams) < 0.02]).toEqual([name, true]);
    }
  });

  test("and salt stand side by side only where salt was added to milk", () => {
    const both = dairy.filter(
      ({ composition: { solutes = {} } }) =>
        "milk salts" in solutes && "sodium chloride" in solutes,
    );
    expect(both.map(({ name }) => name).sort()).toEqual(["cream cheese", "salted butter"]);
  });
});

describe("salt", () => {
  // USDA Standard Reference 26 prints sodium; 1 g of sodium is 2.542 g of salt
  test.each([
    ["salted butter", 643, 8],
    ["cream cheese", 365, 27],
  ])("of %s is its sodium (%d mg) less the sodium of its milk (%d mg)", (name, sodium, ofMilk) => {
    expect(of(name).solutes!["sodium chloride"]).toBeCloseTo(((sodium - ofMilk) / 1000) * 2.542, 2);
  });

  test("citrate and baking soda are counted once, as themselves", () => {
    expect(of("sodium citrate powder (dihydrate)").solutes).toEqual({ "trisodium citrate": 87.75 });
    expect(of("baking soda powder").solutes).toEqual({ "sodium bicarbonate": 100 });
  });
});
