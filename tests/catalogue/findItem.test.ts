import { describe, expect, test } from "@jest/globals";
import { ambiguousNames } from "../../src/catalogue/ambiguousNames";
import { findItem } from "../../src/catalogue/findItem";
import { allNames } from "../../src/catalogue/names/allNames";
import type { ItemMatch } from "../../src/catalogue/names/itemMatch";
import { ingredients } from "../../src/catalogue/ingredients";
import { normalName } from "../../src/catalogue/normalName";
import { solutes } from "../../src/catalogue/solutes";

function meaning(match: ItemMatch): string {
  if (match.kind === "solute") return `solute ${match.solute.name}`;
  if (match.kind === "ingredient") return `ingredient ${match.ingredient.name}`;
  return match.kind === "ambiguous" ? `ambiguous ${match.word}` : "unknown";
}

describe("a name in a cell", () => {
  test("never stands for two things", () => {
    const meanings = new Map<string, string>();
    for (const [name, match] of allNames()) {
      const other = meanings.get(normalName(name)) ?? meaning(match);
      expect([name, meaning(match)]).toEqual([name, other]);
      meanings.set(normalName(name), other);
    }
    expect(meanings.size).toBeGreaterThan(800);
  });

  test("finds every entry of the catalogue by its own name", () => {
    for (const { name } of solutes) expect(meaning(findItem(name))).toBe(`solute ${name}`);
    for (const { name } of ingredients) expect(meaning(findItem(name))).toBe(`ingredient ${name}`);
  });

  test.each([
    ["Vollmilch", "ingredient whole milk"],
    ["Sahne 35 %", "ingredient cream 35 % fat"],
    ["Magermilchpulver", "ingredient skim milk powder"],
    ["Erdbeeren", "ingredient strawberry"],
    ["Haushaltszucker", "solute sucrose"],
    ["table sugar", "solute sucrose"],
    ["caster sugar", "solute sucrose"],
    ["sugar", "solute sucrose"],
    ["Zucker", "solute sucrose"],
    ["salt", "solute sodium chloride"],
    ["honey", "ingredient honey, average"],
    ["Honig", "ingredient honey, average"],
    ["glucose", "solute glucose"],
    ["dextrose monohydrate", "solute glucose monohydrate"],
    ["water", "ingredient water"],
    ["ice", "ingredient ice"],
    ["Eigelb", "ingredient egg yolk"],
  ])("%s is the %s", (name, expected) => {
    expect(meaning(findItem(name))).toBe(expected);
  });

  test.each([
    ["case", "WHOLE MILK"],
    ["spaces around and doubled", "  whole   milk "],
    ["a no-break space", "whole\u00a0milk"],
    ["full-width letters (Unicode NFKC)", "ｗｈｏｌｅ ｍｉｌｋ"],
  ])("is matched regardless of %s", (_what, typed) => {
    expect(meaning(findItem(typed))).toBe("ingredient whole milk");
  });

  test("is matched with and without a space before %, in composed and decomposed umlauts", () => {
    expect(meaning(findItem("cream 35% fat"))).toBe("ingredient cream 35 % fat");
    expect(meaning(findItem("Fruchtsa\u0308uren"))).toBe("solute fruit acids");
  });

  test("'water lost' is left to the recipe, which takes it off the water", () => {
    expect(findItem("water lost").kind).toBe("unknown");
  });
});

describe("an ambiguous word", () => {
  test.each(Object.entries(ambiguousNames))(
    "%s is answered with choices that are names",
    (word, choices) => {
      expect(findItem(word)).toEqual({ kind: "ambiguous", word, choices });
      expect(choices.length).toBeGreaterThanOrEqual(2);
      for (const choice of choices) expect(findItem(choice).kind).toMatch(/^(solute|ingredient)$/);
    },
  );

  test.each([
    "glucose syrup",
    "glucose sirup",
    "Glukosesirup",
    "corn syrup",
    "dextrose",
    "Traubenzucker",
    "chocolate",
    "Schokolade",
    "cream",
    "Sahne",
    "milk",
    "Milch",
    "sugar syrup",
    "butter",
    "milk powder",
    "raisins",
    "caramel",
    "marshmallow",
    "toffee",
    "praline",
    "vodka",
    "wine",
    "maltodextrin",
  ])("%s is one", (word) => {
    expect(findItem(word).kind).toBe("ambiguous");
  });
});

describe("an unknown name", () => {
  test.each([
    ["sucros", "sucrose"],
    ["strawbery", "strawberry"],
    ["Erdbere", "Erdbeere"],
    ["hole milk", "whole milk"],
    ["fructsoe", "fructose"],
    ["pistacios", "pistachios"],
    ["sodium cloride", "sodium chloride"],
    ["glucosse syrop", "glucose syrup"],
  ])("%s is answered with %s among the nearest", (typed, nearest) => {
    const match = findItem(typed);
    expect(match.kind === "unknown" ? match.nearest : []).toContain(nearest);
  });

  test.each(["", "   ", "xqzv", "0", "💧💧💧💧"])("%j resembles nothing", (typed) => {
    expect(findItem(typed)).toEqual({ kind: "unknown", nearest: [] });
  });

  test("is looked for once: a thousand cells of one misspelling cost one search", () => {
    expect(findItem("strawbery")).toBe(findItem("strawbery"));
  });

  test("never suggests more than three, nor one thing twice", () => {
    for (const typed of ["sug", "hony", "glucose sirup", "chocolat", "creme", "milch 3 %"]) {
      const match = findItem(typed);
      if (match.kind !== "unknown") continue;
      expect(match.nearest.length).toBeLessThanOrEqual(3);
      expect(new Set(match.nearest).size).toBe(match.nearest.length);
    }
  });
});
