import { crc102 } from "../../src/catalogue/fit/figures/crc102";
import { numberOf, ofRecipe } from "./ask";

/** Half of the last printed digit. */
const rounding = (printed: string) => 0.5 * 10 ** -(printed.split(".")[1]?.length ?? 0);

// Worked examples and exercises of OpenStax, Chemistry 2e, section 11.4; quoted from memory.
describe("OpenStax Chemistry 2e, section 11.4 (from memory)", () => {
  test("2220 g of ethylene glycol in 2000 g of water are 17.9 mol/kg (example 11.3)", () => {
    expect(numberOf("MOLALITY", "ethylene glycol", 2220, 2000)).toBeCloseTo(17.9, 1);
  });

  test("0.850 g of ammonia in 125 g of water is 0.399 mol/kg (check your learning)", () => {
    expect(numberOf("MOLALITY", "ammonia", 0.85, 125)).toBeCloseTo(0.399, 3);
  });

  test("0.33 mol/kg in benzene, Kf 5.12, lowers the freezing point by 1.7 K (example 11.8)", () => {
    expect(numberOf("IDEALDEPRESSION", 0.33, null, 5.12)).toBeCloseTo(1.7, 1);
  });

  test("4.2 g of NaCl in 125 g of water lower it by 2.1 K by the ideal law (example 11.11)", () => {
    const molality = numberOf("MOLALITY", "sodium chloride", 4.2, 125);
    const vantHoff = numberOf("SOLUTE", "sodium chloride", "van 't Hoff");
    const ideal = numberOf("IDEALDEPRESSION", molality, vantHoff);
    expect(Math.abs(ideal - 2.1)).toBeLessThan(0.05);
    // the real solution is 0.1 to 0.2 K short of that: ions are not free of each other
    const real = ofRecipe("DEPRESSION", { water: 125, "sodium chloride": 4.2 });
    expect(ideal - real).toBeGreaterThan(0.1);
    expect(ideal - real).toBeLessThan(0.25);
  });

  test("0.724 g of CaCl2 in 175 g of water freeze at −0.208 °C by the ideal law (check your learning)", () => {
    const molality = numberOf("MOLALITY", "calcium chloride", 0.724, 175);
    expect(numberOf("IDEALDEPRESSION", molality, 3)).toBeCloseTo(0.208, 3);
  });
});

describe("CRC Handbook, 102nd ed., through FREEZINGPOINT", () => {
  // accepted misses: the fit's largest residual where it was promised, plus half the last printed digit
  const limits: Readonly<Record<string, (percent: number) => number>> = {
    sucrose: () => 0.03,
    glucose: () => 0.03,
    fructose: () => 0.03,
    "sodium chloride": (percent) => (percent <= 10 ? 0.04 : percent <= 20 ? 0.12 : Infinity),
  };

  test.each(Object.keys(limits))("every row of %s in one call", (solute) => {
    const table = crc102.find((one) => one.solute === solute)!;
    const misses = table.massPercent.map((percent, row) => {
      const found = ofRecipe("FREEZINGPOINT", { [solute]: percent, water: 100 - percent });
      return Math.abs(found - table.freezingPointC[row]!) - limits[solute]!(percent);
    });
    expect(Math.max(...misses)).toBeLessThanOrEqual(rounding("0.01"));
  });
});

describe("Foods", () => {
  // AOAC 961.07 and dairy practice: genuine milk freezes between −0.512 and −0.550 °C
  test("milk freezes where cryoscopes find it", () => {
    const milk = numberOf("FREEZINGPOINT", "whole milk", 1000);
    expect(milk).toBeLessThan(-0.505);
    expect(milk).toBeGreaterThan(-0.555);
    expect(Math.abs(milk + 0.522)).toBeLessThan(
      2 * numberOf("UNCERTAINTY", "whole milk", 1, "freezing point"),
    );
  });

  test("25 % of 465 g of syrup is not 33 %: 115 g in 350 g of water are 24.7 % by mass", () => {
    expect(numberOf("MASSFRACTION", 115, 350)).toBeCloseTo(115 / 465, 12);
  });

  test("a sucrose syrup is as sweet as its own sucrose", () => {
    expect(ofRecipe("SWEETNESS", { water: 80, sucrose: 20 })).toBeCloseTo(20, 10);
  });

  // USDA household weights, SR 26: 1 cup of granulated sugar 200 g, 1 tsp 4.2 g
  test("a cup of sugar weighs 200 g, a teaspoon 4.2 g", () => {
    expect(Math.abs(numberOf("GRAMS", "refined sugar", 1, "cup") - 200)).toBeLessThan(1);
    expect(Math.abs(numberOf("GRAMS", "refined sugar", 1, "tsp") - 4.2)).toBeLessThan(0.05);
  });
});
