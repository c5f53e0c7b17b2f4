import { callFunction } from "../../src/worksheet/callFunction";
import { calculated } from "./calculated";
import { cellOf, column, numberOf, problemOf } from "./ask";

const base = { water: 600, sucrose: 120, "whole milk": 200, "fine salt": 1 };
const names = column(Object.keys(base));
const grams = column(Object.values(base));

describe("AMOUNTFOR refuses", () => {
  test("what is out of reach, with the range that is not", () => {
    const { kind, message } = problemOf(
      "AMOUNTFOR",
      names,
      grams,
      "whole milk",
      "freezing point",
      -9,
    );
    expect(kind).toBe("outsideValidity");
    expect(message).toMatch(/reaches from -\d.* to -0\./);
  });

  test.each([
    [["methanol", "freezing point", -3], "not a food"],
    [["glucose", "ice fraction", 0.7], "temperature"],
    [["glucose", "freezing point", 3], "from -60 to 0"],
    [["glucose", "freezing point", -3, null, null, null, "sweetness"], "replacing"],
    [["glucose", "freezing point", -3, null, null, "water", "sweetness"], '"water" is not sweet'],
    [["glucose", "freezing point", -3, null, null, "glucose"], "is the item itself"],
  ])("%j", (rest, sentence) => {
    expect(problemOf("AMOUNTFOR", names, grams, ...rest).message).toContain(sentence);
  });
});

test("a water activity below 0 °C is declined wherever it is asked", () => {
  expect(problemOf("UNCERTAINTY", names, grams, "water activity", -18).message).toContain(
    "0 to 100 °C",
  );
  expect(
    problemOf("AMOUNTFOR", names, grams, "sucrose", "water activity", 0.9, -18).message,
  ).toContain("0 to 100 °C");
});

describe("WORKING", () => {
  test.each([
    ["a sorbet", { water: 600, sucrose: 180, strawberries: 300, "fine salt": 1 }, -12],
    [
      "an ice cream",
      { "whole milk": 500, "cream 35 % fat": 200, sucrose: 130, "egg yolk": 40 },
      -18,
    ],
    ["honey, which does not freeze", { honey: 100 }, -18],
    ["a bar with pieces", { water: 300, sucrose: 90, pistachios: 60, "spirit 40 % vol": 20 }, -15],
    ["below the end of freezing", { water: 100, sucrose: 50 }, -50],
    ["above freezing", { water: 100, sucrose: 50 }, 10],
  ])("of %s recomputes, line by line", (_title, recipe, temperature) => {
    const [header, ...lines] = callFunction(
      "WORKING",
      column(Object.keys(recipe)),
      column(Object.values(recipe)),
      temperature,
    );
    expect(header).toEqual(["step", "formula", "numbers", "result", "unit", "source"]);
    expect(lines.length).toBeGreaterThan(8);
    for (const [step, , numbers, result] of lines) {
      if (typeof result !== "number") continue;
      const found = calculated(numbers as string);
      expect([step, Math.abs(found - result) <= 3e-6 * Math.max(Math.abs(result), 1e-2)]).toEqual([
        step,
        true,
      ]);
    }
  });

  test("ends with the numbers of the other functions", () => {
    const lines = callFunction("WORKING", names, grams, -12);
    const results = lines.map((row) => row[3]);
    expect(results).toContain(numberOf("FREEZINGPOINT", names, grams));
    expect(results).toContain(numberOf("ICEFRACTION", names, grams, -12));
    expect(results).toContain(numberOf("ICEFRACTION", names, grams, -12, "mix"));
    expect(results).toContain(cellOf("TEXTURE", names, grams, -12));
  });
});

describe("CAUTIONS", () => {
  const told = (recipe: Readonly<Record<string, number>>, own: unknown = null) =>
    callFunction("CAUTIONS", column(Object.keys(recipe)), column(Object.values(recipe)), own)
      .map(([text, because]) => `${text as string} | ${because as string}`)
      .join("\n");

  test("honey, nuts, alcohol and milk are named with what brings them", () => {
    const text = told({
      water: 500,
      honey: 100,
      pistachios: 50,
      "spirit 40 % vol": 40,
      "skim milk powder": 30,
    });
    expect(text).toMatch(/under 12 months.* \| honey, average/);
    expect(text).toMatch(/choke.* \| pistachios/);
    expect(text).toMatch(/alcohol.* \| spirit 40 % vol/);
    expect(text).toMatch(/Allergens: milk.* \| skim milk powder/);
  });

  test("own ingredients without a statement print unknown, never free from", () => {
    const own = [
      ["name", "water", "sucrose", "allergens"],
      ["mine", 50, 50, ""],
      ["stated", 50, 50, "soy"],
    ];
    const text = told({ mine: 50, stated: 50 }, own);
    expect(text).toContain("Allergens: unknown. | mine");
    expect(text).toContain("Allergens: soy. | stated");
    expect(text).toContain("no statement that anything is free from");
  });

  test("much lactose is called sandy, more sugar than dissolves is named", () => {
    expect(told({ water: 100, lactose: 12 })).toContain("sandy");
    expect(told({ water: 100, sucrose: 230 })).toContain("More sucrose than dissolves");
  });

  test("alcohol of an own ingredient is told too", () => {
    const own = [
      ["name", "abv", "water"],
      ["mine", 40, 66.6],
    ];
    expect(told({ water: 100, mine: 50 }, own)).toMatch(/Contains alcohol.* \| ethanol/);
  });

  test("what is no food is refused", () => {
    expect(problemOf("CAUTIONS", [["water", "ethylene glycol"]], [[70, 30]]).message).toContain(
      "not a food",
    );
  });
});
