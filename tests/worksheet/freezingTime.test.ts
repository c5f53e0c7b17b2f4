import fc from "fast-check";
import { freezingTimeS } from "../../src/engine/freezingTime";
import { cellOf, column, numberOf, problemOf } from "./ask";

const sorbet = [column(["water", "sucrose"]), column([200, 50])] as const;
const hours = (...rest: readonly unknown[]) => numberOf("FREEZINGTIME", ...sorbet, ...rest);

// Geankoplis, Transport Processes and Unit Operations, example "Freezing of meat" by Plank's equation, from
// memory: 63.5 mm slabs, 75 % water, λ = 251.2 kJ/kg, −2.8 °C in air at −28.9 °C, 17 W/(m²·K): 2.395e4 s
test("Plank's equation for slabs of meat gives the 6.65 h of the textbook", () => {
  const piece = {
    ...{ halfThicknessM: 0.0635 / 2, shapeDivisor: 1, densityKgPerM3: 1057 },
    ...{ conductivityWPerMK: 1.038, surfaceWPerM2K: 17, surroundingsC: -28.9 },
  };
  expect(freezingTimeS(piece, [{ heatJPerKg: 251_200, meanC: -2.8 }]) / 2.395e4).toBeCloseTo(1, 2);
});

test("pure water at 0 °C freezes by Plank's equation with the constants of ice", () => {
  const [density, latent, conductivity, surface, half] = [918, 333_600, 2.29, 25, 0.025];
  const plank = ((density * latent) / 20) * (half / surface + half ** 2 / (2 * conductivity));
  const found = numberOf("FREEZINGTIME", "water", 1, 50, -20, 0, -0.1, "blast");
  expect(found / (plank / 3600)).toBeCloseTo(1, 2);
});

// ΔH of the whole way at its mean temperature, the bath taken as infinitely good: t ∝ d²
test("twice as thick takes two to four times as long", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 100, noNaN: true }),
      fc.constantFrom("still", "fan", "blast", "brine"),
      (mm, airflow) => {
        const ratio = hours(2 * mm, -25, 4, -18, airflow) / hours(mm, -25, 4, -18, airflow);
        expect(ratio).toBeGreaterThan(2);
        expect(ratio).toBeLessThan(4);
      },
    ),
    { numRuns: 40 },
  );
});

test("a cylinder takes half, a sphere a third as long as a slab of that thickness", () => {
  const slab = hours(30, -18, 4, -15, "still", "slab");
  expect(hours(30, -18, 4, -15, "still", "cylinder")).toBeCloseTo(slab / 2, 10);
  expect(hours(30, -18, 4, -15, "still", "sphere")).toBeCloseTo(slab / 3, 10);
});

test("colder air, better wind and a warmer core take less time", () => {
  expect(hours(30, -22, 4, -15)).toBeLessThan(hours(30, -18, 4, -15));
  expect(hours(30, -18, 4, -15, "fan")).toBeLessThan(hours(30, -18, 4, -15, "still"));
  expect(hours(30, -18, 4, -12)).toBeLessThan(hours(30, -18, 4, -15));
});

test("warming up from the freezer to serving is answered too", () => {
  expect(hours(30, 20, -22, -12)).toBeGreaterThan(0.1);
  expect(hours(30, 20, -22, -12)).toBeLessThan(hours(30, -10, -22, -12));
});

test.each([
  [["honey", 100, 25, -18], "% of water"],
  [[...sorbet, 25, 5], "must lie between the two"],
  [[...sorbet, 25, -18, -15, -15], "is the start temperature already"],
  [[...sorbet, 0.5, -18], "thicknessMm"],
  [[...sorbet, 25, -18, 4, -15, "gale"], '"still", "fan", "blast" or "brine"'],
])("%j is declined in words", (args, sentence) => {
  const [items, grams, ...rest] = args;
  expect(problemOf("FREEZINGTIME", items, grams, ...rest).message).toContain(sentence);
});

test("the core is taken 3 K above the air when it is left out", () => {
  expect(cellOf("FREEZINGTIME", ...sorbet, 25, -18)).toBe(hours(25, -18, 4, -15));
});
