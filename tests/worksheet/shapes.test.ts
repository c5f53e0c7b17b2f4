import fc from "fast-check";
import { isProblem } from "../../src/foundation/problem";
import { callFunction } from "../../src/worksheet/callFunction";
import { cellOf, column, numberOf, problemOf } from "./ask";

const items = ["water", "sucrose", "glucose"];
const recipes = [
  [200, 40, 30],
  [300, 40, 0],
  [250, 90, 10],
  [100, 5, 5],
];
const one = (grams: readonly number[]) => numberOf("FREEZINGPOINT", [items], [grams]);

describe("Recipes along one axis", () => {
  test("items in a row: each row of grams is a recipe, answered as a column", () => {
    expect(callFunction("FREEZINGPOINT", [items], recipes)).toEqual(column(recipes.map(one)));
  });

  test("items in a column: each column of grams is a recipe, answered as a row", () => {
    const across = items.map((_, item) => recipes.map((recipe) => recipe[item]));
    expect(callFunction("FREEZINGPOINT", column(items), across)).toEqual([recipes.map(one)]);
  });

  test("recipes in a column and temperatures in a row make a rectangle", () => {
    const answer = callFunction("ICEFRACTION", [items], recipes, [[-5, -10]]);
    expect(answer.map((row) => row.length)).toEqual([2, 2, 2, 2]);
    expect(answer[2]![1]).toBe(numberOf("ICEFRACTION", [items], [recipes[2]], -10));
  });

  test("a single name takes the shape of grams", () => {
    const answer = callFunction(
      "COMPONENT",
      "whole milk",
      [
        [100, 200],
        [300, 0.5],
      ],
      "water",
    );
    expect(answer.map((row) => row.length)).toEqual([2, 2]);
    expect(answer[1]![0]).toBeCloseTo(3 * (answer[0]![0] as number), 9);
  });

  test.each([
    ["crosswise", [items], column([1, 2, 3])],
    ["of different length", column(items), column([1, 2])],
    ["two-dimensional", [items, items], [[1, 2, 3]]],
    [
      "ragged",
      [items],
      [
        [1, 2, 3],
        [1, 2],
      ],
    ],
  ])("items and grams %s are one #VALUE!", (_case, names, grams) => {
    expect(problemOf("FREEZINGPOINT", names, grams).kind).toBe("badInput");
  });

  test("arguments that do not fit are one #VALUE! that states the shapes", () => {
    const { kind, message } = problemOf("ICEFRACTION", [items], recipes, column([-5, -6, -7]));
    expect(kind).toBe("badInput");
    expect(message).toContain("mix 4 × 1");
    expect(message).toContain("temperature 3 × 1");
  });

  test("a table function takes one recipe", () => {
    expect(problemOf("FREEZINGCURVE", [items], recipes).message).toContain("one recipe at a time");
  });
});

describe("5,000 recipes of 8 ingredients from one cell", () => {
  const eight = [
    "water",
    "sucrose",
    "glucose",
    "whole milk",
    "honey",
    "fine salt",
    "strawberries",
    "watr",
  ];
  const sheet = Array.from({ length: 5000 }, (_, row): unknown[] => [
    ...[400, 100 + (row % 7), 20, 100, 10, 0.5, 150],
    row === 16 ? 3 : null,
  ]);

  test("a wrong name that only row 17 uses spoils row 17 only", () => {
    const answer = callFunction("FREEZINGPOINT", [eight], sheet);
    const wrong = answer.flatMap(([cell], row) => (isProblem(cell) ? [row] : []));
    expect(wrong).toEqual([16]);
    expect(answer[16]![0]).toMatchObject({ kind: "outsideValidity" });
    expect((answer[16]![0] as { message: string }).message).toContain(
      'the nearest name is "water"',
    );
  });

  test("a wrong amount, an error and a missing recipe spoil their own rows", () => {
    const bad = sheet.map((row) => [...row.slice(0, 7), null]);
    bad[16]![1] = "12,5";
    bad[99]![2] = { type: "Error", basicType: "Error", basicValue: "#DIV/0!" };
    bad[4999] = [null, "", null, null, null, null, null, null];
    const answer = callFunction("FREEZINGPOINT", [eight], bad);
    const wrong = answer.flatMap(([cell], row) => (isProblem(cell) ? [[row, cell.message]] : []));
    expect(wrong).toEqual([
      [
        16,
        expect.stringContaining(
          'grams, row 17, column 2: the amount of "sucrose" is the text "12,5"',
        ),
      ],
      [99, expect.stringContaining("grams, row 100, column 3: the cell holds the error #DIV/0!")],
      [4999, expect.stringContaining("grams, row 5000: the amounts add up to 0 g")],
    ]);
  });

  test("one wrong name per row spoils its own row in functions of a name", () => {
    const names = column(
      Array.from({ length: 5000 }, (_, row) => (row === 16 ? "sucros" : "sucrose")),
    );
    const answer = callFunction("MOLES", names, 342.297);
    expect(answer.flatMap(([cell], row) => (isProblem(cell) ? [row] : []))).toEqual([16]);
  });
});

describe("What a sheet holds between the ingredients", () => {
  const freezing = (names: unknown[], grams: unknown[]) =>
    cellOf("FREEZINGPOINT", column(names), column(grams));
  const plain = freezing(["water", "sucrose"], [200, 70]);

  test("headings, spare rows and totals that fit are skipped", () => {
    expect(
      freezing(
        ["Wet:", "water", "subtotal", "", "Sucrose ", "TOTAL"],
        [null, 200, 200, "", 70, 270],
      ),
    ).toBe(plain);
    expect(freezing(["water", "Zwischensumme", "sucrose", "Summe"], [200, 200, 70, 270])).toBe(
      plain,
    );
    expect(freezing(["water", "sucrose", ""], [200, 70, 0])).toBe(plain);
  });

  test("a total that does not fit says so", () => {
    const problem = freezing(["water", "sucrose", "Total"], [200, 70, 280]);
    expect(problem).toMatchObject({ kind: "badInput" });
    expect((problem as { message: string }).message).toMatch(
      /"Total" is 280, but .* add up to 270/,
    );
  });

  test.each([
    [["water", ""], [200, 70], "grams, row 2: the amount 70 has no name"],
    [["water", "sucrose"], [200, -7], 'the amount of "sucrose" is -7 g'],
    [["water", "sucrose"], [200, true], 'the amount of "sucrose" is TRUE'],
    [
      ["water", "dextrose"],
      [200, 7],
      '"dextrose" can mean several things; write "glucose monohydrate" or "glucose"',
    ],
    [["sucrose"], [70], "the mix holds 0 g of water"],
    [["water", "water lost"], [70, 80], '"water lost" is 80 g, more than the 70 g of water'],
  ])("%j with %j is an error that says why", (names, grams, sentence) => {
    expect((freezing(names, grams) as { message: string }).message).toContain(sentence);
  });

  test("names match regardless of case, spaces and Unicode form", () => {
    expect(freezing(["  WATER", "ｓｕｃｒｏｓｅ"], [200, 70])).toBe(plain);
    expect(freezing(["Wasser", "caster   sugar"], [200, 70])).toBe(plain);
  });

  test("water lost comes off the water", () => {
    expect(freezing(["water", "sucrose", "water lost"], [260, 70, 60])).toBeCloseTo(
      plain as number,
      12,
    );
  });

  test("a hydrate gives its water to the water", () => {
    const dry = 180.156 / 198.171; // molar masses: glucose and its monohydrate
    const hydrate = freezing(["water", "dextrose monohydrate"], [200, 50]);
    const same = freezing(["water", "glucose"], [200 + 50 * (1 - dry), 50 * dry]);
    expect(hydrate).toBeCloseTo(same as number, 6);
  });
});

describe("Laws of every mix", () => {
  const amounts = fc.record({
    water: fc.double({ min: 100, max: 1000, noNaN: true }),
    sucrose: fc.double({ min: 0, max: 200, noNaN: true }),
    glucose: fc.double({ min: 0, max: 100, noNaN: true }),
    salt: fc.double({ min: 0, max: 10, noNaN: true }),
    strawberries: fc.double({ min: 0, max: 500, noNaN: true }),
  });
  const isFreezing = (grams: object) =>
    typeof callFunction("FREEZINGPOINT", [Object.keys(grams)], [Object.values(grams)])[0]?.[0] ===
    "number";
  const ask = (name: string, grams: object, ...more: unknown[]) =>
    numberOf(name, [Object.keys(grams)], [Object.values(grams)], ...more);

  test("only the ratio of the amounts matters", () => {
    fc.assert(
      fc.property(amounts, fc.double({ min: 0.01, max: 100, noNaN: true }), (grams, factor) => {
        fc.pre(isFreezing(grams));
        const scaled = Object.fromEntries(
          Object.entries(grams).map(([name, value]) => [name, value * factor]),
        );
        expect(ask("FREEZINGPOINT", scaled)).toBeCloseTo(ask("FREEZINGPOINT", grams), 9);
      }),
      { numRuns: 50 },
    );
  });

  /** Two points are each solved to about a picokelvin: less than that is no difference. */
  const SOLVED_TO_K = 1e-10;

  test("more of a solute never raises the freezing point", () => {
    fc.assert(
      fc.property(amounts, fc.double({ min: 0, max: 50, noNaN: true }), (grams, more) => {
        const richer = { ...grams, sucrose: grams.sucrose + more };
        fc.pre(isFreezing(richer)); // the richest of these mixes form no ice at all
        expect(ask("FREEZINGPOINT", richer)).toBeLessThanOrEqual(
          ask("FREEZINGPOINT", grams) + SOLVED_TO_K,
        );
      }),
      {
        numRuns: 50,
        examples: [[{ water: 100, sucrose: 175, glucose: 100, salt: 10, strawberries: 0 }, 1]],
      },
    );
  });

  test("colder never means less ice, and ICETEMPERATURE undoes ICEFRACTION", () => {
    fc.assert(
      fc.property(amounts, fc.double({ min: -30, max: -1, noNaN: true }), (grams, temperatureC) => {
        const ice = ask("ICEFRACTION", grams, temperatureC);
        expect(ask("ICEFRACTION", grams, temperatureC - 1)).toBeGreaterThanOrEqual(ice);
        fc.pre(ice > 0.001 && grams.sucrose > 1);
        expect(ask("ICETEMPERATURE", grams, ice)).toBeCloseTo(temperatureC, 6);
      }),
      { numRuns: 50 },
    );
  });

  test("the components of a mix add up to its mass", () => {
    fc.assert(
      fc.property(amounts, (grams) => {
        const parts = ["water", "dissolved", "fat", "protein", "ash", "inert"];
        const sum = parts.reduce((total, part) => total + ask("COMPONENT", grams, part), 0);
        expect(sum).toBeCloseTo(ask("COMPONENT", grams, "total"), 8);
      }),
      { numRuns: 50 },
    );
  });
});

describe("Honey, pure water and what is no food", () => {
  test("honey has no freezing point, and no ice at −18 °C", () => {
    const problem = problemOf("FREEZINGPOINT", "honey", 100);
    expect(problem.kind).toBe("outsideValidity");
    expect(problem.message).toContain("no ice forms");
    expect(numberOf("ICEFRACTION", "honey", 100, -18)).toBe(0);
  });

  test("water freezes at 0 °C, and below all of it is ice", () => {
    expect(numberOf("FREEZINGPOINT", "water", 1)).toBe(0);
    expect(numberOf("DEPRESSION", "water", 1)).toBe(0);
    expect(numberOf("ICEFRACTION", "water", 1, -0.001)).toBe(1);
    expect(numberOf("ICEFRACTION", "water", 1, 4)).toBe(0);
    expect(numberOf("WATERACTIVITY", "water", 1)).toBe(1);
  });

  test("ethylene glycol is answered for class and refused where it would be eaten", () => {
    const mix = [
      ["water", "ethylene glycol"],
      [70, 30],
    ] as const;
    expect(numberOf("FREEZINGPOINT", ...mix)).toBeLessThan(-10);
    expect(problemOf("CHECK", ...mix, "firm bar at −18").message).toContain("not a food");
  });

  test("temperatures below −60 °C are declined, absolute nonsense is refused", () => {
    expect(problemOf("ICEFRACTION", "whole milk", 1, -61).kind).toBe("outsideValidity");
    expect(problemOf("ICEFRACTION", "whole milk", 1, -300).kind).toBe("badInput");
  });
});
