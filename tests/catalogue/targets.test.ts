import { describe, expect, test } from "@jest/globals";
import { findTarget } from "../../src/catalogue/findTarget";
import type { ServingTarget } from "../../src/catalogue/target";
import { servingTargets } from "../../src/catalogue/targets";
import { callFunction } from "../../src/worksheet/callFunction";

const cases = servingTargets.map((target) => [target.name, target] as const);

function iceOf(grams: Readonly<Record<string, number>>, target: ServingTarget): unknown {
  const { temperatureC, basis } = target;
  const column = (cells: readonly unknown[]) => cells.map((cell) => [cell]);
  const items = column(Object.keys(grams));
  return callFunction(
    "ICEFRACTION",
    items,
    column(Object.values(grams)),
    temperatureC,
    basis,
  )[0]?.[0];
}

function meets(grams: Readonly<Record<string, number>>, name: string): boolean {
  const target = findTarget(name)!;
  const ice = iceOf(grams, target);
  return typeof ice === "number" && ice >= target.iceFrom && ice <= target.iceTo;
}

describe("a serving target", () => {
  test.each(cases)("%s is met by its own textbook mix, and not just barely", (_name, target) => {
    const ice = iceOf(target.textbookMix.grams, target);
    expect(ice).toBeGreaterThan(target.iceFrom + 0.01);
    expect(ice).toBeLessThan(target.iceTo - 0.01);
  });

  test.each(cases)("%s has a band of sensible width at a sensible temperature", (_name, target) => {
    expect(target.temperatureC).toBeGreaterThanOrEqual(-25);
    expect(target.temperatureC).toBeLessThan(0);
    expect(target.iceTo - target.iceFrom).toBeGreaterThanOrEqual(0.1);
    expect(target.iceTo - target.iceFrom).toBeLessThanOrEqual(0.4);
  });

  test("is found by its names in English and German, and no name stands for two", () => {
    const names = servingTargets.flatMap(({ name, aliases: { en, de } }) => [name, ...en, ...de]);
    expect(new Set(names.map((name) => findTarget(name))).size).toBe(servingTargets.length);
    expect(new Set(names).size).toBe(names.length);
    expect(findTarget("Eis am Stiel")?.name).toBe("firm bar at −18");
    expect(findTarget("  SCOOPED  at -13 ")?.name).toBe("scooped at −13");
    expect(findTarget("al dente")).toBeUndefined();
  });
});

// compositions of textbooks, e.g. Goff & Hartel, Ice Cream, 7th ed., 2013; the styles are common practice
describe("textbook mixes of the trade", () => {
  const iceCream = { "cream 35 % fat": 343, "skim milk powder": 94, sucrose: 150, water: 413 };
  const sorbet = { water: 720, sucrose: 280 };
  const gelato = {
    "whole milk": 640,
    "cream 35 % fat": 120,
    "skim milk powder": 40,
    sucrose: 150,
    "glucose monohydrate": 50,
  };

  test("ice cream of 12 % fat, 11 % milk solids and 15 % sugar is scooped at −13", () => {
    expect(meets(iceCream, "scooped at −13")).toBe(true);
  });

  test("so is a sorbet of 28 % sugar, and a gelato", () => {
    expect(meets(sorbet, "scooped at −13")).toBe(true);
    expect(meets(gelato, "scooped at −13")).toBe(true);
  });

  test("gelato is spread with the spatula a degree warmer, where plain ice cream is too hard", () => {
    expect(meets(gelato, "spread with the spatula")).toBe(true);
    expect(meets(iceCream, "spread with the spatula")).toBe(false);
  });

  test("none of them is scooped straight from a freezer at −18", () => {
    for (const mix of [iceCream, sorbet, gelato]) expect(meets(mix, "scooped at −18")).toBe(false);
  });

  test("water with 12 to 20 % sugar makes a granita to scrape at home, with 17 to 20 % one to churn", () => {
    for (const sugar of [120, 150, 200]) {
      expect(meets({ water: 1000 - sugar, sucrose: sugar }, "scraped granita")).toBe(true);
    }
    for (const sugar of [170, 200]) {
      expect(meets({ water: 1000 - sugar, sucrose: sugar }, "spooned granita")).toBe(true);
    }
  });

  test("a sorbet bar and an ice-cream bar are firm at −18", () => {
    expect(meets(sorbet, "firm bar at −18")).toBe(true);
    expect(meets(iceCream, "firm bar at −18")).toBe(true);
  });

  test("water alone, and honey alone, meet nothing", () => {
    for (const { name } of servingTargets) {
      expect(meets({ water: 1000 }, name)).toBe(false);
      expect(meets({ "honey, average": 1000 }, name)).toBe(false);
    }
  });
});
