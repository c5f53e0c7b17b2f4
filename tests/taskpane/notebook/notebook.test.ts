import { callFunction } from "../../../src/worksheet/callFunction";
import type { Matrix } from "../../../src/foundation/cell";
import type { NotebookEntry } from "../../../taskpane/notebook/entry";
import { freezerOffset } from "../../../taskpane/notebook/freezerOffset";
import { brixIngredient, learnIngredient } from "../../../taskpane/notebook/learnIngredient";
import { mergeOwn } from "../../../taskpane/notebook/mergeOwn";
import { mixFromText, mixText } from "../../../taskpane/notebook/mixText";
import {
  entryRow,
  isNotebook,
  nextLine,
  notebookContents,
  readEntries,
} from "../../../taskpane/notebook/notebookSheet";
import { blockOf } from "../blockOf";
import { typed } from "../typed";

const entry = (given: Partial<NotebookEntry> = {}): NotebookEntry => ({
  date: "2026-11-25",
  recipe: "Plum ice",
  mix: "water 250 g; sucrose 70 g",
  forecastC: -1.65,
  forecastBandK: 0.02,
  measuredC: -1.8,
  brix: null,
  freezerSetC: -18,
  freezerC: -16.5,
  firmnessForecast: "bites",
  firmness: "scoops",
  note: "",
  ...given,
});

describe("the notebook's sheet", () => {
  test.each(["en", "de"])("what is written is what is read, headers in %s", (language) => {
    const rows = notebookContents(language, [entry(), entry({ measuredC: null, note: "windy" })]);
    const block = blockOf(rows.map((row) => row.map((content) => typed(content))));
    expect(isNotebook(block)).toBe(true);
    expect(readEntries(block)).toEqual([entry(), entry({ measuredC: null, note: "windy" })]);
  });

  test("a note that begins like a formula stays a note", () => {
    expect(entryRow(entry({ note: "=1+1" })).at(-1)).toBe("'=1+1");
  });

  test("a day is written as a text, and one that was typed as a date is read as that day", () => {
    expect(entryRow(entry())[0]).toBe("'2026-11-25");
    // The bench's own grid answers =DATE(2020,1,1) with 43831.
    const [headers = []] = notebookContents("en", []);
    const block = blockOf([[...headers], [43831.5, ...headers.slice(1).map(() => "")]]);
    expect(readEntries(block)[0]?.date).toBe("2020-01-01");
  });

  test("a new line keeps the user's own columns and their order", () => {
    const block = blockOf([
      ["date", "my column", "weighed", "first ice measured, °C"],
      ["2026-01-02", "x", "water 1 g", -1],
    ]);
    const { address, row } = nextLine(block, entry());
    expect(address).toBe("A3:D3");
    expect(row).toEqual(["'2026-11-25", "", "'water 250 g; sucrose 70 g", -1.8]);
  });

  test("a recipe sheet is no notebook", () => {
    expect(isNotebook(blockOf([["Ingredient", "g"]]))).toBe(false);
  });
});

test("a recipe in one line can be computed again", () => {
  const mix = { items: [["water"], ["sugar, fine"]], grams: [[250], [70.5]] };
  expect(mixFromText(mixText(mix))).toEqual(mix);
  expect(mixFromText("two cups of water")).toBeNull();
});

describe("the freezer's offset", () => {
  test("is the mean difference, with its scatter over the root of the number of readings", () => {
    const found = freezerOffset([
      entry({ freezerC: -16 }),
      entry({ freezerC: -15 }),
      entry({ freezerC: -17 }),
      entry({ freezerC: null }),
    ])!;
    expect(found.offsetK).toBeCloseTo(2, 12);
    expect(found.uncertaintyK).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(found.readings).toBe(3);
  });
  test("of one reading has no scatter, and of none is not known", () => {
    expect(freezerOffset([entry()])?.uncertaintyK).toBeNull();
    expect(freezerOffset([entry({ freezerSetC: null })])).toBeNull();
  });
});

describe("what a measured freezing point says of an ingredient", () => {
  const items = [["water"], ["sucrose"], ["strawberry"]];
  const grams = [[150], [50], [100]];
  const pointWith = (own: Matrix | null) =>
    callFunction("FREEZINGPOINT", items, grams, own)[0]?.[0] as number;
  const learn = (measuredC: number, thermometerK = 0.05) =>
    learnIngredient({ items, grams, own: null, measuredC, thermometerK }, "strawberry", "measured");

  test("as rows of own ingredients it gives the measured freezing point", () => {
    const measuredC = pointWith(null) - 0.2;
    const { factor, rows } = learn(measuredC)!;
    expect(factor).toBeGreaterThan(1.2);
    expect(pointWith(rows)).toBeCloseTo(measuredC, 6);
  });

  test("agreeing with the forecast means a factor of 1", () => {
    expect(learn(pointWith(null))!.factor).toBeCloseTo(1, 6);
  });

  test("a thermometer twice as rough leaves the factor twice as uncertain", () => {
    const measuredC = pointWith(null) - 0.1;
    const [fine, rough] = [learn(measuredC, 0.02)!, learn(measuredC, 0.04)!];
    expect(rough.uncertainty! / fine.uncertainty!).toBeCloseTo(2, 1);
  });

  test("is nothing when no strength of it explains the measurement", () => {
    expect(learn(-0.1)).toBeNull();
  });
});

describe("own ingredients with one more", () => {
  const own = [
    ["name", "water", "sugars", "price"],
    ["plum jam", 35, 60, 2],
    ["strawberry", 91, 5, 3],
  ];
  test("replace the row of that name, keep the others and the user's own columns", () => {
    const merged = mergeOwn(own, [
      ["name", "water", "fructose"],
      ["Strawberry", 88, 4],
    ]);
    expect(merged).toEqual([
      ["name", "water", "sugars", "price", "fructose"],
      ["plum jam", 35, 60, 2, null],
      ["Strawberry", 88, null, null, 4],
    ]);
  });
});

describe("a fruit with a measured Brix", () => {
  test("reads that Brix and adds up to 100 g, its sugars in the same shares", () => {
    const { rows } = brixIngredient("strawberry", 9.5, "measured", null)!;
    const [headers = [], values = []] = rows;
    expect(callFunction("BRIX", [["strawberry"]], [[100]], rows)[0]?.[0]).toBeCloseTo(9.5, 4);
    const gramsOf = (name: string) => values[headers.indexOf(name)] as number;
    const sum = values.reduce<number>(
      (total, value) => total + (typeof value === "number" ? value : 0),
      0,
    );
    expect(sum).toBeCloseTo(100, 9);
    expect(gramsOf("fructose") / gramsOf("glucose")).toBeCloseTo(2.44 / 1.99, 3);
    // Riper fruit freezes colder: more dissolved, less water.
    const [point] = callFunction("FREEZINGPOINT", [["strawberry"]], [[100]], rows)[0]!;
    expect(point as number).toBeLessThan(-0.9);
  });
  test("is declined for what a refractometer cannot read", () => {
    expect(brixIngredient("unsalted butter", 95, "measured", null)).toBeNull();
  });
});
