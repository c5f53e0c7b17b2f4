import { additiveDepressionK } from "../../src/engine/additiveDepression";
import { boilingPointC } from "../../src/engine/boilingPoint";
import { freezingPointC } from "../../src/engine/freezingPoint";
import { glassTransitionC } from "../../src/engine/glassTransition";
import { maxFreezeConcentrated } from "../../src/engine/maxFreezeConcentrated";
import { osmoticPressureMPa } from "../../src/engine/osmoticPressure";
import { rootBetween } from "../../src/engine/rootBetween";
import { saturationPressureKPa } from "../../src/engine/saturationPressure";
import { waterDensityKgPerL } from "../../src/engine/waterDensity";
import { solutionOf } from "../published/solutionOf";

const within = (value: unknown, expected: number, tolerance: number) =>
  expect(Math.abs((value as number) - expected)).toBeLessThanOrEqual(tolerance);

describe("boiling", () => {
  test("pure water boils at 99.974 °C at 101.325 kPa (Wagner & Pruß 1993, ITS-90)", () => {
    within(boilingPointC(solutionOf(100, {}), 101.325), 99.974, 0.002);
  });

  test("65.46 % sucrose boils 3.9 K higher (Tressler, Zimmerman & Willits 1941), within 0.4 K", () => {
    const rise = (boilingPointC(solutionOf(34.54, { sucrose: 65.46 }), 101.325) as number) - 99.974;
    within(rise, 3.9, 0.4);
  });

  test("dilute solutions rise by 0.512 K·kg/mol (OpenStax Chemistry 2e, table 11.2) within 2 %", () => {
    const rise =
      (boilingPointC(solutionOf(1000, { glucose: 18.0156 }), 101.325) as number) - 99.9743;
    within(rise / 0.0512, 1, 0.02);
  });

  test("vapour pressures of water at 25 and 100 °C are 3.1699 and 101.42 kPa (steam tables)", () => {
    within(saturationPressureKPa(25), 3.1699, 0.0002);
    within(saturationPressureKPa(100), 101.42, 0.01);
  });

  test("a pressure of zero and one that is never reached are refused in words", () => {
    expect(boilingPointC(solutionOf(100, {}), 0)).toMatchObject({ kind: "badInput" });
    expect(boilingPointC(solutionOf(100, {}), 1)).toMatchObject({ kind: "outsideValidity" });
  });
});

describe("osmotic pressure", () => {
  test("tends to m·R·T·ρ (van 't Hoff): 0.01 mol/kg at 25 °C give 24.7 kPa", () => {
    within(osmoticPressureMPa(solutionOf(1000, { glucose: 1.80156 })), 0.02472, 0.0001);
  });

  test("1 mol/kg sucrose at 25 °C gives 2.70 MPa (φ = 1.088 to 1.092, Robinson & Stokes 1959)", () => {
    within(osmoticPressureMPa(solutionOf(1000, { sucrose: 342.297 })), 2.695, 0.015);
  });

  test("is refused outside 0 to 100 °C", () => {
    expect(osmoticPressureMPa(solutionOf(100, {}), -5)).toMatchObject({ kind: "outsideValidity" });
  });

  test("water weighs 0.99821 and 0.99705 kg/L at 20 and 25 °C (Kell 1975)", () => {
    within(waterDensityKgPerL(20), 0.99821, 0.00001);
    within(waterDensityKgPerL(25), 0.99705, 0.00001);
  });
});

describe("glass", () => {
  const sucrose = { grams: 80, dryTransitionC: 62, gordonTaylor: 5.42 };

  test("dry and infinitely dilute limits are those of the parts (Gordon & Taylor 1952)", () => {
    within(glassTransitionC([sucrose], 0), 62, 1e-9);
    within(glassTransitionC([{ ...sucrose, grams: 1e-9 }], 100), -135, 1e-6);
  });

  test("80 % sucrose turns to glass near −46 °C (Roos & Karel 1991, T_g′ at C_g′), within 6 K", () => {
    within(glassTransitionC([sucrose], 20), -46, 6);
  });

  test("a dry half-and-half mix lies below the mean of its parts (Fox 1956)", () => {
    const fructose = { grams: 80, dryTransitionC: 5, gordonTaylor: 3.76 };
    const mixed = glassTransitionC([sucrose, fructose], 0) as number;
    within(mixed, 2 / (1 / 335.15 + 1 / 278.15) - 273.15, 1e-9);
    expect(mixed).toBeLessThan((62 + 5) / 2);
  });

  test("says why there is no answer when too much is unknown", () => {
    const unknown = { grams: 80, dryTransitionC: null, gordonTaylor: null };
    expect(glassTransitionC([sucrose, unknown], 5)).toMatchObject({ kind: "outsideValidity" });
    expect(glassTransitionC([], 5)).toMatchObject({ kind: "outsideValidity" });
  });
});

describe("maximal freeze-concentration", () => {
  const sucrose = { grams: 90, temperatureC: -34, solidsFraction: 0.8 };
  const ethanol = { grams: 10, temperatureC: -118, solidsFraction: 0.75 };
  const salt = { grams: 10, temperatureC: null, solidsFraction: null };

  test("of one substance is its own", () => {
    expect(maxFreezeConcentrated([sucrose])).toEqual({ temperatureC: -34, solidsFraction: 0.8 });
  });

  test("alcohol pulls it down, a little salt leaves it, a brine has none", () => {
    expect(maxFreezeConcentrated([sucrose, ethanol])).toMatchObject({ temperatureC: -42.4 });
    expect(maxFreezeConcentrated([sucrose, salt])).toMatchObject({ temperatureC: -34 });
    expect(maxFreezeConcentrated([salt])).toMatchObject({ kind: "outsideValidity" });
    expect(maxFreezeConcentrated([])).toMatchObject({ kind: "outsideValidity" });
  });
});

describe("the sum of binary depressions", () => {
  test("of one solute is its own depression", () => {
    const one = solutionOf(100, { sucrose: 50 });
    within(additiveDepressionK(one), -(freezingPointC(one) as number), 1e-12);
  });

  test("is warmer than the mixture rule for sucrose with salt, as Kleinhans & Mazur 2007 found", () => {
    const mix = solutionOf(1000, { sucrose: 243, "sodium chloride": 5.844 });
    expect(additiveDepressionK(mix)).toBeLessThan(-(freezingPointC(mix) as number));
  });
});

describe("the root finder", () => {
  test("finds π from sine and the cube root of two, and says null without a change of sign", () => {
    within(rootBetween(Math.sin, 3, 4), Math.PI, 1e-12);
    within(
      rootBetween((x) => x ** 3 - 2, 0, 5),
      Math.cbrt(2),
      1e-12,
    );
    expect(rootBetween((x) => x * x + 1, -1, 1)).toBeNull();
    expect(rootBetween((x) => x, 0, 1)).toBe(0);
  });
});
