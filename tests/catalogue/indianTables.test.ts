import { beforeAll, describe, expect, test } from "@jest/globals";
import { ingredients } from "../../src/catalogue/ingredients";
import { dissolvedOf, indianTables, type IndianRow } from "../published/indianTables";
import { numberOf, ofRecipe } from "../worksheet/ask";

const carried = ingredients.filter(({ source }) => source === "ifct2017");
let rows: ReadonlyMap<string, IndianRow>;
beforeAll(async () => {
  rows = await indianTables();
});

const rowOf = (code: string): IndianRow => {
  const row = rows.get(code);
  if (row === undefined) throw new Error(`no row ${code}`);
  return row;
};

describe("what is carried over from the Indian Food Composition Tables 2017", () => {
  test("is 33 foods, each from a row of its own", () => {
    expect(carried).toHaveLength(33);
    expect(new Set(carried.map(({ sourceRecord }) => sourceRecord)).size).toBe(33);
  });

  test.each(carried.map((one) => [one.name, one] as const))("%s is as in its row", (_name, one) => {
    const [code, ...name] = one.sourceRecord!.split(", ");
    const row = rowOf(code!);
    expect(name.join(", ")).toBe(row.name);
    const { water, fat = 0, protein = 0, ash = 0, inert = 0, solutes = {} } = one.composition;
    const isAs = (grams: number, printed: number) =>
      expect(Math.abs(grams - printed)).toBeLessThanOrEqual(0.0051);
    isAs(water, row["water"]!);
    isAs(fat, row["fatce"]!);
    isAs(protein, row["protcnt"]!);
    for (const [solute, grams] of Object.entries(dissolvedOf(row)))
      isAs(solutes[solute] ?? 0, grams);
    isAs(ash + (solutes["sodium chloride"] ?? 0), row["ash"]!);
    // what is left is the fibre, the starch and what is measured of neither
    const sugarsAndAcids = Object.entries(solutes).reduce(
      (sum, [solute, grams]) => sum + (solute === "sodium chloride" ? 0 : grams),
      0,
    );
    expect(Math.abs(inert + sugarsAndAcids - row["fibtg"]! - row["choavldf"]!)).toBeLessThanOrEqual(
      0.06,
    );
  });

  test("of what dissolves the named parts add up to 100 ± 3 g (of ginger, short of starch, ± 4)", () => {
    for (const { name, sourceRecord, inclusion, group } of carried) {
      if (inclusion === true || group === "fats") continue;
      const row = rowOf(sourceRecord!.split(",")[0]!);
      const parts = ["water", "fatce", "protcnt", "ash", "fibtg", "starch", "orgac"].map(
        (key) => row[key]!,
      );
      const sum = parts.reduce((a, b) => a + b, sugarsOf(dissolvedOf(row)));
      expect([name, Math.abs(sum - 100) < (name === "ginger root" ? 4 : 3)]).toEqual([name, true]);
    }
  });
});

/** Fruit that the catalogue has from the USDA, with its rows in the Indian tables, by variety. */
const both: readonly (readonly [name: string, codes: readonly string[]])[] = [
  ["apple", ["E001", "E002", "E003", "E004"]],
  ["avocado", ["E007"]],
  ["banana", ["E009", "E010", "E011", "E012"]],
  ["blackberry", ["E013"]],
  ["sweet cherry", ["E014"]],
  ["grape", ["E022", "E023", "E024", "E025", "E026", "E027"]],
  ["lemon juice", ["E033"]],
  ["mango", ["E036", "E037", "E038", "E039", "E040", "E041", "E042"]],
  ["orange juice", ["E047"]],
  ["peach", ["E050"]],
  ["pineapple", ["E053"]],
  ["strawberry", ["E063"]],
  ["watermelon", ["E065", "E066"]],
];

/** By how much the Indian fruit freezes warmer (+) or colder (−), K, where that is outside; may only shrink. */
const outside: Readonly<Record<string, number>> = {
  blackberry: -0.5,
  "sweet cherry": 0.47,
  grape: 0.94,
  mango: 0.39,
  "orange juice": 0.21,
  pineapple: 0.18,
  strawberry: 0.24,
  watermelon: 0.42,
  avocado: 0.14,
};

const statedK = (name: string) => numberOf("UNCERTAINTY", name, 100, "freezing point");

const sugarsOf = (grams: Readonly<Record<string, number>>) =>
  ["sucrose", "glucose", "fructose", "maltose"].reduce((sum, of) => sum + (grams[of] ?? 0), 0);

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

/** Initial freezing points of the varieties, °C, of their water and what is dissolved in it. */
const freezingPointsC = (codes: readonly string[]) =>
  codes.map((code) => {
    const row = rowOf(code);
    const dissolved = Object.entries(dissolvedOf(row)).filter(([, grams]) => grams > 0);
    return ofRecipe("FREEZINGPOINT", { water: row["water"]!, ...Object.fromEntries(dissolved) });
  });

function compared([name, codes]: (typeof both)[number]) {
  const points = freezingPointsC(codes);
  const indianC = mean(points);
  const oursC = numberOf("FREEZINGPOINT", name, 100);
  const varietiesK = Math.sqrt(
    points.reduce((sum, point) => sum + (point - indianC) ** 2, 0) / Math.max(points.length - 1, 1),
  );
  return { name, missK: indianC - oursC, indianC, varietiesK };
}

describe("the same fruit in both tables: initial freezing point", () => {
  test("4 of 13 lie within the stated uncertainty and that of the varieties together, 9 within twice it", () => {
    const all = both.map(compared);
    const times = all.map(({ name, missK, varietiesK }) =>
      Math.abs(missK / Math.hypot(statedK(name), varietiesK)),
    );
    expect(times.filter((one) => one <= 1).length).toBeGreaterThanOrEqual(4);
    expect(times.filter((one) => one <= 2).length).toBeGreaterThanOrEqual(9);
    all.forEach(({ name, missK }, i) => {
      if (times[i]! <= 1) expect(outside).not.toHaveProperty([name]);
      else expect([name, missK.toFixed(2)]).toEqual([name, outside[name]?.toFixed(2)]);
    });
  });

  // Both ways alike: rows whose sugars are more than a third off what is known were not carried over either.
  test("entries from the Indian tables state an uncertainty that covers two thirds of the differences", () => {
    const fruit = carried.filter(({ group }) => group === "fruit");
    const statedFraction = mean(
      fruit.map(({ name }) => -statedK(name) / numberOf("FREEZINGPOINT", name, 100)),
    );
    const alike = both.filter(([name, codes]) => {
      const usda = sugarsOf(ingredients.find((one) => one.name === name)!.composition.solutes!);
      return (
        Math.abs(mean(codes.map((code) => sugarsOf(dissolvedOf(rowOf(code))))) / usda - 1) < 1 / 3
      );
    });
    expect(alike.length).toBeGreaterThanOrEqual(8);
    const times = alike
      .map(compared)
      .map(({ name, missK, indianC }) =>
        Math.abs(missK / Math.hypot(statedFraction * indianC, statedK(name))),
      );
    const within = (limit: number) => times.filter((one) => one <= limit).length / times.length;
    expect(within(1)).toBeGreaterThan(2 / 3);
    expect(within(2)).toBe(1);
  });
});
