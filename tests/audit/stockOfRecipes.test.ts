import type { Rows } from "./bookOf";
import { findingsOf } from "./findingsOf";

const recipe = (...lines: Rows): Rows => [["Material", "Mass, g"], ...lines];
const ICES: Readonly<Record<string, Rows>> = {
  Milk: recipe(["whole milk", 600], ["cream 35 % fat", 150], ["sucrose", 140], ["salt", 1]),
  Cocoa: recipe(["water", 640], ["sucrose", 200], ["cocoa powder", 80], ["salt", 2]),
  Lime: recipe(["water", 600], ["sucrose", 150], ["dextrose monohydrate", 60], ["lime juice", 90]),
};
const TOLD: Rows = [[], ["Contains milk."]];
const stock = (...items: readonly string[]): Rows => [
  ["Material", "On hand, kg", "Taken this week, kg"],
  ...items.map((item, at) => [item, 20 - at, 1 + (at % 4)]),
];
const ALL = [
  ...["whole milk", "cream 35 % fat", "sucrose", "salt", "cocoa powder", "dextrose monohydrate"],
  "lime juice",
];

const rulesOnStore = (sheets: Readonly<Record<string, Rows>>): string[] =>
  findingsOf(sheets)
    .filter(({ sheet }) => sheet === "Store")
    .map(({ rule }) => rule);

describe("A list of what several recipes are made of", () => {
  const ices = { ...ICES, Milk: [...ICES["Milk"]!, ...TOLD] };
  test("is what is in store, and no mix", () => {
    expect(rulesOnStore({ ...ices, Store: stock(...ALL) })).toEqual([]);
  });
  test("is so with a name that is another one in a recipe", () => {
    const Lime = recipe(
      ["water", 600],
      ["sucrose", 150],
      ["dextrose monohydrat", 60],
      ["lime juice", 90],
    );
    expect(rulesOnStore({ ...ices, Lime, Store: stock(...ALL) })).toEqual([]);
  });
  test("is a mix all the same where it is headed as they are", () => {
    const all = recipe(...ALL.map((item, at): Rows[number] => [item, 200 - 20 * at]));
    expect(rulesOnStore({ ...ices, Store: all })).toContain("caution-not-named");
  });
  test("is a mix of its own where others have little of it", () => {
    const own = stock("whole milk", "honey", "egg yolk", "walnuts", "banana", "sucrose", "salt");
    expect(rulesOnStore({ ...ices, Store: own })).toContain("caution-not-named");
  });
});
