import { callFunction } from "../../../src/worksheet/callFunction";
import { asOwnIngredient, writeOut } from "../../../taskpane/batch/baseMix";
import { householdAmount } from "../../../taskpane/batch/household";
import { labelLine, labelParts } from "../../../taskpane/batch/labelText";
import { english } from "../../../taskpane/words/english";
import { costOf } from "../../../taskpane/batch/costOf";
import { readPriceColumns } from "../../../taskpane/prices/readPriceColumns";
import { restoreProportions, singleAdditions } from "../../../taskpane/batch/rescue";
import { HEADROOM_FRACTION, scaleBatch } from "../../../taskpane/batch/scale";
import type { RecognisedRecipe } from "../../../taskpane/bowl/recognised";
import type { BlockValue } from "../../../taskpane/host";
import { blockOf } from "../blockOf";
import { fakeHost } from "../fakeHost";

const recipe = [
  { name: "water", grams: 250 },
  { name: "sucrose", grams: 70 },
  { name: "lemon juice", grams: 30 },
];
const items = recipe.map(({ name }) => [name]);
const grams = recipe.map((row) => [row.grams]);
const pointOf = (rows: readonly { name: string; grams: number }[]) =>
  callFunction(
    "FREEZINGPOINT",
    rows.map(({ name }) => [name]),
    rows.map((row) => [row.grams]),
  )[0]?.[0] as number;

describe("scaling", () => {
  test("to a number of bars keeps the proportions", () => {
    const { rows, totalGrams, factor } = scaleBatch({ items, grams }, null, {
      kind: "pieces",
      pieces: 12,
      gramsEach: 70,
    })!;
    expect(totalGrams).toBe(840);
    expect(factor).toBeCloseTo(840 / 350, 12);
    expect(rows.map((row) => row.grams / row.before)).toEqual([factor, factor, factor]);
  });

  test("to moulds goes by the mix's density and leaves room for the ice", () => {
    const size = { kind: "moulds", pieces: 10, millilitresEach: 80, overrunFraction: 0 } as const;
    const density = callFunction("DENSITY", items, grams, 0)[0]?.[0] as number;
    expect(scaleBatch({ items, grams }, null, size)!.totalGrams).toBeCloseTo(
      10 * 80 * HEADROOM_FRACTION * density,
      9,
    );
    // Ice takes 1/0.9167 of water's room (IAPWS: 0.9167 g/mL at 0 °C), so a full mould would run over.
    expect(HEADROOM_FRACTION).toBeLessThan(0.9168 / 0.9998 + 0.005);
  });

  test("air beaten in makes the same moulds lighter", () => {
    const size = { kind: "moulds", pieces: 10, millilitresEach: 80 } as const;
    const [still, light] = [0, 0.5].map((overrunFraction) =>
      scaleBatch({ items, grams }, null, { ...size, overrunFraction })!,
    );
    expect(light!.totalGrams).toBeCloseTo(still!.totalGrams / 1.5, 9);
  });
});

describe("what is in the bowl", () => {
  const tooSweet = [
    { name: "water", grams: 250 },
    { name: "sucrose", grams: 100 },
    { name: "lemon juice", grams: 30 },
  ];
  test("30 g too much sugar: the rest in proportion, the sugar not added again", () => {
    const { factor, additions } = restoreProportions(recipe, tooSweet);
    expect(factor).toBeCloseTo(10 / 7, 12);
    expect(additions.map(({ name }) => name)).toEqual(["water", "lemon juice"]);
    const whole = tooSweet.map((row) => ({
      ...row,
      grams: row.grams + (additions.find(({ name }) => name === row.name)?.grams ?? 0),
    }));
    expect(pointOf(whole)).toBeCloseTo(pointOf(recipe), 9);
  });
  test("nothing to add when the proportions are right", () => {
    expect(restoreProportions(recipe, recipe).additions).toEqual([]);
  });
  test("one ingredient that may be added brings the freezing point back; more sugar cannot", () => {
    const names = ["water", "sucrose", "whole milk"];
    const steps = singleAdditions(tooSweet, pointOf(recipe), names, null);
    const told = [steps.next(), steps.next(), steps.next()].map(({ value }) => value);
    expect(told).toEqual([1, 2, 3]);
    const { value, done } = steps.next();
    const found = done === true ? value : [];
    // Milk is mostly water, so that it takes more of it.
    expect(found.map(({ name }) => name)).toEqual(["water", "whole milk"]);
    const added = tooSweet.map((row) =>
      row.name === "water" ? { ...row, grams: row.grams + found[0]!.grams } : row,
    );
    expect(pointOf(added)).toBeCloseTo(pointOf(recipe), 8);
  });
});

describe("what it costs", () => {
  const block = blockOf([
    ["Ingredient", "g", "Price per kg, €", "Notes"],
    ["water", 250, 0, ""],
    ["sucrose", 70, 1.2, ""],
    ["lemon juice", 30, "", ""],
  ]);
  const recognised = (names: readonly string[]) =>
    ({
      sheet: "Recipes",
      direction: "down",
      nameRange: `A2:A${names.length + 1}`,
      lines: names.map((name, at) => ({ name, cell: `A${at + 2}` })),
    }) as unknown as RecognisedRecipe;
  const read = (rows: BlockValue[][], select = "A2") =>
    readPriceColumns(
      fakeHost({ Recipes: rows }, select).host,
      recognised(rows.slice(1).map(([name]) => String(name))),
    );
  test("a price column is known by its header, with what it buys", async () => {
    expect(await read(block.values.map((row) => [...row]))).toEqual([
      { header: "Price per kg, €", basis: "kg", prices: [0, 1.2, null] },
    ]);
  });
  test("it is read beside the recipe, wherever the selection is by now", async () => {
    const far = [...block.values.map((row) => [...row]), ["", "", "", ""], ["x", 1, 2, 3]];
    const { host } = fakeHost({ Recipes: far }, "A6");
    const columns = await readPriceColumns(host, recognised(["water", "sucrose", "lemon juice"]));
    expect(columns.map(({ prices }) => prices)).toEqual([[0, 1.2, null]]);
  });
  test.each([
    ["Kosten je 100 g", "100 g"],
    ["Cost", null],
    ["Preis/kg", "kg"],
  ])("%s buys %s", async (header, basis) => {
    const [column] = await read([
      ["x", header],
      ["y", 1],
    ]);
    expect(column?.basis).toBe(basis);
  });
  test("a missing price is told of, not taken for nothing", () => {
    const cost = costOf(
      recipe.map((row, at) => {
        const price = block.values[at + 1]![2];
        return { ...row, price: typeof price === "number" ? price : null };
      }),
      "kg",
    );
    expect(cost.total).toBeCloseTo(0.084, 12);
    expect(cost.unpriced).toEqual(["lemon juice"]);
    expect(cost.per100g).toBeCloseTo(0.024, 12);
  });
});

describe("label text", () => {
  test("goes by descending mass and stresses allergens", () => {
    const parts = labelParts(
      [
        { name: "hazelnuts", grams: 20 },
        { name: "whole milk", grams: 300 },
        { name: "sucrose", grams: 60 },
      ],
      null,
    );
    expect(labelLine(parts, english)).toMatch(
      /^whole milk \(MILK.*\), sucrose, hazelnuts \(.*NUTS.*\)$/,
    );
  });
  test("an own ingredient without a statement is unknown, never free from", () => {
    const own = [
      ["name", "water", "sugars", "allergens"],
      ["plum jam", 35, 65, ""],
    ];
    expect(labelParts([{ name: "plum jam", grams: 1 }], own)[0]).toMatchObject({ isUnknown: true });
  });
});

describe("a base mix", () => {
  const base = {
    title: "White base",
    rows: [
      { name: "whole milk", grams: 300 },
      { name: "sucrose", grams: 100 },
    ],
  };
  test("written out gives its parts in their shares, sugar added to sugar", () => {
    const out = writeOut(
      [
        { name: "white base", grams: 200 },
        { name: "sucrose", grams: 10 },
      ],
      base,
    );
    expect(out).toEqual([
      { name: "whole milk", grams: 150 },
      { name: "sucrose", grams: 60 },
    ]);
  });
  test("as an own ingredient freezes as its parts do", () => {
    const mix = {
      title: base.title,
      items: base.rows.map(({ name }) => [name]),
      grams: base.rows.map((row) => [row.grams]),
      own: null,
    };
    const own = asOwnIngredient(mix, "milk")!;
    const [[direct] = []] = callFunction("FREEZINGPOINT", mix.items, mix.grams);
    const [[asOne] = []] = callFunction("FREEZINGPOINT", [["White base"]], [[100]], own);
    expect(asOne).toBeCloseTo(direct as number, 6);
  });
});

describe("household measures", () => {
  test("a cup of sugar is a cup, a spoon a spoon, and what has no bulk density has none", () => {
    const cup = callFunction("GRAMS", "sucrose", 1, "cup")[0]?.[0] as number;
    expect(householdAmount("sucrose", cup * 1.5)).toEqual({ count: 1.5, unit: "cup" });
    const spoon = callFunction("GRAMS", "sucrose", 1, "tbsp")[0]?.[0] as number;
    expect(householdAmount("sucrose", spoon * 2)).toEqual({ count: 2, unit: "tbsp" });
    expect(householdAmount("milk salts", 5)).toBeNull();
  });
});
