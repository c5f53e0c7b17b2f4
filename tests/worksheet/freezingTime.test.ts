import fc from "fast-check";
import { cellOf, column, numberOf, problemOf } from "./ask";

const sorbet = [column(["water", "sucrose"]), column([200, 50])] as const;
const hours = (...rest: readonly unknown[]) => numberOf("FREEZINGTIME", ...sorbet, ...rest);

// Plank 1941 by hand, with the constants of ice at 0 °C (CRC: 917 kg/m³, 333.6 kJ/kg; 2.2 W/(m·K)) and the
// airflow's h: start and core beside 0 °C leave only the freezing
test.each([
  ["slab", 1],
  ["cylinder", 2],
  ["sphere", 3],
])("pure water at 0 °C, a %s, freezes by Plank's equation within 2 %%", (shape, dimensions) => {
  const [surface, half] = [25, 0.025];
  const perArea = half / surface + half ** 2 / (2 * 2.22);
  const plank = ((917 * 333_600) / 20) * (perArea / dimensions);
  const found = numberOf("FREEZINGTIME", "water", 1, 50, -20, 0, -0.01, "blast", shape);
  expect(Math.abs(found / (plank / 3600) - 1)).toBeLessThan(0.02);
});

// common practice, no source: ice pops of 25 mm need a night in a household freezer, some hours with a fan
test("an ice pop needs 6 to 14 h in still air, less than half an hour in brine", () => {
  const pop = [column(["water", "sucrose"]), column([85, 15]), 25, -18, 15, -14] as const;
  expect(numberOf("FREEZINGTIME", ...pop)).toBeGreaterThan(6);
  expect(numberOf("FREEZINGTIME", ...pop)).toBeLessThan(14);
  expect(numberOf("FREEZINGTIME", ...pop, "brine")).toBeLessThan(1);
});

test("twice as thick takes two to four times as long", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 50, noNaN: true }),
      fc.constantFrom("still", "fan", "blast", "brine"),
      (mm, airflow) => {
        const ratio = hours(2 * mm, -25, 4, -18, airflow) / hours(mm, -25, 4, -18, airflow);
        return ratio > 2 && ratio < 4;
      },
    ),
    { numRuns: 40 },
  );
});

test("a slab takes longer than a cylinder, that longer than a sphere", () => {
  const times = ["slab", "cylinder", "sphere"].map((shape) =>
    hours(30, -18, 4, -15, "still", shape),
  );
  expect(times[0]! / times[1]!).toBeGreaterThan(1.8);
  expect(times[0]! / times[2]!).toBeGreaterThan(2.6);
  expect(times[0]! / times[2]!).toBeLessThan(3.4);
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

test("the core is taken 3 K above the air when it is left out, the start 4 °C", () => {
  expect(cellOf("FREEZINGTIME", ...sorbet, 25, -18)).toBe(hours(25, -18, 4, -15));
});

describe("what the method does not hold for is declined in words", () => {
  test.each([
    [
      "honey, which has no freezing point",
      ["honey", 100, 25, -18],
      "outsideValidity",
      "no ice forms",
    ],
    [
      "a bar of 50 % water",
      [column(["water", "sucrose"]), column([50, 50]), 25, -18],
      "outsideValidity",
      "50 % of water; the method is checked from 55 % up",
    ],
    ["chilling", [...sorbet, 25, -18, 20, 4], "outsideValidity", "not below the freezing point"],
    ["thawing", [...sorbet, 25, 20, -18, 2], "outsideValidity", "not below the freezing point"],
    [
      "a surface that melts",
      [...sorbet, 120, 20, -18, -10, "blast"],
      "outsideValidity",
      "the surface melts",
    ],
    ["a block in brine", [...sorbet, 300, -18, 4, -15, "brine"], "outsideValidity", "Biot number"],
    [
      "a core just below the freezing point in a strong wind",
      [...sorbet, 60, -30, 4, -3, "blast"],
      "outsideValidity",
      "less than 2 K below the freezing point",
    ],
    ["liquid nitrogen", [...sorbet, 25, -50, 4, -18], "outsideValidity", "-45 °C"],
    ["a core warmer than it can get", [...sorbet, 25, 5], "badInput", "must lie between the two"],
    ["no change", [...sorbet, 25, -18, -15, -15], "badInput", "is the start temperature already"],
    ["a foil", [...sorbet, 0.5, -18], "badInput", "thicknessMm"],
    [
      "a storm",
      [...sorbet, 25, -18, 4, -15, "gale"],
      "badInput",
      '"still", "fan", "blast" or "brine"',
    ],
  ])("%s", (_what, [items, grams, ...rest], kind, sentence) => {
    const problem = problemOf("FREEZINGTIME", items, grams, ...(rest as unknown[]));
    expect(problem.message).toContain(sentence);
    expect(problem.kind).toBe(kind);
  });
});
