import { freezingTables } from "../../src/catalogue/fit/points";
import { bibliography } from "../../src/foundation/bibliography";
import { callFunction } from "../../src/worksheet/callFunction";
import { dairySucrose } from "../published/dairySucrose";
import { osmometerStandards } from "../published/osmometerStandards";
import { idealMisses, ourMisses } from "./comparison";
import { comparisons, validationPage } from "./validationPage";

const all = comparisons();
const html = validationPage();
const comparisonOf = (id: string) => all.find((each) => each.id === id)!;

test("every table of printed freezing points that is used is on the page, the kept-back ones first", () => {
  for (const { source, use } of freezingTables) {
    if (use === "rejected") continue;
    expect(html).toContain(bibliography[source].replace(/&/g, "&amp;"));
  }
  const uses = all.map(({ use }) => use);
  expect(uses.lastIndexOf("held out")).toBeLessThan(uses.indexOf("fit"));
  const printed = all.reduce((sum, { figures }) => sum + figures.length, 0);
  expect(printed).toBeGreaterThan(1400);
});

test("no number on the page is none", () => {
  expect(html).not.toMatch(/NaN|undefined|Infinity|\[object/);
});

test("every picture says in words what it shows and has its figures in a table", () => {
  const pictures = html.match(/<svg[^>]*>/g) ?? [];
  expect(pictures.length).toBe(2 * all.length);
  for (const picture of pictures) expect(picture).toMatch(/role="img" aria-label="[^"]{30,}"/);
  expect(html.match(/<details>/g)?.length).toBe(all.length);
});

describe("the misses are those that a cell would show", () => {
  const rms = (misses: readonly number[]) =>
    Math.sqrt(misses.reduce((sum, miss) => sum + miss ** 2, 0) / misses.length);
  const cell = (grams: number, water: number, item: string) =>
    callFunction("FREEZINGPOINT", [["water"], [item]], [[water], [grams]])[0]?.[0] as number;

  test("sucrose by the dairy table", () => {
    const misses = dairySucrose.map(
      ([grams, depressionK]) => cell(grams, 100, "sucrose") + depressionK,
    );
    expect(ourMisses(comparisonOf("dairy-sucrose").figures).rms).toBeCloseTo(rms(misses), 6);
  });

  test("osmometer standards, and the ideal law beside them", () => {
    const misses = osmometerStandards.map(
      ({ gramsPerKgWater, depressionK }) =>
        cell(gramsPerKgWater, 1000, "sodium chloride") + depressionK,
    );
    const { figures } = comparisonOf("osmometer");
    expect(ourMisses(figures).rms).toBeCloseTo(rms(misses), 6);
    const ideal = osmometerStandards.map(
      ({ gramsPerKgWater, depressionK }) => depressionK - (1.86 * 2 * gramsPerKgWater) / 58.44,
    );
    expect(idealMisses(figures)!.rms).toBeCloseTo(rms(ideal), 4);
  });
});

test("an aim that is missed is on the page in so many words", () => {
  expect(html.match(/>missed</g)?.length).toBeGreaterThan(0);
  expect(html.match(/>reached</g)?.length).toBeGreaterThan(8);
});
