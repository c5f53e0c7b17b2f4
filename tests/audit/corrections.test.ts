import { auditWorkbook } from "../../src/audit/auditWorkbook";
import { amountOf } from "../../src/audit/recipes/amounts/amountOf";
import { linesFrom, linesText } from "../../src/audit/recipes/corrections/lines";
import { readCorrections } from "../../src/audit/recipes/corrections/readCorrections";
import {
  CORRECTION_FIELDS,
  CORRECTIONS_MARK,
  type RecipeCorrection,
} from "../../src/audit/recipes/corrections/recipeCorrection";
import { saidOf } from "../../src/audit/recipes/corrections/saidOf";
import { storedCorrections } from "../../src/audit/recipes/corrections/storedCorrections";
import { findRecipes } from "../../src/audit/recipes/findRecipes";
import { badInput, isProblem } from "../../src/foundation/problem";
import { bookOf, type Rows } from "./bookOf";

/** What is found on a sheet "Ices", in grams, by the given words of the user. */
const readBy = (rows: Rows, ...said: readonly Omit<RecipeCorrection, "sheet">[]) => {
  const corrections = said.map((each) => ({ sheet: "Ices", ...each }));
  const { blocks, notes } = findRecipes(bookOf({ Ices: rows }), corrections);
  const recipes = blocks.map((block) => ({
    names: block.names.map(({ item }) => item),
    titles: block.recipes.map(({ title }) => title),
    grams: block.recipes.map((recipe) =>
      block.names.map((name) => amountOf(block, recipe, name).grams),
    ),
    totals: block.totals,
  }));
  return { recipes, notes };
};

const plan: Rows = [
  ["Ingredient", "Amount (g)", "Second try"],
  ["Water", 500, 480],
  ["Sucrose", 150, 160],
  ["Total", 650, 640],
];

describe("What the user says of a recipe goes before what is found:", () => {
  test("a block is no recipe", () => {
    expect(readBy(plan).recipes).toHaveLength(1);
    expect(readBy(plan, { range: "A1:C4", recipe: "none" })).toEqual({
      recipes: [],
      notes: ["Ices!A1:C4 was said to be no recipe and left out."],
    });
  });

  test("another column holds the amounts, and both do", () => {
    expect(readBy(plan).recipes[0]?.grams).toEqual([[500, 150]]);
    const second = { range: "A1:C4", recipe: "down", names: "A", amounts: "C" } as const;
    expect(readBy(plan, second).recipes).toEqual([
      { names: ["Water", "Sucrose"], titles: ["Second try"], grams: [[480, 160]], totals: [3] },
    ]);
    const both = { ...second, amounts: "B:C" };
    expect(readBy(plan, both).recipes[0]?.grams).toEqual([
      [500, 150],
      [480, 160],
    ]);
  });

  test("the unit is another, whatever the header says", () => {
    // 1 oz = 28.349523125 g by definition (NIST Handbook 44, appendix C)
    const { recipes } = readBy(plan, { range: "A1:C4", recipe: "down", amounts: "B", unit: "oz" });
    expect(recipes[0]?.grams[0]?.[0]).toBeCloseTo(500 * 28.349523125, 8);
  });

  test("the unit goes before the cells' formats and unit cells, too", () => {
    const rows: Rows = [
      ["Ingredient", "Amount", "Unit"],
      ["Water", { value: 5, format: '0 "g"' }, "g"],
      ["Sucrose", { value: 1, format: '0 "g"' }, "g"],
    ];
    const said = { range: "A1:C3", recipe: "down", unit: "kg" } as const;
    expect(readBy(rows, said).recipes[0]?.grams).toEqual([[5000, 1000]]);
  });

  test("names that the catalogue does not know are a recipe when they are said to be one", () => {
    const rows: Rows = [
      ["House base", 400],
      ["Blue syrup", 100],
    ];
    expect(readBy(rows).recipes).toEqual([]);
    const said = { range: "A1:B2", recipe: "down", names: "A", amounts: "B" } as const;
    expect(readBy(rows, said).recipes[0]?.grams).toEqual([
      [null, null].map((_, at) => [400, 100][at]),
    ]);
  });

  test("a range of recipes in rows, its names in a row that was not found", () => {
    const rows: Rows = [
      ["House ices", null, null, "freezer −18"],
      ["", "House base", "Blue syrup", "Water"],
      ["mild", 100, 20, 300],
      ["sharp", 100, 40, 300],
      ["average", 100, 30, 300],
    ];
    expect(readBy(rows).recipes).toEqual([]);
    const said = { range: "A2:D5", recipe: "across", names: "2" } as const;
    expect(readBy(rows, said).recipes).toEqual([
      {
        names: ["House base", "Blue syrup", "Water"],
        titles: ["mild", "sharp"],
        grams: [
          [100, 20, 300],
          [100, 40, 300],
        ],
        totals: [],
      },
    ]);
  });

  test("of two words on the same cells the later holds", () => {
    const none = { range: "A1:C4", recipe: "none" } as const;
    const some = { range: "A1:C4", recipe: "down", amounts: "C" } as const;
    expect(readBy(plan, none, some).recipes[0]?.grams).toEqual([[480, 160]]);
    expect(readBy(plan, some, none).recipes).toEqual([]);
  });

  test("other recipes of the sheet stay as they were found", () => {
    const rows: Rows = [...plan, [], ["Ingredient", "g"], ["Water", 90], ["Fructose", 10]];
    const { recipes } = readBy(rows, { range: "A1:C4", recipe: "none" });
    expect(recipes.map(({ grams }) => grams)).toEqual([[[90, 10]]]);
  });
});

describe("A correction that was kept", () => {
  const kept = {
    range: "A1:B3",
    recipe: "down",
    names: "A",
    amounts: "B",
    heading: "Ingredient | Amount (g)",
  } as const;
  const rows = (...more: Rows): Rows => [
    ["Ingredient", "Amount (g)"],
    ["Water", 500],
    ["Sucrose", 150],
    ...more,
  ];

  test("takes in ingredients that were added below, down to the total, but no answers", () => {
    const grown = rows(["Blue syrup", 20], ["Total", 670], ["Fructose", 5]);
    expect(readBy(grown, kept).recipes[0]).toMatchObject({
      names: ["Water", "Sucrose", "Blue syrup"],
      totals: [4],
    });
    expect(readBy(rows(["Freezing point", -2]), kept).recipes[0]?.names).toHaveLength(2);
  });

  test("takes in recipes that were added below others in rows", () => {
    const across: Rows = [
      ["Ice", "Water", "Sucrose"],
      ["mild", 500, 100],
      ["sharp", 500, 150],
    ];
    const said = { range: "A1:C2", recipe: "across", names: "1", amounts: "2" } as const;
    expect(readBy(across, said).recipes[0]?.titles).toEqual(["mild", "sharp"]);
  });

  test("is not followed where other words head the range by now, and that is told", () => {
    const { recipes, notes } = readBy([["Cherry ice"], ...rows()], kept);
    expect(notes).toEqual([
      'What was said of Ices!A1:B3 is not followed: its first row no longer reads "Ingredient | Amount (g)".',
    ]);
    expect(recipes[0]?.grams).toEqual([[500, 150]]); // as it is found without it
  });

  test("is told when its sheet is gone or its cells are empty", () => {
    const { notes } = findRecipes(bookOf({ Ices: rows() }), [
      { sheet: "Old", range: "A1:B3", recipe: "none" },
      { sheet: "ices", range: "D1:E900", recipe: "down" },
    ]);
    expect(notes).toEqual([
      "What was said of Old!A1:B3 is not followed: there is no such sheet.",
      "What was said of ices!D1:E900 is not followed: no name with an amount stands there.",
    ]);
  });
});

describe("The report", () => {
  const book = bookOf({ Ices: plan });

  test("says of each recipe what would have to be said for it, which has it read the same", () => {
    const { recipes } = auditWorkbook(book);
    expect(recipes[0]).toMatchObject({
      isCorrected: false,
      correction: {
        ...{ sheet: "Ices", range: "A1:C4", recipe: "down", names: "A", amounts: "B" },
        heading: "Ingredient | Amount (g) | Second try",
      },
    });
    const again = auditWorkbook(book, { corrections: recipes.map((each) => each.correction) });
    expect(again.recipes[0]).toMatchObject({
      isCorrected: true,
      taken: "As it was said, took A2:A3 for the ingredients and column B for the amounts (g).",
    });
    expect(again.findings).toEqual(auditWorkbook(book).findings);
  });

  test("changes with the correction: what is no recipe has no findings", () => {
    const wrong = bookOf({ Ices: [...plan.slice(0, 2), ["Sugarr", "150,5", 1], ["Water", 1, 1]] });
    expect(auditWorkbook(wrong).findings.length).toBeGreaterThan(0);
    const corrections = [{ sheet: "Ices", range: "A1:C4", recipe: "none" } as const];
    const report = auditWorkbook(wrong, { corrections });
    expect(report.summary.recipes).toBe(0);
    expect(report.reading).toEqual(["Ices!A1:C4 was said to be no recipe and left out."]);
  });
});

describe("A workbook that keeps corrections", () => {
  const keeping = (...entries: Rows) =>
    bookOf({ Ices: plan, Kept: [[CORRECTIONS_MARK], [...CORRECTION_FIELDS], ...entries] });

  test("is read by them, unless others are given", () => {
    const book = keeping(["Ices", "A1:C4", "down", "A", "C"], []);
    expect(storedCorrections(book)).toEqual({
      sheet: "Kept",
      entries: [{ sheet: "Ices", range: "A1:C4", recipe: "down", names: "A", amounts: "C" }],
      notes: [],
    });
    expect(auditWorkbook(book).recipes[0]).toMatchObject({ isCorrected: true });
    expect(auditWorkbook(book, { corrections: [] }).recipes[0]).toMatchObject({
      isCorrected: false,
    });
  });

  test("tells a row that is none, and follows the others", () => {
    const book = keeping(["Ices", "A1:C4", "sideways"], ["Ices", "A1:C4", "none"], ["", "", 3]);
    const { entries, notes } = storedCorrections(book);
    expect(entries).toHaveLength(1);
    expect(notes).toEqual([
      expect.stringMatching(/^Row 3 of Kept: .* by its "recipe"\.$/),
      expect.stringMatching(/^Row 5 of Kept: .* by its "sheet"\.$/),
    ]);
  });
});

describe("A correction is refused in one sentence", () => {
  const entry = { sheet: "Ices", range: "A1:C4", recipe: "down" };
  test.each([
    ["no list", {}, /are of the shape/],
    ["an unknown kind", [{ ...entry, recipe: "diagonal" }], /entry 1 is not, by its "recipe"/],
    ["a field too many", [entry, { ...entry, colour: "red" }], /entry 2 is not/],
    ["a range that is none", [{ ...entry, range: "A:C" }], /a range is written like A1:C9/],
    ["a column as names across", [{ ...entry, recipe: "across", names: "A" }], /"A" names no rows/],
    ["amounts outside", [{ ...entry, amounts: "B, E" }], /the columns "B, E" lie in the range/],
    ["two columns of names", [{ ...entry, names: "A:B" }], /one line, and "A:B" are more/],
    ["names as amounts", [{ ...entry, names: "B", amounts: "B:C" }], /"B" cannot hold both/],
    ["a unit that is none", [{ ...entry, unit: "stone" }], /"stone" is no unit of an amount/],
    ["a row beyond the sheet", [{ ...entry, recipe: "across", amounts: "0" }], /names no rows/],
  ])("%s", (_what, content, sentence) => {
    const read = readCorrections(content);
    expect(isProblem(read) && read.message).toMatch(sentence);
  });
  test("and a right one is taken as it is", () => {
    const right = [{ ...entry, names: "A", amounts: "b, c", unit: "metric cup", heading: "" }];
    expect(readCorrections(right)).toEqual(right);
  });
});

describe("A correction as it is said", () => {
  const book = bookOf({ Ices: plan });
  test("gets the words of its first row, and loses blanks", () => {
    const said = {
      sheet: "ices",
      range: "$c$4:A1",
      recipe: "down",
      names: " A ",
      unit: "",
    } as const;
    expect(saidOf(book, said)).toEqual({
      ...{ sheet: "Ices", range: "A1:C4", recipe: "down", names: "A" },
      heading: "Ingredient | Amount (g) | Second try",
    });
  });
  test("is refused of a sheet that is not there", () => {
    expect(saidOf(book, { sheet: "Old", range: "A1", recipe: "none" })).toEqual(
      badInput('There is no sheet "Old": cells are written like Ices!A1:C9.'),
    );
  });
});

test("lines are written short and read back", () => {
  expect(linesText([1, 3, 4, 5, 27], "columns")).toBe("B, D:F, AB");
  expect(linesFrom("B, D:F, AB", "columns")).toEqual([1, 3, 4, 5, 27]);
  expect(linesFrom("9:4, 4", "rows")).toEqual([3, 4, 5, 6, 7, 8]);
  expect(linesFrom("4:9", "columns")).toBeNull();
  expect(linesFrom("XFE", "columns")).toBeNull();
});
