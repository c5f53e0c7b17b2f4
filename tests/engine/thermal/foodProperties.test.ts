import { conductionOfFood } from "../../../src/engine/thermal/conduction";
import { heatContentKJPerKg, type FoodShares } from "../../../src/engine/thermal/heatContent";

const NOTHING: FoodShares = {
  ...{ water: 0, ice: 0, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0, ethanol: 0 },
};
const food = (shares: Partial<FoodShares>): FoodShares => ({ ...NOTHING, ...shares });
const capacity = (shares: FoodShares, t: number) =>
  heatContentKJPerKg(shares, t + 0.5) - heatContentKJPerKg(shares, t - 0.5);

test("freezing 1 kg of water at 0 °C gives off 333.6 kJ (CRC: 6.0095 kJ/mol)", () => {
  const latent =
    heatContentKJPerKg(food({ water: 1 }), 0) - heatContentKJPerKg(food({ ice: 1 }), 0);
  expect(latent).toBeCloseTo(333.6, 6);
});

// Riedel: about 334 + 2.05·t kJ/kg, from memory
test("at −10 °C it gives off 313.5 ± 2 kJ, since water takes up more heat than ice", () => {
  const latent =
    heatContentKJPerKg(food({ water: 1 }), -10) - heatContentKJPerKg(food({ ice: 1 }), -10);
  expect(Math.abs(latent - 313.5)).toBeLessThan(2);
});

// Earle, Unit Operations in Food Processing, appendix 7 (after ASHRAE): kJ/(kg·K) above freezing; ± 3 %
test.each([
  ["water", { water: 1 }, 4.19],
  ["milk", { water: 0.878, protein: 0.032, fat: 0.035, carbohydrate: 0.048, ash: 0.007 }, 3.9],
  ["ice cream", { water: 0.62, protein: 0.038, fat: 0.12, carbohydrate: 0.213, ash: 0.009 }, 3.3],
  ["apples", { water: 0.84, carbohydrate: 0.14, fibre: 0.02 }, 3.6],
])("heat capacity of %s is print's within 5 %%", (_name, shares, print) => {
  expect(Math.abs(capacity(food(shares), 20) / print - 1)).toBeLessThan(0.05);
});

// CRC: ice at 0 °C 2.16 to 2.22 W/(m·K), 916.7 kg/m³; water at 20 °C 0.598, 998.2
test("ice and water conduct and weigh what handbooks print, within 4 and 0.5 %", () => {
  const ice = conductionOfFood(food({ ice: 1 }), 0);
  const water = conductionOfFood(food({ water: 1 }), 20);
  expect(Math.abs(ice.conductivityWPerMK / 2.16 - 1)).toBeLessThan(0.04);
  expect(Math.abs(water.conductivityWPerMK / 0.598 - 1)).toBeLessThan(0.02);
  expect(Math.abs(ice.densityKgPerM3 / 916.7 - 1)).toBeLessThan(0.005);
  expect(Math.abs(water.densityKgPerM3 / 998.2 - 1)).toBeLessThan(0.005);
});

test("a food conducts less than its parts side by side and more than one behind the other", () => {
  for (const ice of [0.01, 0.2, 0.5, 0.8, 0.99]) {
    const found = conductionOfFood(food({ ice, carbohydrate: 1 - ice }), -20);
    const part = (shares: Partial<FoodShares>) => conductionOfFood(food(shares), -20);
    const [a, b] = [part({ ice: 1 }), part({ carbohydrate: 1 })];
    const volume = (ice / a.densityKgPerM3) * found.densityKgPerM3;
    const [ka, kb] = [a.conductivityWPerMK, b.conductivityWPerMK];
    expect(found.conductivityWPerMK).toBeLessThan(volume * ka + (1 - volume) * kb);
    expect(found.conductivityWPerMK).toBeGreaterThan(1 / (volume / ka + (1 - volume) / kb));
  }
});
