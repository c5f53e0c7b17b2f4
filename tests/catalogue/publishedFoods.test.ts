import { describe, expect, test } from "@jest/globals";
import type { Ingredient } from "../../src/catalogue/ingredient";
import { ingredients } from "../../src/catalogue/ingredients";

const SUGARS = ["sucrose", "glucose", "fructose", "galactose", "lactose", "maltose"];

function entry(name: string): Ingredient {
  const found = ingredients.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no ingredient ${name}`);
  return found;
}

function solute(name: string, of: string): number {
  return entry(name).composition.solutes?.[of] ?? 0;
}

const totalSugars = (name: string) => SUGARS.reduce((sum, of) => sum + solute(name, of), 0);

describe("USDA Standard Reference, release 26: water and fat as printed, g per 100 g", () => {
  test.each([
    ["whole milk", 88.13, 3.27],
    ["cream 37 % fat", 57.71, 37.0],
    ["skim milk powder", 3.16, 0.77],
    ["evaporated milk", 74.04, 7.56],
    ["whole egg", 76.15, 9.51],
    ["egg yolk", 52.31, 26.54],
    ["strawberry", 90.95, 0.3],
    ["banana", 74.91, 0.33],
    ["blueberry", 84.21, 0.33],
    ["almonds", 4.41, 49.93],
    ["honey, USDA row", 17.1, 0],
    ["maple syrup", 32.39, 0.06],
    ["coconut milk", 72.88, 21.33],
  ])("%s: water %d, fat %d", (name, water, fat) => {
    expect(entry(name).composition.water).toBeCloseTo(water, 2);
    expect(entry(name).composition.fat ?? 0).toBeCloseTo(fat, 2);
  });
});

describe("USDA Standard Reference: the single sugars add up to the printed total (from memory)", () => {
  test.each([
    ["strawberry", 4.89],
    ["raspberry", 4.42],
    ["blackberry", 4.88],
    ["blueberry", 9.96],
    ["banana", 12.23],
    ["apple", 10.39],
    ["mango", 13.66],
    ["peach", 8.39],
    ["apricot", 9.24],
    ["sweet cherry", 12.82],
    ["grape", 15.48],
    ["pineapple", 9.85],
    ["watermelon", 6.2],
    ["orange juice", 8.4],
    ["lemon juice", 2.52],
    ["medjool dates (blended)", 66.47],
    ["raisins (blended)", 59.19],
    ["honey, USDA row", 82.12],
    ["agave syrup", 68.03],
  ])("%s: %d g per 100 g", (name, grams) => {
    // half the last digit of up to six sugars; of raisins the print's parts miss its total by 1.3
    expect(Math.abs(totalSugars(name) - grams)).toBeLessThanOrEqual(
      name.startsWith("raisins") ? 1.4 : 0.15,
    );
  });
});

describe("White 1962, USDA Technical Bulletin 1261: the average American honey", () => {
  test.each([
    ["water", 17.2],
    ["fructose", 38.19],
    ["glucose", 31.28],
    ["sucrose", 1.31],
    ["maltose", 7.31],
  ])("has %s %d g per 100 g", (component, grams) => {
    const { composition } = entry("honey, average");
    const value = component === "water" ? composition.water : composition.solutes?.[component];
    expect(value).toBeCloseTo(grams, 2);
  });

  test("every honey lies within the ranges of the samples: water 13.4 to 22.9, fructose 27.3 to 44.3, glucose 22.0 to 40.8", () => {
    for (const { name, composition, group } of ingredients) {
      if (group !== "honey") continue;
      expect([name, within(composition.water, 13.4, 22.9)]).toEqual([name, true]);
      expect([name, within(solute(name, "fructose"), 27.3, 44.3)]).toEqual([name, true]);
      expect([name, within(solute(name, "glucose"), 22, 40.8)]).toEqual([name, true]);
    }
  });
});

describe("glucose syrups: dextrose equivalent is 18016 over the mean molar mass of the solids", () => {
  test.each([
    ["glucose syrup DE 28", 28],
    ["glucose syrup DE 42", 42],
    ["glucose syrup DE 60", 62],
    ["glucose syrup powder DE 36", 36],
    ["glucose syrup powder DE 42", 42],
    ["high-maltose syrup", 49],
    ["maltodextrin DE 10", 10],
    ["maltodextrin DE 18", 18],
  ])("%s closes to DE %d", (name, equivalent) => {
    const { higherSaccharides } = entry(name).composition;
    const higher = higherSaccharides ?? { grams: 0, molarMassGPerMol: 1000 };
    const grams = solute(name, "glucose") + solute(name, "maltose") + higher.grams;
    const moles =
      solute(name, "glucose") / 180.16 +
      solute(name, "maltose") / 342.3 +
      higher.grams / higher.molarMassGPerMol;
    expect(Math.abs((18016 * moles) / grams / equivalent - 1)).toBeLessThan(0.02);
  });

  // Belitz, Grosch & Schieberle, Food Chemistry, table 19.7, % of the solids; syrups of the nearest DE in print
  test.each([
    ["glucose syrup DE 28", 30, 10, 9],
    ["glucose syrup DE 42", 40, 17, 13],
    ["glucose syrup DE 60", 65, 39, 35],
    ["high-maltose syrup", 45, 5, 50],
  ])(
    "%s is made up much as the printed syrup of DE %d: glucose %d, maltose %d",
    (name, _de, glucose, maltose) => {
      const solids = 100 - entry(name).composition.water;
      expect(Math.abs((100 * solute(name, "glucose")) / solids - glucose)).toBeLessThan(5);
      expect(Math.abs((100 * solute(name, "maltose")) / solids - maltose)).toBeLessThan(5);
    },
  );

  test("21 CFR 184.1866: high-fructose syrups hold 42 and 55 % fructose of their solids", () => {
    for (const grade of [42, 55]) {
      const name = `high-fructose corn syrup ${grade}`;
      const share = solute(name, "fructose") / (100 - entry(name).composition.water);
      expect(Math.abs(100 * share - grade)).toBeLessThan(0.5);
    }
  });
});

describe("alcohol by volume is not mass: volume share × 0.78924 / density of the mixture at 20 °C (OIML R 22)", () => {
  test.each([
    ["spirit 37.5 % vol", 37.5, 0.95201],
    ["spirit 40 % vol", 40, 0.94805],
    ["neutral spirit 96 % vol", 96, 0.80742],
  ])("%s", (name, abvPercent, gramsPerMl) => {
    expect(entry(name).abvPercent).toBe(abvPercent);
    const massPercent = (abvPercent * 0.78924) / gramsPerMl;
    expect(Math.abs(solute(name, "ethanol") - massPercent)).toBeLessThan(0.15);
  });
});

describe("crystal water, from IUPAC atomic weights, goes to the water", () => {
  const WATER = 18.015;
  test.each([
    ["dextrose powder (monohydrate)", 1, 180.156],
    ["lactose powder", 1, 342.297],
    ["maltose powder", 1, 342.297],
    ["trehalose powder", 2, 342.297],
    ["lactitol powder", 1, 344.313],
    ["citric acid powder (monohydrate)", 1, 192.123],
    ["sodium citrate powder (dihydrate)", 2, 258.068],
  ])("%s, %d H2O", (name, waters, anhydrous) => {
    const percent = (100 * waters * WATER) / (anhydrous + waters * WATER);
    expect(Math.abs(entry(name).composition.water - percent)).toBeLessThan(0.05);
  });
});

function within(value: number, from: number, to: number): boolean {
  return value >= from && value <= to;
}
