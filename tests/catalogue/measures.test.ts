import { describe, expect, test } from "@jest/globals";
import { findItem } from "../../src/catalogue/findItem";
import { findMeasure } from "../../src/catalogue/findMeasure";
import { gramsInOne } from "../../src/catalogue/gramsInOne";
import { kitchenFactsOf, type KitchenFacts } from "../../src/catalogue/kitchenFacts";
import { measures } from "../../src/catalogue/measures";
import { normalName } from "../../src/catalogue/normalName";

function facts(name: string): KitchenFacts {
  const match = findItem(name);
  if (match.kind === "solute") return kitchenFactsOf(match.solute);
  if (match.kind === "ingredient") return match.ingredient;
  throw new Error(`${name} is ${match.kind}`);
}

const grams = (name: string, unit: string) => gramsInOne(findMeasure(unit)!, name, facts(name));

describe("units", () => {
  // NIST Handbook 44, Appendix C, and NIST SP 811, Appendix B, as printed
  test.each([
    ["tsp", 4.929],
    ["tbsp", 14.787],
    ["fl oz", 29.574],
    ["cup", 236.588],
    ["pint", 473.176],
    ["quart", 946.353],
    ["gallon", 3785.412],
    ["UK fl oz", 28.413],
    ["UK pint", 568.261],
    ["dL", 100],
    ["L", 1000],
  ])("one %s is %d mL", (unit, millilitres) => {
    const measure = findMeasure(unit);
    expect(measure?.kind === "volume" ? measure.millilitres : 0).toBeCloseTo(millilitres, 3);
  });

  test.each([
    ["oz", 28.34952],
    ["lb", 453.59237],
    ["kg", 1000],
    ["mg", 0.001],
    ["g", 1],
  ])("one %s is %d g", (unit, expected) => {
    const measure = findMeasure(unit);
    expect(measure?.kind === "mass" ? measure.grams : 0).toBeCloseTo(expected, 5);
  });

  test("cups and spoons of other countries are other units (common practice: 250, 20, 15, 5 mL)", () => {
    const volumes = ["metric cup", "AU tbsp", "EL", "TL"].map((unit) => {
      const measure = findMeasure(unit);
      return measure?.kind === "volume" ? measure.millilitres : 0;
    });
    expect(volumes).toEqual([250, 20, 15, 5]);
  });

  test("21 CFR 101.9(b)(5)(viii): the cup of a nutrition label is 240 mL", () => {
    const measure = findMeasure("label cup");
    expect(measure?.kind === "volume" ? measure.millilitres : 0).toBe(240);
  });

  test("are found in any case, in the plural, with a full stop, in German", () => {
    for (const [typed, unit] of [
      ["CUPS", "cup"],
      ["Tbsp.", "tbsp"],
      ["ml", "mL"],
      ["Esslöffel", "metric tbsp"],
      ["Stück", "piece"],
      ["Gramm", "g"],
    ] as const) {
      expect(findMeasure(typed)?.name).toBe(unit);
    }
  });

  test("that nobody has defined are not units: a pinch, a Tasse", () => {
    for (const typed of ["pinch", "Prise", "Tasse", "handful", ""])
      expect(findMeasure(typed)).toBeUndefined();
  });

  test("no name stands for two units", () => {
    const names = measures.flatMap(({ name, aliases }) => [name, ...aliases].map(normalName));
    expect(new Set(names).size).toBe(names.length);
  });
});

describe("USDA Standard Reference, release 26: household weights", () => {
  test.each([
    ["sugar", "cup", 200],
    ["granulated sugar", "tsp", 4.2],
    ["icing sugar", "cup", 120],
    ["icing sugar, sifted", "cup", 100],
    ["brown sugar", "cup", 220],
    ["brown sugar, loose", "cup", 145],
    ["honey", "cup", 339],
    ["honey", "tbsp", 21],
    ["maple syrup", "tbsp", 20],
    ["molasses", "cup", 337],
    ["whole milk", "cup", 244],
    ["cream 37 % fat", "cup", 238],
    ["skim milk powder", "cup", 120],
    ["sweetened condensed milk", "fl oz", 38.2],
    ["unsalted butter", "tbsp", 14.2],
    ["lemon juice", "cup", 244],
    ["cocoa powder", "tbsp", 5.4],
    ["salt", "tsp", 6],
    ["salt", "tbsp", 18],
    ["vanilla extract", "tbsp", 13],
    ["ground almonds", "cup", 95],
    ["almonds", "cup", 143],
    ["whole egg", "piece", 50],
    ["egg yolk", "piece", 17],
    ["banana", "piece", 118],
  ])("%s, one %s: %d g, within its stated spread", (name, unit, expected) => {
    const spread = facts(name).gramsPerMl?.relativeSpread ?? 0;
    expect(Math.abs((grams(name, unit) as number) / expected - 1)).toBeLessThanOrEqual(
      Math.max(spread, 0.005) + 0.005,
    );
  });

  test("flaky salt weighs little more than half as much as fine salt", () => {
    const ratio = (grams("flaky salt", "tsp") as number) / (grams("fine salt", "tsp") as number);
    expect(ratio).toBeGreaterThan(0.5);
    expect(ratio).toBeLessThan(0.7);
  });
});

describe("a unit that does not fit", () => {
  test("is refused in a sentence naming the unit and the item", () => {
    expect(grams("honey", "piece")).toEqual({
      kind: "badInput",
      message: 'unit "piece": "honey" does not come in pieces of a known weight; use g.',
    });
    expect(grams("shortbread", "cup")).toEqual({
      kind: "outsideValidity",
      message: 'unit "cup": no bulk density of "shortbread" is known; weigh it.',
    });
  });
});
