import { freezingTables } from "../../src/catalogue/fit/points";
import { isopiestic } from "../../src/catalogue/fit/figures/isopiestic";
import { osmotic25 } from "../../src/catalogue/fit/figures/osmotic25";
import { bibliography } from "../../src/foundation/bibliography";
import { callFunction } from "../../src/worksheet/callFunction";
import { dairySucrose } from "../published/dairySucrose";
import { eutectics } from "../published/eutectics";
import { mixtures } from "../published/mixtures";
import { osmometerStandards } from "../published/osmometerStandards";
import { aimsOf, isReached } from "./compared/aims";
import { idealMisses, ourMisses, withinStated } from "./compared/misses";
import { comparisons } from "./comparisons";
import { FEWEST_FOR_A_PICTURE } from "./page/SourceSection";
import { validationPage } from "./validationPage";

const all = comparisons();
const html = validationPage();
const comparisonOf = (id: string) => all.find((each) => each.id === id)!;
const escaped = (text: string) => text.replace(/&/g, "&amp;");

describe("every printed table is on the page", () => {
  const tables = [...freezingTables, ...osmotic25, ...isopiestic];

  test.each(tables.map((table) => [table.solute, bibliography[table.source], table] as const))(
    "%s: %s",
    (solute, source, { use, reason }) => {
      expect(html).toContain(escaped(source));
      if (use === "rejected") expect(html).toContain(`${solute}: ${reason!}`);
    },
  );

  test("and each of their figures, once", () => {
    const of = (quantity: string, ids: readonly string[]) =>
      all
        .filter((one) => one.quantity === quantity && ids.some((id) => one.id.startsWith(id)))
        .reduce((sum, { figures, declined }) => sum + figures.length + declined.length, 0);
    const rows = (columns: readonly (readonly number[])[]) => columns.flat().length;
    const known = freezingTables.filter(({ solute }) => solute !== "1-propanol");
    expect(of("freezing", ["freezing-", "aside-"])).toBe(
      rows(known.map(({ massPercent }) => massPercent)),
    );
    expect(of("activity", ["osmotic-"])).toBe(rows(osmotic25.map((one) => one.molalityMolPerKg)));
    expect(of("activity", ["isopiestic-", "pairs-"])).toBe(
      rows(isopiestic.map((one) => one.molalityMolPerKg)),
    );
    expect(of("freezing", ["mixture-"])).toBe(mixtures.flatMap(([, some]) => some).length);
    expect(of("freezing", ["eutectics"])).toBe(eutectics.length);
  });

  test("those kept back from the fits come first", () => {
    const uses = all.map(({ use }) => use);
    expect(uses.lastIndexOf("held out")).toBeLessThan(uses.indexOf("fit"));
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
  });
});

test("no number on the page is none, and it asks for nothing from outside", () => {
  expect(html).not.toMatch(/NaN|undefined|Infinity|\[object|>null</);
  expect(html).not.toMatch(/<script|<link|src=|https?:/);
  expect(html.length).toBeLessThan(1_000_000);
});

test("every picture has a name and a description, and its figures in a table", () => {
  const shown = all.filter(({ use }) => use !== "set aside");
  const drawn = shown.filter(({ figures }) => figures.length >= FEWEST_FOR_A_PICTURE);
  const pictures =
    html.match(
      /<svg[^>]*role="img"[^>]*>(<title[^>]*>[^<]+<\/title><desc[^>]*>[^<]{40,}<\/desc>)?/g,
    ) ?? [];
  expect(pictures.length).toBe(2 * (drawn.length + 1)); // one pair for all of them together
  for (const picture of pictures) expect(picture).toContain("</desc>");
  const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(html.match(/<details class="all-figures">/g)?.length).toBe(shown.length);
});

describe("the misses on the page are those that cells show", () => {
  const rms = (misses: readonly number[]) =>
    Math.sqrt(misses.reduce((sum, miss) => sum + miss ** 2, 0) / misses.length);
  const cell = (grams: number, water: number, item: string) =>
    callFunction("FREEZINGPOINT", [["water"], [item]], [[water], [grams]])[0]?.[0] as number;
  const sectionOf = (id: string) => html.split(`<section id="${id}"`)[1]!.split("</section>")[0]!;

  test("sucrose by the dairy table", () => {
    const misses = dairySucrose.map(
      ([grams, depressionK]) => cell(grams, 100, "sucrose") + depressionK,
    );
    expect(sectionOf("dairy-sucrose")).toContain(`<b>${rms(misses).toPrecision(2)} K</b>`);
    expect(ourMisses(comparisonOf("dairy-sucrose").figures).rms).toBeCloseTo(rms(misses), 9);
  });

  test("osmometer standards, and the ideal law beside them", () => {
    const misses = osmometerStandards.map(
      ({ gramsPerKgWater, depressionK }) =>
        cell(gramsPerKgWater, 1000, "sodium chloride") + depressionK,
    );
    expect(sectionOf("osmometer")).toContain(`<b>${rms(misses).toPrecision(2)} K</b>`);
    const ideal = osmometerStandards.map(
      ({ gramsPerKgWater, depressionK }) => depressionK - (1.86 * 2 * gramsPerKgWater) / 58.44,
    );
    expect(idealMisses(comparisonOf("osmometer").figures)!.rms).toBeCloseTo(rms(ideal), 4);
    expect(sectionOf("osmometer")).toContain(`Ideal law: RMS ${rms(ideal).toPrecision(2)} K`);
  });
});

describe("stated uncertainties hold over the whole page, print's own counted", () => {
  const figures = (use: string) =>
    all
      .filter((one) => one.use === use && one.quantity === "freezing")
      .flatMap((one) => one.figures);

  test("of all freezing points kept back 68 % lie within one and 92 % within two", () => {
    const { stated, once, twice } = withinStated(figures("held out"));
    expect(stated).toBeGreaterThan(450);
    expect(once / stated).toBeGreaterThan(0.68);
    expect(twice / stated).toBeGreaterThan(0.92);
  });

  test("and are not bought by wideness: a quarter of them holds for at most 35 %", () => {
    const quarter = figures("held out").map((one) => ({
      ...one,
      band: one.band === null ? null : one.band / 4,
      printedBand: one.printedBand / 4,
    }));
    const { stated, once } = withinStated(quarter);
    expect(once / stated).toBeLessThan(0.35);
  });
});

describe("aims", () => {
  test.each(aimsOf(all).map((one) => [one.name, one] as const))(
    "%s: has figures, and when missed its size and reason",
    (name, one) => {
      expect(one.figures.length).toBeGreaterThan(0);
      expect(html).toContain(escaped(name));
      expect(isReached(one)).toBe(one.reason === null);
    },
  );

  test("each that is missed is marked so in words", () => {
    const missed = aimsOf(all).filter((one) => !isReached(one));
    expect(missed.length).toBeGreaterThan(0);
    expect(html.match(/✗ missed/g)?.length).toBe(missed.length);
  });
});
