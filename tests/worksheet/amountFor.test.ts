import fc from "fast-check";
import { isProblem } from "../../src/foundation/problem";
import { cellOf, column, numberOf, ofRecipe } from "./ask";

interface Recipe {
  readonly [name: string]: number;
  readonly sucrose: number;
  readonly inulin: number;
}

const SWEET = [
  "sucrose",
  "glucose monohydrate",
  "fructose",
  "honey",
  "glucose syrup DE 42",
] as const;
const ITEMS = [...SWEET, "water", "whole milk", "strawberries", "fine salt"] as const;

const FUNCTIONS = {
  "freezing point": "FREEZINGPOINT",
  "ice fraction": "ICEFRACTION",
  "water activity": "WATERACTIVITY",
  sweetness: "SWEETNESS",
} as const;
type Quantity = keyof typeof FUNCTIONS;

/** The recipe with so many grams of the item, by the contract's words for each way to make room. */
const WAYS: Readonly<Record<string, (recipe: Recipe, item: string, grams: number) => Recipe>> = {
  "all else as given": (recipe, item, grams) => ({ ...recipe, [item]: grams }),
  "the mass held": (recipe, item, grams) => {
    const mass = Object.values(recipe).reduce((sum, value) => sum + value, 0);
    const share = (mass - grams) / (mass - recipe[item]!);
    const rest = Object.entries(recipe).map(([name, value]) => [name, value * share]);
    return { ...recipe, ...Object.fromEntries(rest), [item]: grams };
  },
  "gram for gram": (recipe, item, grams) => ({
    ...recipe,
    [item]: grams,
    inulin: recipe.inulin - (grams - recipe[item]!),
  }),
  "at equal sweetness": (recipe, item, grams) => ({
    ...recipe,
    [item]: grams,
    sucrose: recipe.sucrose - sweetnessOf(item) * (grams - recipe[item]!),
  }),
};
const sweetnessOf = (item: string) => numberOf("SWEETNESS", item, 100) / 100;

/** What stands for each way in the call: the item that gives way, and what is held. */
const ARGUMENTS: Readonly<Record<string, readonly [string | null, string]>> = {
  "all else as given": [null, "others"],
  "the mass held": [null, "mass"],
  "gram for gram": ["inulin", "others"],
  "at equal sweetness": ["sucrose", "sweetness"],
};

const amount = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const recipes = fc.record({
  water: amount(300, 700),
  sucrose: amount(60, 200),
  "glucose monohydrate": amount(5, 60),
  fructose: amount(5, 40),
  honey: amount(5, 50),
  "glucose syrup DE 42": amount(5, 60),
  "whole milk": amount(20, 300),
  strawberries: amount(20, 300),
  "fine salt": amount(0.2, 3),
  inulin: amount(40, 80),
});

/** An amount of the item that leaves room for what gives way. */
function amountWithin(recipe: Recipe, item: string, way: string, share: number): number {
  const now = recipe[item]!;
  const room = { "gram for gram": recipe.inulin, "at equal sweetness": recipe.sucrose / 2 }[way];
  const most = room === undefined ? 2 * now : now + 0.9 * Math.min(room, now);
  return 0.2 * now + share * (most - 0.2 * now);
}

const answers = (quantity: Quantity, recipe: Recipe, temperature: number): unknown => {
  const [names, grams] = [column(Object.keys(recipe)), column(Object.values(recipe))];
  const takesTemperature = quantity === "ice fraction" || quantity === "water activity";
  return cellOf(FUNCTIONS[quantity], names, grams, ...(takesTemperature ? [temperature] : []));
};

describe.each(Object.keys(FUNCTIONS) as Quantity[])("AMOUNTFOR of a %s", (quantity) => {
  const ways = Object.keys(WAYS).filter(
    (way) => !(quantity === "sweetness" && way === "at equal sweetness"), // it then cannot change
  );

  test.each(ways)("with %s: put back, the recipe has the value to 1e-9", (way) => {
    const items = way === "at equal sweetness" ? SWEET.slice(1) : ITEMS;
    fc.assert(
      fc.property(
        recipes,
        fc.constantFrom(...items),
        amount(0, 1),
        amount(-20, -4),
        (recipe, item, share, cold) => {
          const temperature = quantity === "water activity" ? 25 : cold;
          const goal = WAYS[way]!(recipe, item, amountWithin(recipe, item, way, share));
          const value = answers(quantity, goal, temperature) as number;
          fc.pre(typeof value === "number" && value !== 0);
          const found = cellOf(
            "AMOUNTFOR",
            column(Object.keys(recipe)),
            column(Object.values(recipe)),
            item,
            quantity,
            value,
            temperature,
            null,
            ...ARGUMENTS[way]!,
          );
          if (isProblem(found)) throw new Error(found.message);
          const met = answers(quantity, WAYS[way]!(recipe, item, found as number), temperature);
          expect(Math.abs((met as number) - value)).toBeLessThan(1e-9);
        },
      ),
      { numRuns: 60, seed: 20261125 },
    );
  });
});

test("the item may be new to the recipe", () => {
  const recipe = { water: 600, sucrose: 150 };
  const [names, grams] = [column(Object.keys(recipe)), column(Object.values(recipe))];
  const found = numberOf("AMOUNTFOR", names, grams, "ethanol", "ice fraction", 0.55, -14);
  expect(found).toBeGreaterThan(10);
  const met = ofRecipe("ICEFRACTION", { ...recipe, ethanol: found }, -14);
  expect(Math.abs(met - 0.55)).toBeLessThan(1e-9);
});
