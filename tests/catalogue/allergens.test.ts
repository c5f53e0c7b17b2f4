import { describe, expect, test } from "@jest/globals";
import { cautions } from "../../src/catalogue/cautions";
import { CAUTION_KEYS, type Allergen, type Ingredient } from "../../src/catalogue/ingredient";
import { ingredients } from "../../src/catalogue/ingredients";
import { kitchenFactsOf } from "../../src/catalogue/kitchenFacts";
import { solutes } from "../../src/catalogue/solutes";

const named = (name: string) => ingredients.find((one) => one.name === name)!;
const holds = ({ allergens }: Ingredient, allergen: Allergen) =>
  allergens !== "unknown" && allergens.includes(allergen);
const inGroup = (group: Ingredient["group"]) => ingredients.filter((one) => one.group === group);

describe("allergens by nature (21 U.S.C. 343(w) and Regulation (EU) 1169/2011, Annex II)", () => {
  test("everything of the dairy and the finished ice cream is of milk, every egg of egg", () => {
    for (const one of [...inGroup("dairy"), ...inGroup("finished")]) {
      expect([one.name, holds(one, "milk")]).toEqual([one.name, true]);
    }
    for (const one of inGroup("eggs"))
      expect([one.name, holds(one, "egg")]).toEqual([one.name, true]);
  });

  test("what has lactose in it is of milk", () => {
    for (const one of ingredients) {
      const lactose = one.composition.solutes?.["lactose"] ?? 0;
      // 0.07 g in egg white is an analyst's limit, not milk
      if (lactose > 0.1) expect([one.name, holds(one, "milk")]).toEqual([one.name, true]);
    }
  });

  test("biscuits, beer and malt are of gluten cereals", () => {
    for (const one of [...inGroup("biscuits"), named("beer"), named("barley malt syrup")]) {
      expect([one.name, holds(one, "gluten cereals")]).toEqual([one.name, true]);
    }
  });

  test.each([
    ["almonds", ["tree nuts"]],
    ["ground hazelnuts", ["tree nuts"]],
    ["pistachio paste", ["tree nuts"]],
    ["hazelnut praline (pieces)", ["tree nuts"]],
    ["peanuts", ["peanuts"]],
    ["peanut butter, salted", ["peanuts"]],
    ["sesame seeds", ["sesame"]],
    ["tahini", ["sesame"]],
    ["soy drink, sweetened", ["soy"]],
    ["red wine", ["sulphites"]],
    ["celery", ["celery"]],
    ["ghee", ["milk"]],
    ["peanut oil", ["peanuts"]],
    ["sesame oil", ["sesame"]],
    ["nutmeg", []],
    ["coconut flesh", []],
    ["coconut milk", []],
    ["lactitol powder", []],
    ["spirit 40 % vol", []],
    ["strawberry", []],
  ])("%s: %j", (name, expected) => {
    expect(named(name).allergens).toEqual(expected);
  });

  test("nothing is said to be free of allergens where the maker decides about all of them", () => {
    for (const name of [
      "semisweet chocolate (pieces)",
      "marshmallow (pieces)",
      "gelatin powder",
      "chocolate fudge syrup",
    ]) {
      expect(named(name).allergens).toBe("unknown");
      expect(named(name).allergensByMaker).not.toHaveLength(0);
    }
  });

  test("what depends on the maker is not said twice", () => {
    for (const { name, allergens, allergensByMaker = [] } of ingredients) {
      const twice =
        allergens === "unknown" ? [] : allergensByMaker.filter((one) => allergens.includes(one));
      expect([name, twice]).toEqual([name, []]);
    }
  });
});

describe("cautions", () => {
  test("each has a sentence and a source", () => {
    expect(Object.keys(cautions).sort()).toEqual([...CAUTION_KEYS].sort());
    for (const { text, sources } of Object.values(cautions)) {
      expect(text).toMatch(/^[A-Z].*\.$/);
      expect(sources.length).toBeGreaterThan(0);
    }
  });

  test("honey, raw egg, alcohol and whole nuts carry theirs", () => {
    for (const one of inGroup("honey")) expect(one.cautions).toContain("honey and infants");
    for (const name of ["whole egg", "egg white", "egg yolk"]) {
      expect(named(name).cautions).toContain("raw egg");
    }
    for (const one of ingredients) {
      if ((one.composition.solutes?.["ethanol"] ?? 0) > 1)
        expect([one.name, one.cautions]).toEqual([one.name, ["alcohol"]]);
    }
    for (const name of ["almonds", "hazelnuts", "walnuts", "peanuts", "pistachios"]) {
      expect(named(name).cautions).toContain("whole nuts and choking");
    }
    expect(named("ground almonds").cautions).toEqual([]);
  });

  test("pasteurised yolk does not carry the caution of raw egg", () => {
    expect(named("sugared egg yolk, pasteurised").cautions).toEqual([]);
  });
});

describe("a solute in the kitchen", () => {
  const solute = (name: string) => kitchenFactsOf(solutes.find((one) => one.name === name)!);

  test("has the allergens and cautions of what is sold under its name", () => {
    expect(solute("lactose").allergens).toEqual(["milk"]);
    expect(solute("milk salts").allergens).toEqual(["milk"]);
    expect(solute("xylitol").cautions).toEqual(["laxative polyols", "xylitol and dogs"]);
    expect(solute("glycerol").cautions).toEqual(["glycerol and children"]);
    expect(solute("propylene glycol").cautions).toEqual(["propylene glycol", "not food"]);
    expect(solute("ethanol").cautions).toEqual(["alcohol"]);
    expect(solute("sucrose").allergens).toEqual([]);
  });

  test("that is no food says so", () => {
    for (const one of solutes) {
      if (!one.food && one.name !== "propylene glycol") {
        expect([one.name, kitchenFactsOf(one).cautions]).toEqual([one.name, ["not food"]]);
      }
    }
    expect(solute("methanol").cautions).toEqual(["not food"]);
  });

  test("an ingredient's facts are its own", () => {
    expect(kitchenFactsOf(named("tahini"))).toBe(named("tahini"));
  });
});
