import { findRecipe, type FindRecipeOptions } from "../../../taskpane/bowl/findRecipe";
import type { RecognisedRecipe } from "../../../taskpane/bowl/recognised";
import type { CellBlock } from "../../../taskpane/host";
import { blockOf } from "../blockOf";

// Layouts and names are of our own invention. No number here is a measured one.

const KNOWN = [
  "water",
  "wasser",
  "sucrose",
  "zucker",
  "honey",
  "honig",
  "lemon juice",
  "salt",
  "cream",
];

function find(block: CellBlock, options: Partial<FindRecipeOptions> = {}) {
  const isKnown = (name: string) => KNOWN.includes(name.trim().toLowerCase());
  return findRecipe(block, { isKnown, active: null, choice: null, ...options });
}

function found(block: CellBlock, options: Partial<FindRecipeOptions> = {}): RecognisedRecipe {
  const recognition = find(block, options);
  if (recognition.kind !== "recipe") throw new Error(`read as ${JSON.stringify(recognition)}`);
  return recognition;
}

const linesOf = (recipe: RecognisedRecipe) =>
  recipe.lines.map(({ name, amount, unit }) => [name, amount, unit]);

describe("a recipe down a column", () => {
  test("is read under its header, with the unit the header names", () => {
    const recipe = found(
      blockOf(
        [
          ["Lemon ice", ""],
          ["Ingredient", "Amount (g)"],
          ["water", 200],
          ["sucrose", 70],
        ],
        { at: "B3" },
      ),
    );
    expect(recipe).toMatchObject({
      title: "Lemon ice",
      direction: "down",
      nameRange: "B5:B6",
      amountRange: "C5:C6",
      unit: "g",
      unitOrigin: "header",
    });
    expect(linesOf(recipe)).toEqual([
      ["water", 200, "g"],
      ["sucrose", 70, "g"],
    ]);
  });

  test("leaves prices alone, also when they stand nearer", () => {
    const recipe = found(
      blockOf([
        ["Ingredient", "€ per kg", "Price", "kcal", "grams"],
        ["water", 0, 0, 0, 200],
        ["sucrose", 1.2, 0.08, 280, 70],
      ]),
    );
    expect(recipe.amountRange).toBe("E2:E3");
  });

  test("leaves columns of what is in an ingredient alone, though they are per cent or per 100 g", () => {
    const recipe = found(
      blockOf([
        ["Ingredient", "Sugar %", "kcal per 100 g", "Einwaage"],
        ["water", 0, 0, 200],
        ["sucrose", 100, 400, 70],
      ]),
    );
    expect(recipe.amountRange).toBe("D2:D3");
  });

  test("takes grams before cups, and kilograms as such", () => {
    const cups = [
      ["Ingredient", "Cups", "g"],
      ["water", 1, 237],
      ["sucrose", 0.5, 100],
    ];
    expect(found(blockOf(cups)).amountRange).toBe("C2:C3");
    const kilograms = [
      ["Zutat", "Menge, kg"],
      ["Wasser", 2],
      ["Zucker", 0.7],
    ];
    expect(linesOf(found(blockOf(kilograms)))).toEqual([
      ["Wasser", 2, "kg"],
      ["Zucker", 0.7, "kg"],
    ]);
  });

  test.each([
    ["Menge (g)", "g"],
    ["Gramm", "g"],
    ["Gewicht [kg]", "kg"],
    ["%", "%"],
    ["g per 100 g", "%"],
    ["Anteil %", "%"],
    ["Volume (ml)", "mL"],
    ["Cups", "cup"],
  ])("the header %p gives the unit %p", (header, unit) => {
    const recipe = found(
      blockOf([
        ["Name", header],
        ["water", 2],
        ["sucrose", 1],
      ]),
    );
    expect(recipe.unit).toBe(unit);
    expect(recipe.unitOrigin).toBe("header");
  });

  test("takes each row's unit from a unit column", () => {
    const recipe = found(
      blockOf([
        ["Ingredient", "Amount", "Unit"],
        ["water", 1, "cup"],
        ["sucrose", 70, "g"],
        ["salt", 1, "tsp"],
      ]),
    );
    expect(recipe.unit).toBe("mixed");
    expect(linesOf(recipe).map(([, , unit]) => unit)).toEqual(["cup", "g", "tsp"]);
  });

  test("reads the unit from the number format when the header is silent", () => {
    const recipe = found(
      blockOf(
        [
          ["Ingredient", "Test batch"],
          ["water", 2],
          ["sucrose", 0.7],
        ],
        { format: '0.0 "kg"' },
      ),
    );
    expect(recipe).toMatchObject({ unit: "kg", unitOrigin: "number format" });
  });

  test("says that grams are assumed where nothing says so", () => {
    const recipe = found(
      blockOf([
        ["water", 200],
        ["sucrose", 70],
      ]),
    );
    expect(recipe).toMatchObject({ unit: "g", unitOrigin: "assumed", nameRange: "A1:A2" });
  });

  test("keeps an unknown ingredient, so that the function can name the nearest one", () => {
    const recipe = found(
      blockOf([
        ["Ingredient", "g"],
        ["mistery fruit", 50],
        ["water", 200],
        ["sucrose", 70],
      ]),
    );
    expect(recipe.lines[0]).toMatchObject({ name: "mistery fruit", known: false, cell: "A2" });
  });

  test("ends at the total, keeps it, and leaves out what is reckoned below", () => {
    const recipe = found(
      blockOf([
        ["Ingredient", "g"],
        ["water", 200],
        ["sucrose", 70],
        ["Total", "=SUM(B2:B3) → 270"],
        ["Freezing point", "=RIME.FREEZINGPOINT(A2:A3,B2:B3) → -2.3"],
        ["Bars", 4],
      ]),
    );
    expect(linesOf(recipe).at(-1)).toEqual(["Total", 270, "g"]);
    expect(recipe.leftOut.map(({ text }) => text)).toEqual(["Freezing point", "Bars"]);
  });

  test("leaves out one of our results even without a total, but not grams reckoned from cups", () => {
    const recipe = found(
      blockOf([
        ["Ingredient", "g"],
        ["water", '=RIME.GRAMS("water",1,"cup") → 236.6'],
        ["sucrose", 70],
        ["Freezing point", "=RIME.FREEZINGPOINT(A2:A3,B2:B3) → -2.3"],
      ]),
    );
    expect(linesOf(recipe).map(([name]) => name)).toEqual(["water", "sucrose"]);
  });

  test("asks which column is meant when two are in grams, and takes the clicked one", () => {
    const block = blockOf([
      ["Ingredient", "Batch 1 (g)", "Batch 2 (g)"],
      ["water", 200, 300],
      ["sucrose", 70, 70],
    ]);
    expect(find(block)).toMatchObject({
      kind: "question",
      why: "several amounts",
      columns: [
        { index: 0, label: "A, Ingredient" },
        { index: 1, label: "B, Batch 1 (g)" },
        { index: 2, label: "C, Batch 2 (g)" },
      ],
      guess: { names: 0, amounts: 1 },
    });
    expect(found(block, { active: { row: 1, column: 2 } }).amountRange).toBe("C2:C3");
  });

  test("asks when fewer than half of the names are known, and believes the answer", () => {
    const block = blockOf([
      ["Thing", "g"],
      ["bolt", 200],
      ["nut", 70],
      ["washer", 5],
      ["water", 5],
    ]);
    expect(find(block)).toMatchObject({ kind: "question", why: "few known" });
    const choice = { direction: "down", names: 0, amounts: 1, unit: "kg" } as const;
    expect(found(block, { choice })).toMatchObject({ unit: "kg", unitOrigin: "chosen" });
    expect(found(block, { choice }).lines).toHaveLength(4);
  });

  test("takes a recipe of which exactly half the names are known", () => {
    const recipe = found(
      blockOf([
        ["Ingredient", "g"],
        ["water", 200],
        ["house syrup", 70],
      ]),
    );
    expect(recipe.lines).toHaveLength(2);
  });

  test("asks for the amounts when there are none", () => {
    expect(find(blockOf([["water"], ["sucrose"]]))).toMatchObject({
      kind: "question",
      why: "no amounts",
    });
  });

  test("asks which of two equal name columns is meant", () => {
    const block = blockOf([
      ["English", "Deutsch", "g"],
      ["water", "Wasser", 200],
      ["sucrose", "Zucker", 70],
    ]);
    expect(find(block)).toMatchObject({ kind: "question", why: "several names" });
  });

  test("an amount typed as text is passed on for the function to refuse, not skipped", () => {
    const recipe = found(
      blockOf([
        ["Zutat", "Menge (g)"],
        ["Wasser", "200,5"],
        ["Zucker", 70],
      ]),
    );
    expect(linesOf(recipe)[0]).toEqual(["Wasser", "200,5", "g"]);
  });
});

describe("recipes across rows", () => {
  const block = blockOf([
    ["Recipe", "water", "sucrose", "lemon juice", "First ice"],
    ["Mild", 300, 60, 40, "=RIME.FREEZINGPOINT(B1:D1,B2:D2) → -1.4"],
    ["Sharp", 250, 60, 90, "=RIME.FREEZINGPOINT(B1:D1,B3:D3) → -1.9"],
  ]);

  test("the clicked row is the recipe", () => {
    const recipe = found(block, { active: { row: 2, column: 0 } });
    expect(recipe).toMatchObject({
      direction: "across",
      title: "Sharp",
      nameRange: "B1:D1",
      amountRange: "B3:D3",
    });
    expect(linesOf(recipe)).toEqual([
      ["water", 250, "g"],
      ["sucrose", 60, "g"],
      ["lemon juice", 90, "g"],
    ]);
  });

  test("a recipe's name is no header, whatever it speaks of", () => {
    const named = blockOf([
      ["Recipe", "water", "sucrose"],
      ["Water ice, 30 % less sugar", 300, 60],
      ["€ per kg", 0, 1.2],
    ]);
    expect(found(named).title).toBe("Water ice, 30 % less sugar");
    expect(found(named, { active: { row: 2, column: 1 } }).amountRange).toBe("B2:C2");
  });

  test("with the header row clicked, the first recipe is shown", () => {
    expect(found(block, { active: { row: 0, column: 1 } }).title).toBe("Mild");
  });
});

describe("a sheet of many recipes that share their names", () => {
  const block = blockOf([
    [
      "Recipe",
      "First ice",
      "Check",
      "water",
      "sucrose",
      "cream",
      "honey",
      "lemon juice",
      "Batch, g",
      "Cost",
    ],
    ["Ice", -2.1, "meets it", 300, 60, "", "", "", 360, 1.2],
    ["Sharp ice", -2.4, "too hard", 250, 60, "", "", 90, 400, 1.6],
  ]);

  test("blank cells are no obstacle, and neither results nor sums are taken for ingredients", () => {
    const recipe = found(block, { active: { row: 2, column: 0 } });
    expect(recipe).toMatchObject({ title: "Sharp ice", nameRange: "D1:H1", amountRange: "D3:H3" });
    expect(linesOf(recipe).filter(([, amount]) => amount !== "")).toEqual([
      ["water", 250, "g"],
      ["sucrose", 60, "g"],
      ["lemon juice", 90, "g"],
    ]);
    expect(recipe.leftOut).toEqual([]);
  });
});

describe("what is no recipe", () => {
  test("a price list: packs are no amounts", () => {
    const block = blockOf([
      ["Item", "Pack, g", "Price of the pack"],
      ["water", 1000, 0.1],
      ["sucrose", 1000, 1.3],
    ]);
    expect(find(block)).toMatchObject({ kind: "question", why: "no amounts" });
  });
  test("a range of own ingredients", () => {
    const block = blockOf([
      ["name", "same as", "water"],
      ["Sugar", "sucrose", ""],
    ]);
    expect(find(block)).toMatchObject({ kind: "none", why: "own ingredients" });
  });
  test("a blank block", () => {
    expect(find(blockOf([[""]]))).toMatchObject({ kind: "none", why: "blank" });
  });
  test("a block without any ingredient", () => {
    expect(find(blockOf([["rent", 900]]))).toMatchObject({ kind: "none", why: "no names" });
  });
});
