import { rootMeanSquare } from "../../src/catalogue/fit/residuals";
import { freezingPointC } from "../../src/engine/freezingPoint";
import { iceShare } from "../../src/engine/iceShare";
import { solutionThetaMolPerKg } from "../../src/engine/solutionTheta";
import { iceLineTemperatureC } from "../../src/engine/iceLineTemperature";
import { maxFreezeConcentrated } from "../../src/engine/maxFreezeConcentrated";
import { higherSaccharides } from "../../src/catalogue/higherSaccharides";
import { iceCreamMixes, leightonFreezingPointC } from "../published/iceCreamMixes";
import { meanHoney } from "../published/honeyActivity";
import { soluteNamed, solutionOf } from "../published/solutionOf";

describe("ice-cream mixes against Leighton's method (dairy textbooks)", () => {
  const missOf = (mix: (typeof iceCreamMixes)[number]) => {
    const computed = freezingPointC(
      solutionOf(mix.water, {
        sucrose: mix.sucrose,
        lactose: 0.545 * mix.milkSolidsNotFat,
        "milk salts": 0.078 * mix.milkSolidsNotFat,
      }),
    );
    return (computed as number) - leightonFreezingPointC(mix);
  };

  test.each(iceCreamMixes)("$name: within 0.15 K", (mix) => {
    expect(Math.abs(missOf(mix))).toBeLessThan(0.15);
  });

  test("all of them: RMS 0.1 K", () => {
    expect(rootMeanSquare(iceCreamMixes.map(missOf))).toBeLessThan(0.1);
  });
});

describe("honey", () => {
  const honeyAt = (moisture: number) => {
    const drier = (100 - moisture) / (100 - 17.2);
    const grams = Object.fromEntries(
      Object.entries(meanHoney).map(([name, value]) => [name, value * drier]),
    );
    const parts = Object.entries(grams).map(([name, value]) => {
      const entry = name.startsWith("higher") ? higherSaccharides(504) : soluteNamed(name);
      return {
        grams: value,
        temperatureC: entry.maxFreezeTemperature?.value ?? null,
        solidsFraction: entry.maxFreezeSolids?.value ?? null,
      };
    });
    const mean = maxFreezeConcentrated(parts);
    if (!("temperatureC" in mean)) throw new Error(mean.message);
    return { solution: solutionOf(moisture, grams), maxFreezeC: mean.temperatureC };
  };

  test.each([15, 17.2, 20])(
    "with %d %% water (Codex CXS 12: at most 20) would meet ice only below its Tm′, so it holds none at −18 or −60 °C",
    (moisture) => {
      const { solution, maxFreezeC } = honeyAt(moisture);
      const iceLineC = iceLineTemperatureC(solutionThetaMolPerKg(solution, "freezing"));
      expect(iceLineC).toBeLessThan(maxFreezeC);
      expect(iceShare(solution, maxFreezeC, -18)).toBe(0);
      expect(iceShare(solution, maxFreezeC, -60)).toBe(0);
    },
  );

  test("ice at −18 °C needs 35 to 42 % water", () => {
    expect(iceShare(honeyAt(35).solution, null, -18)).toBe(0);
    expect(iceShare(honeyAt(42).solution, null, -18)).toBeGreaterThan(0);
  });
});
