import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import { expectFound, rulesOn, type Tried } from "./tried";

const MANGO = ["mango", "water", "sugar", "lemon juice"];

/** What the function gives of a mix, in two decimals. */
function answer(name: "FREEZINGPOINT" | "DEPRESSION", items: readonly string[], grams: number[]) {
  const [[value] = []] = callFunction(
    name,
    items.map((item) => [item]),
    grams.map((gram) => [gram]),
  );
  return Math.round(Number(value) * 100) / 100;
}

/** Recipes in rows, and what all of them take below. */
const register = (lemon: Rows[number][number], sugar: Rows[number][number]): Rows => [
  ["ref", "mango", "strawberries", "water", "sugar", "lemon juice", "sum g"],
  ["R1", 600, null, 200, 170, 30, formula("SUM(B2:F2)", 1000)],
  ["R2", null, 600, 210, 160, 30, formula("SUM(B3:F3)", 1000)],
  ["R3", 300, 300, 220, 150, 30, formula("SUM(B4:F4)", 1000)],
  [
    ...["a kilo of each takes", formula("SUM(B2:B4)", 900), formula("SUM(C2:C4)", 900)],
    ...[formula("SUM(D2:D4)", 630), sugar, lemon],
  ],
];
const LEMON = formula("SUM(F2:F4)", 90);
const SUGAR = formula("SUM(E2:E4)", 480);

describe("What all recipes in rows take of each ingredient", () => {
  test.each<Tried>([
    { what: "all right", sheets: { Register: register(LEMON, SUGAR) }, found: [] },
    {
      what: "a sum that leaves out the last",
      sheets: { Register: register(formula("SUM(F2:F3)", 60), SUGAR) },
      found: ["total-incomplete Register!F5"],
    },
    {
      what: "a typed number",
      sheets: { Register: register(LEMON, 440) },
      found: ["total-incomplete Register!E5", "formula-overwritten Register!E5"],
    },
  ])("$what", expectFound);
});

/** A slip: the answers stand right below their headings, other words below those. */
const trial = (cocoa: number): Rows => [
  ["Ingredient", "water", "sugar", "cocoa powder", "dextrose monohydrate", "salt", "sum"],
  ["Trial (g)", 652, 210, cocoa, 53, 4, formula("SUM(B2:F2)", 919 + cocoa)],
];
const slip = (depression: Rows[number][number]): Rows => [
  ...trial(81),
  [],
  [null, "begins to freeze (°C)", "ΔT (K)", "its mass (g)"],
  [null, -3.22, depression, 1000],
  [null, "meant for the stall", "scraped granita, I think", null],
];

describe("A slip with the answers below their headings", () => {
  const rules = (rows: Rows) => rulesOn({ Slip: rows });
  test("a text for a number is told where words stand below it", () => {
    expect(rules(slip("3,22"))).toContain("number-as-text");
    expect(rules(slip(3.22))).not.toContain("number-as-text");
  });

  test("a part of a gram that makes the sum round as kilograms is one", () => {
    expect(rules(trial(0.081))).toContain("mass-units-mixed");
    expect(rules(trial(0.125))).not.toContain("mass-units-mixed");
    expect(rules(trial(0.1))).not.toContain("mass-units-mixed");
  });
});

/** Trials with what is weighed out behind each share; not all have all ingredients. */
const trials = (last: Rows[number][number]): Rows => [
  ["Batch (g)", 2000],
  ["Raw material", "T0 (%)", "T0 (g)", "T1 (%)", "T1 (g)"],
  ...MANGO.map((name, at): Rows[number] => [
    name,
    [60, 20, 17, 3][at] ?? 0,
    formula(`B${at + 3}*$B$1/100`, [1200, 400, 340, 60][at] ?? 0),
    [60, 18, 16, 3][at] ?? 0,
    formula(`D${at + 3}*$B$1/100`, [1200, 360, 320, 60][at] ?? 0),
  ]),
  ["inulin", null, last, 3, formula("D7*$B$1/100", 60)],
];

test("where there is nothing to read, a formula that makes something of it is unlike the others", () => {
  const told = (last: Rows[number][number]) =>
    rulesOn({ Trials: trials(last) }).filter((rule) => rule === "inconsistent-formula");
  expect(told(formula("B7+$B$1/100", 20))).toHaveLength(1);
  expect(told(formula("B7*$B$1/100", 0))).toEqual([]);
  expect(told(null)).toEqual([]);
});

/** A jug with its answers beside it, and how many moulds it fills. */
const jug = (lowered: number, mould: string, told = "Contains alcohol."): Rows => [
  [mould, 65],
  ["Goes in", "grams", "alcohol, g", null, "Freezes from", -2.58, "°C"],
  ["water", 1169, null, null, "Lowered by", lowered, "K"],
  ["sugar", 292],
  ["lime juice", 156],
  ["vodka 40 %", 123, 41],
  ["Jug", formula("SUM(B3:B6)", 1740), null, null, told],
  ["Moulds it fills", formula("B7/$B$1", 26.77)],
];

describe("A jug of pops", () => {
  const DEPRESSION = answer(
    "DEPRESSION",
    ["water", "sugar", "lime juice", "vodka 40 %"],
    [1169, 292, 156, 123],
  );
  const rules = (rows: Rows) => rulesOn({ Pops: rows });
  test("what lowers is known by its unit behind the number", () => {
    expect(rules(jug(-DEPRESSION, "One mould (g)"))).toContain("freezing-point-sign");
    expect(rules(jug(DEPRESSION, "One mould (g)"))).toEqual([]);
  });

  test("what one holds has a unit, how many there are has none", () => {
    expect(rules(jug(DEPRESSION, "One mould"))).toContain("input-without-unit");
    expect(rules(jug(DEPRESSION, "Moulds"))).not.toContain("input-without-unit");
  });

  test("a heading of grams of alcohol tells nobody of it", () => {
    expect(rules(jug(DEPRESSION, "One mould (g)", "Stir well."))).toContain("caution-not-named");
  });
});

test("what is left in bottles is no list of ingredients", () => {
  const left = ["half", "half", "a drop", "half", "half"];
  const bottles: Rows = [
    ["Bottle", "ABV, %", "Shot, g", "Alcohol in it, g", "Left"],
    ...["Gin, house", "Plum brandy", "Dark rum", "Elder liqueur", "Dry vermouth"].map(
      (name, at): Rows[number] => {
        const cost = formula(`RIME.ABVTOMASSFRACTION(B${at + 2})*C${at + 2}`, 14);
        return [name, 40, 42, at === 1 ? 24.1 : cost, left[at] ?? ""];
      },
    ),
    ["All of these contain alcohol."],
  ];
  expect(rulesOn({ Bottles: bottles })).not.toContain("ingredient-twice");
  expect(rulesOn({ Bottles: bottles })).not.toContain("unknown-ingredient");
});

/** Glasses by letters alone. */
const glasses = (constant: string, molar: number): Rows => [
  [constant, 1.86],
  [],
  ["Glass", "Water", "Stirred in", "m", "M", "i", "n", "b", "ΔT"],
  [null, "g", null, "g", "g/mol", "–", "mol", "mol/kg", "K"],
  ...["sodium chloride", "fructose", "sucrose"].map((name, at): Rows[number] => {
    const [grams, mole, ions] = [[9, 11, 43][at] ?? 0, [58.44, molar, 342.3][at] ?? 1, at ? 1 : 2];
    const row = at + 5;
    return [
      ...["PQR"[at] ?? "", 400, name, grams, mole, ions, formula(`D${row}/E${row}`, grams / mole)],
      formula(`G${row}/B${row}*1000`, grams / mole / 0.4),
      formula(`$B$1*F${row}*H${row}`, (1.86 * ions * grams) / mole / 0.4),
    ];
  }),
  ["An ideal law, good to 0.2 K."],
];

test.each<Tried>([
  { what: "right", sheets: { Class: glasses("Kf, water (K·kg/mol)", 180.16) }, found: [] },
  {
    what: "with a wrong molar mass, of which the moles follow",
    sheets: { Class: glasses("Kf, water (K·kg/mol)", 198.17) },
    found: ["constant-of-a-solute Class!E6"],
  },
])("glasses by letters: $what", expectFound);

test("the constant of water by its letter has a unit, too", () => {
  expect(rulesOn({ Class: glasses("Kf, water", 180.16) })).toContain("input-without-unit");
  expect(rulesOn({ Class: glasses("Kf, water (K·kg/mol)", 180.16) })).toEqual([]);
});

/** Lists by their numbers, and below a line on each. */
const file = (second: string): Rows => [
  ["Article", "Component", "Amount", "Unit"],
  ...MANGO.map((name, at): Rows[number] => ["A1", name, [6, 2, 1.7, 0.3][at] ?? 0, "kg"]),
  [],
  ...MANGO.map((name, at): Rows[number] => ["A2", name, [6, 1.9, 1.8, 0.3][at] ?? 0, "kg"]),
  [],
  ["Article", "Freezing point [°C]", "Texture"],
  ["A1", answer("FREEZINGPOINT", MANGO, [6, 2, 1.7, 0.3]), "scooped at −13"],
  ["A2", answer("FREEZINGPOINT", MANGO, [6, 1.9, 1.8, 0.3]), second],
];

test.each<Tried>([
  { what: "as it is", sheets: { List: file("scooped at −13") }, found: [] },
  {
    what: "without its temperature",
    sheets: { List: file("drinkable slush") },
    found: ["misses-its-target List!C14"],
  },
  { what: "of which nothing is known", sheets: { List: file("nice and firm") }, found: [] },
])("an aim below another one that says its temperature: $what", expectFound);
