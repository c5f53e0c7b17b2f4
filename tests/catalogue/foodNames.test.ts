import { expect, test } from "@jest/globals";
import { findItem } from "../../src/catalogue/findItem";
import { askedBack, foodNames } from "./foodNames";
import { noIngredients, strangeFoods } from "./strangeNames";

function meaning(name: string): string {
  const match = findItem(name);
  if (match.kind === "solute") return match.solute.name;
  return match.kind === "ingredient" ? match.ingredient.name : match.kind;
}

test.each(Object.entries(foodNames))("%s is known as cooks and shops write it", (entry, names) => {
  expect(names.filter((name) => meaning(name) !== entry)).toEqual([]);
});

test("a name that may be in pieces or melted in, or of two strengths, is asked back about", () => {
  expect(askedBack.filter((name) => meaning(name) !== "ambiguous")).toEqual([]);
});

test("what is melted is not asked about pieces, what is chopped not about melting", () => {
  const choices = (name: string) => {
    const match = findItem(name);
    return match.kind === "ambiguous" ? match.choices : [];
  };
  expect(choices("melted chocolate").filter((one) => !one.endsWith("(melted in)"))).toEqual([]);
  expect(choices("gehackte Schokolade").filter((one) => !one.endsWith("(pieces)"))).toEqual([]);
  expect(choices("melted chocolate").length).toBeGreaterThan(1);
  expect(choices("gehackte Schokolade").length).toBeGreaterThan(1);
});

test.each([
  ["food of another composition", strangeFoods],
  ["heading, label or dish", noIngredients],
])("no %s is taken for an entry", (_what, names) => {
  expect(
    names.map((name) => [name, meaning(name)]).filter(([, kind]) => kind !== "unknown"),
  ).toEqual([]);
});
