import { describe, expect, test } from "@jest/globals";
import { compositionTotal, type Ingredient } from "../../src/catalogue/ingredient";
import { ingredients } from "../../src/catalogue/ingredients";
import { solutes } from "../../src/catalogue/solutes";
import { otherEntries, usdaRecords } from "./carriedOver";

const soluteNames = new Set(solutes.map(({ name }) => name));
const cases = ingredients.map((ingredient) => [ingredient.name, ingredient] as const);

describe("every ingredient of the catalogue", () => {
  test.each(cases)("%s adds up to 100 g", (_name, { composition }) => {
    expect(Math.abs(compositionTotal(composition) - 100)).toBeLessThanOrEqual(0.2);
  });

  test.each(cases)(
    "%s names only solutes the catalogue knows, none of them a hydrate",
    (_name, one) => {
      for (const name of Object.keys(one.composition.solutes ?? {})) {
        expect(soluteNames).toContain(name);
        expect(solutes.find((solute) => solute.name === name)?.hydrateOf).toBeUndefined();
      }
    },
  );

  test.each(cases)("%s has a spread of what it holds, smaller than what it holds", (_name, one) => {
    const grams = componentGrams(one);
    for (const [component, spread] of Object.entries(one.spread)) {
      expect(grams).toHaveProperty([component]);
      expect(spread).toBeLessThanOrEqual(Math.max(grams[component]!, 0.2));
    }
  });

  test("has a name of its own", () => {
    expect(new Set(ingredients.map(({ name }) => name)).size).toBe(ingredients.length);
  });

  test("says from where its measures are", () => {
    for (const one of ingredients) {
      const measured = one.gramsPerMl !== undefined || one.gramsPerPiece !== undefined;
      expect([one.name, one.measuresSource !== undefined]).toEqual([one.name, measured]);
    }
  });

  test("has a bulk density between flour dust and a heavy syrup", () => {
    for (const { name, gramsPerMl } of ingredients) {
      if (gramsPerMl === undefined) continue;
      expect([name, gramsPerMl.value > 0.15 && gramsPerMl.value < 1.55]).toEqual([name, true]);
      expect(gramsPerMl.relativeSpread).toBeGreaterThan(0);
    }
  });
});

describe("what the catalogue carries over", () => {
  const records = new Set(ingredients.map(({ sourceRecord }) => sourceRecord));
  test("is 110 records of the USDA database, release 26", () => {
    expect(usdaRecords).toHaveLength(110);
    for (const record of usdaRecords) {
      expect(records).toContain(`NDB ${record.toString().padStart(5, "0")}`);
    }
  });

  test("and 69 entries from elsewhere, one of them twice (as pieces and melted in)", () => {
    const names = ingredients.map(({ name }) => name);
    expect(otherEntries).toHaveLength(70);
    for (const name of otherEntries) expect(names).toContain(name);
  });
});

describe("pieces and what is melted in", () => {
  const pieces = ingredients.filter(({ name }) => name.endsWith(" (pieces)"));
  test("come in pairs of the same composition, of which only the pieces are inert", () => {
    expect(pieces.length).toBeGreaterThanOrEqual(10);
    for (const one of pieces) {
      const stem = one.name.replace(" (pieces)", "");
      const twin = ingredients.find(({ name }) =>
        [`${stem} (melted in)`, `${stem} (blended)`].includes(name),
      );
      expect(twin?.composition).toEqual(one.composition);
      expect([one.inclusion, twin?.inclusion]).toEqual([true, undefined]);
    }
  });

  test("whole nuts, seeds, biscuits and coatings do not dissolve; smooth pastes do", () => {
    const inert = new Set(ingredients.filter(({ inclusion }) => inclusion).map(({ name }) => name));
    for (const { name, group } of ingredients) {
      if (group === "biscuits") expect(inert).toContain(name);
      if (group === "nuts and seeds")
        expect([name, inert.has(name)]).toEqual([name, !isPaste(name)]);
    }
    expect(inert).toContain("chocolate coating, 30 % coconut oil");
  });
});

function isPaste(name: string): boolean {
  return /butter|paste|tahini|melted in/.test(name);
}

function componentGrams({ composition }: Ingredient): Readonly<Record<string, number>> {
  const { water, fat, protein, solutes: dissolved, higherSaccharides, ash, inert } = composition;
  const all = {
    water,
    fat,
    protein,
    ash,
    inert,
    higherSaccharides: higherSaccharides?.grams,
    ...dissolved,
  };
  return Object.fromEntries(
    Object.entries(all).flatMap(([name, grams]) => (grams === undefined ? [] : [[name, grams]])),
  );
}
