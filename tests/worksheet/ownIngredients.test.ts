import { cellOf, column, numberOf, problemOf } from "./ask";

const headers = ["name", "same as", "water", "fat", "protein", "sugars", "inert"];
const own = (...rows: unknown[][]) => [headers, ...rows];
const component = (range: unknown, name: string, of: string) =>
  numberOf("COMPONENT", name, 100, of, range);
const refusal = (range: unknown, name = "mine") =>
  problemOf("COMPONENT", name, 100, "water", range).message;

describe("A range of the user's own ingredients", () => {
  test("maps plain names of an existing sheet to the catalogue", () => {
    const range = own(
      ["Milk", "whole milk", "", "", "", "", ""],
      ["Sugar", "sucrose", null, null, null, null, null],
    );
    const mine = cellOf("FREEZINGPOINT", column(["Milk", "sugar"]), column([200, 50]), range);
    expect(mine).toBe(
      cellOf("FREEZINGPOINT", column(["whole milk", "sucrose"]), column([200, 50])),
    );
  });

  test("unsplit sugars are taken as sucrose, the small rest as inert", () => {
    const range = own(["mine", "", 80, 1, 2, 15, 1]);
    expect(component(range, "mine", "sucrose")).toBe(15);
    expect(component(range, "mine", "inert")).toBeCloseTo(2, 10);
    expect(component(range, "mine", "total")).toBeCloseTo(100, 10);
  });

  test("headers come in any order, in German too, and other columns are left alone", () => {
    const range = [
      ["Preis", "Zucker", "name", "wasser"],
      [3.5, 20, "mine", 80],
    ];
    expect(component(range, "mine", "water")).toBe(80);
    expect(component(range, "mine", "sucrose")).toBe(20);
  });

  test.each(["fat (g)", "Fat, g", "fat g/100 g", "fat %", " FAT "])(
    "the header %j is fat",
    (header) => {
      expect(
        component(
          [
            ["name", "water", header],
            ["mine", 60, 40],
          ],
          "mine",
          "fat",
        ),
      ).toBe(40);
    },
  );

  test("a name of the user's wins over the catalogue's", () => {
    expect(component(own(["whole milk", "", 50, 50, "", "", ""]), "whole milk", "fat")).toBe(50);
  });

  test("its words are enough, and then, too, it wins over the catalogue's", () => {
    const range = own(
      ["lemon juice", "", 50, "", "", 50, ""],
      ["House jam", "", 40, "", "", 60, ""],
    );
    expect(component(range, "Lemon juice, strained", "sucrose")).toBe(50);
    expect(component(range, "jam (house)", "water")).toBe(40);
    // A name spelled as in the catalogue is the catalogue's, whatever else may sound like it.
    expect(
      component(own(["fresh lemons' juice", "", 50, "", "", 50, ""]), "lemon juice", "sucrose"),
    ).toBeLessThan(5);
  });

  test("words that fit several of them are not guessed", () => {
    const range = own(
      ["berry jam", "", 90, "", "", 10, ""],
      ["jam, berry", "", 80, "", "", 20, ""],
    );
    expect(refusal(range, "Berries jam")).toContain("could be several of the own ingredients");
  });

  test("Brix states the dissolved part as sucrose, solids the water", () => {
    const brix = [
      ["name", "brix"],
      ["mine", 12],
    ];
    expect(component(brix, "mine", "sucrose")).toBeCloseTo(12, 10);
    expect(component(brix, "mine", "water")).toBeCloseTo(88, 10);
    const solids = [
      ["name", "solids", "fructose", "inert"],
      ["mine", 12, 10, 2],
    ];
    expect(component(solids, "mine", "water")).toBeCloseTo(88, 10);
  });

  // US proof: 80 proof (40 % by volume) is 33.4 % ethanol by mass (USDA SR 26); 86 proof 36.0; 90 proof 37.9
  test.each([
    [40, 33.4],
    [43, 36],
    [45, 37.9],
  ])("%d %% by volume is %d %% ethanol by mass", (abv, massPercent) => {
    const range = [
      ["name", "abv", "water"],
      ["mine", abv, 100 - massPercent],
    ];
    expect(Math.abs(component(range, "mine", "ethanol") - massPercent)).toBeLessThan(0.12);
  });

  test("milk solids are split as in milk", () => {
    const range = [
      ["name", "water", "milk solids"],
      ["mine", 91.3, 8.7],
    ];
    expect(component(range, "mine", "lactose")).toBeCloseTo(8.7 * 0.556, 6);
  });
});

describe("A range that cannot be right says so", () => {
  test.each<[string, unknown[][], string]>([
    ["does not add up", own(["mine", "", 60, 3, 1, 30, ""]), "6.0 g too little"],
    ["adds up to too much", own(["mine", "", 80, 3, 1, 30, ""]), "14.0 g too much"],
    ["states no water", own(["mine", "", "", 3, 1, 96, ""]), "one of water, solids or brix"],
    ["has text for a number", own(["mine", "", "80 %", 3, 1, 16, ""]), 'the text "80 %"'],
    ["has a negative number", own(["mine", "", 80, -3, 1, 16, ""]), "-3"],
    ["has no header row", [["mine", 80]], 'no header "name"'],
    [
      "has a misspelt header",
      [
        ["name", "watr"],
        ["mine", 100],
      ],
      'the nearest is "water"',
    ],
    [
      "has a header twice",
      [
        ["name", "water", "Water"],
        ["mine", 100, 0],
      ],
      "column 2",
    ],
    ["has a row without a name", own(["", "", 80, 3, 1, 16, ""]), "the name is blank"],
    [
      "gives a name twice",
      own(["mine", "", 100, "", "", "", ""], ["Mine", "", 100, "", "", "", ""]),
      "more than once",
    ],
    [
      "says same as and more",
      own(["mine", "whole milk", 80, "", "", "", ""]),
      "nothing else is expected",
    ],
    [
      "names nothing known as the same",
      own(["mine", "whole mlk", "", "", "", "", ""]),
      '"whole milk"',
    ],
    [
      "counts lactose twice",
      [
        ["name", "water", "milk solids", "lactose"],
        ["mine", 85, 10, 5],
      ],
      "milk solids hold lactose",
    ],
    [
      "gives abv and ethanol",
      [
        ["name", "water", "abv", "ethanol"],
        ["mine", 66, 40, 33],
      ],
      "both abv",
    ],
    [
      "gives abv and Brix",
      [
        ["name", "brix", "abv"],
        ["mine", 20, 40],
      ],
      "falsifies a Brix reading",
    ],
    [
      "has a wrong header",
      [
        ["name", "water", "dextrose"],
        ["mine", 90, 10],
      ],
      '"glucose monohydrate"',
    ],
  ])("that %s", (_why, range, sentence) => {
    const message = refusal(range);
    expect(message).toContain("ownIngredients");
    expect(message).toContain(sentence);
  });

  test("a broken row spoils the recipes that use it, and no others", () => {
    const range = own(["good", "", 100, "", "", "", ""], ["bad", "", 60, "", "", "", ""]);
    expect(numberOf("COMPONENT", "good", 100, "water", range)).toBe(100);
    expect(refusal(range, "bad")).toContain("40.0 g too little");
  });
});
