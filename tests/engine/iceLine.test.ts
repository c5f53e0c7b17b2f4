import fc from "fast-check";
import * as psychrolib from "psychrolib";
import { iceLineThetaMolPerKg } from "../../src/engine/iceLine";
import { iceLineTemperatureC } from "../../src/engine/iceLineTemperature";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../../src/foundation/constants";

const iceActivity = (temperatureC: number) =>
  Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * iceLineThetaMolPerKg(temperatureC));

/** Vapour pressure of supercooled water, Pa: Goff & Gratch (1946) as printed by WMO, No. 49 (1988). */
function goffGratchPa(temperatureC: number): number {
  const ratio = 373.16 / (temperatureC + 273.15);
  const log10 =
    -7.90298 * (ratio - 1) +
    5.02808 * Math.log10(ratio) -
    1.3816e-7 * (10 ** (11.344 * (1 - 1 / ratio)) - 1) +
    8.1328e-3 * (10 ** (-3.49149 * (ratio - 1)) - 1) +
    Math.log10(101324.6);
  return 10 ** log10;
}

describe("the ice line", () => {
  beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

  test.each([-1, -2, -5, -10, -15, -20, -25, -30])(
    "at %d °C is the ice/water vapour pressure ratio of psychrolib (ASHRAE, ice) and Goff & Gratch (water) to 0.3 %%",
    (temperatureC) => {
      const ratio = psychrolib.GetSatVapPres(temperatureC) / goffGratchPa(temperatureC);
      const atZero = psychrolib.GetSatVapPres(-0.001) / goffGratchPa(-0.001);
      expect(Math.abs(iceActivity(temperatureC) / (ratio / atZero) - 1)).toBeLessThan(0.003);
    },
  );

  test.each([1, 5, 10, 20])(
    "agrees %d K below freezing with Robinson & Stokes 1959, −ln a = 9.687e-3 ΔT + 4.76e-6 ΔT², to 0.5 %%",
    (depressionK) => {
      const printed = 9.687e-3 * depressionK + 4.76e-6 * depressionK ** 2;
      const ours = -Math.log(iceActivity(-depressionK));
      expect(Math.abs(ours / printed - 1)).toBeLessThan(0.005);
    },
  );

  test("parts from that formula in the deep cold: 0.75 K at −40 °C, as the two sets of equations do", () => {
    const printed = 9.687e-3 * 40 + 4.76e-6 * 40 ** 2;
    const reached = iceLineTemperatureC(printed / WATER_MOLAR_MASS_KG_PER_MOL);
    expect(Math.abs(reached + 40)).toBeGreaterThan(0.5);
    expect(Math.abs(reached + 40)).toBeLessThan(1);
  });

  test("its slope at 0 °C gives the cryoscopic constant 1.860 K·kg/mol of USP <785> to 0.2 %", () => {
    const kf = 0.001 / iceLineThetaMolPerKg(-0.001);
    expect(Math.abs(kf / 1.86 - 1)).toBeLessThan(0.002);
  });

  test("is 0 at 0 °C and negative above", () => {
    expect(iceLineThetaMolPerKg(0)).toBe(0);
    expect(iceLineThetaMolPerKg(5)).toBeLessThan(0);
  });

  test("its inverse gives the temperature back to 1e-11 of itself", () => {
    fc.assert(
      fc.property(fc.double({ min: -99.9, max: -1e-4, noNaN: true }), (temperatureC) => {
        const back = iceLineTemperatureC(iceLineThetaMolPerKg(temperatureC));
        // near 0 °C the difference of two logarithms keeps 1e-14 mol/kg at best
        expect(Math.abs(back - temperatureC)).toBeLessThan(1e-11 + 1e-11 * Math.abs(temperatureC));
      }),
      { numRuns: 2000, examples: [[-0.0970146275066952]] },
    );
  });

  test("its inverse stops at −100 °C and at 0 °C", () => {
    expect(iceLineTemperatureC(1000)).toBe(-100);
    expect(iceLineTemperatureC(-1)).toBe(0);
  });
});
