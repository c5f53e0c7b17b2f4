import { callFunction } from "../../../src/worksheet/callFunction";
import { emptyDraft, type LabelDraft } from "../../../taskpane/larder/label/draft";
import { planSheet } from "../../../taskpane/larder/label/ownTable";
import { readLabel } from "../../../taskpane/larder/label/readLabel";
import { ownHeaderMeaning } from "../../../src/worksheet/ownHeaderMeaning";
import { english } from "../../../taskpane/words/english";
import { german } from "../../../taskpane/words/german";
import { numberFormat } from "../../../taskpane/words/numberFormat";

const language = { words: english, numbers: numberFormat("en") };
const read = (draft: Partial<LabelDraft>) =>
  readLabel({ ...emptyDraft("a label of our own making"), name: "Thing", ...draft }, language);
const rowOf = (draft: Partial<LabelDraft>) => Object.fromEntries(read(draft).row);
const ownOf = (draft: Partial<LabelDraft>) =>
  planSheet("", read(draft).row, (header) => header).matrix;
const answer = (name: string, ...args: unknown[]) => callFunction(name, ...args)[0]?.[0];
const freezingPoint = (draft: Partial<LabelDraft>, grams = 100, water = 0) =>
  answer("FREEZINGPOINT", [["water"], ["Thing"]], [[water], [grams]], ownOf(draft));

describe("a label read into a row that RIME.FREEZINGPOINT understands", () => {
  // USDA SR26, NDB 01211, whole milk; sodium 43 mg. Milk freezes at −0.522 °C on average (−0.512 to −0.550).
  const milk: Partial<LabelDraft> = {
    parts: { fat: 3.3, carbohydrate: 4.8, sugars: 4.8, protein: 3.2, salt: 0.11 },
    split: "milk",
  };

  test("milk from its label freezes where milk does, its salts not forgotten and not counted twice", () => {
    expect(Math.abs((freezingPoint(milk) as number) + 0.522)).toBeLessThan(0.03);
    expect(rowOf(milk)).not.toHaveProperty("sodium chloride");
    expect(rowOf({ ...milk, parts: { ...milk.parts, salt: 1.11 } })["sodium chloride"]).toBeCloseTo(
      1,
      1,
    );
  });

  test("lemonade with 10 g of sugar freezes as the printed sucrose solution does", () => {
    // CRC Handbook, 102nd ed.: 10 % sucrose, −0.63 °C
    const lemonade = { parts: { carbohydrate: 10, sugars: 10 } };
    expect(Math.abs((freezingPoint(lemonade) as number) + 0.63)).toBeLessThan(0.01);
    expect(rowOf(lemonade)).toMatchObject({ water: 90, sugars: 10 });
  });

  test("the same sugar as glucose and fructose lowers it nearly twice as much", () => {
    // CRC Handbook: 10 % glucose −1.17, 10 % fructose −1.16 °C
    const invert = { parts: { carbohydrate: 10, sugars: 10 }, split: "invert" as const };
    expect(Math.abs((freezingPoint(invert) as number) + 1.165)).toBeLessThan(0.015);
  });

  test("a spirit of 40 % by volume is 33.3 % ethanol by mass", () => {
    // OIML R 22: 40 % vol is 33.3 % by mass
    const spirit = { parts: { abv: 40 } };
    const grams = answer("COMPONENT", "Thing", 100, "ethanol", ownOf(spirit)) as number;
    expect(Math.abs(grams - 33.3)).toBeLessThan(0.05);
    expect(rowOf(spirit)["water"]).toBeCloseTo(66.7, 1);
  });

  test("figures per 100 mL and per serving become figures per 100 g", () => {
    const syrup = { parts: { sugars: 80, carbohydrate: 80 }, gramsPerMl: 1.25 };
    expect(rowOf({ ...syrup, perUnit: "mL" })["sugars"]).toBeCloseTo(64, 10);
    expect(rowOf({ parts: { sugars: 8, carbohydrate: 8 }, per: 40 })["sugars"]).toBeCloseTo(20, 10);
    expect(read({ ...syrup, perUnit: "mL", gramsPerMl: null }).fault).toMatch(/1 mL/);
  });

  test("starch and fibre are inert, and fibre within the carbohydrate is not counted twice", () => {
    const parts = { fat: 10, carbohydrate: 60, sugars: 20, fibre: 8, protein: 7 };
    expect(rowOf({ parts })).toMatchObject({ inert: 48, water: 15 });
    expect(rowOf({ parts, isFibreInside: true })).toMatchObject({ inert: 40, water: 23 });
    expect(read({ parts }).notes.join(" ")).toMatch(/40\.0 g of carbohydrate.*starch/);
  });

  test("sugars can be split as in an entry of the larder", () => {
    const jam = { parts: { carbohydrate: 60, sugars: 60 }, split: "like" as const };
    const row = rowOf({ ...jam, splitLike: "honey, average" });
    expect(row["fructose"]! as number).toBeGreaterThan(row["glucose"] as number);
    const sugars = ["sucrose", "glucose", "fructose", "maltose", "galactose"];
    const sum = sugars.reduce((total, name) => total + ((row[name] as number | undefined) ?? 0), 0);
    expect(sum).toBeCloseTo(60, 2);
    expect(read({ ...jam, splitLike: "honee" }).fault).toMatch(/“honee”/);
  });

  test("the same as an entry answers as that entry", () => {
    const same = { isSame: true, sameAs: "whole milk" };
    expect(freezingPoint(same)).toBe(answer("FREEZINGPOINT", "whole milk", 100));
    expect(read({ isSame: true, sameAs: "wole milk" }).fault).toMatch(/whole milk/);
  });

  test("unread allergens stay unknown, and cautions and source go along", () => {
    const parts = { sugars: 10 };
    const allergensOf = (draft: Partial<LabelDraft>) =>
      callFunction("CAUTIONS", "Thing", 100, ownOf(draft)).map(([text]) => text);
    expect(allergensOf({ parts })).toContain("Allergens: unknown.");
    expect(allergensOf({ parts, allergens: ["milk", "soy"] })).toContain("Allergens: milk, soy.");
    expect(rowOf({ parts, cautions: "hot" })).toMatchObject({
      cautions: "hot",
      source: "a label of our own making",
    });
  });
});

describe("what does not add up is said", () => {
  test.each<[string, Partial<LabelDraft>, RegExp]>([
    ["too much", { parts: { fat: 60, sugars: 50 } }, /110\.0 g per 100 g, 10\.0 g too much/],
    ["with its water", { parts: { sugars: 10, water: 80 } }, /90\.0 g, 10\.0 g off 100/],
    ["sugars above carbohydrate", { parts: { carbohydrate: 5, sugars: 9 } }, /more than the carb/],
    ["a polyol without a name", { parts: { carbohydrate: 5, polyols: 5 } }, /which polyol/],
    [
      "sugars one by one",
      { parts: { sugars: 9 }, split: "each", each: { lactose: 4 } },
      /4 g, not to 9/,
    ],
    ["an empty form", {}, /what the label says/],
    ["no name", { name: " ", parts: { sugars: 9 } }, /a name/],
    ["a name that would be a formula", { name: "=1+1", parts: { sugars: 9 } }, /cannot begin/],
  ])("%s", (_, draft, sentence) => {
    expect(read(draft).fault).toMatch(sentence);
  });

  test("water stated and right is taken as stated", () => {
    expect(read({ parts: { sugars: 10, water: 89 } })).toMatchObject({ fault: null });
    expect(rowOf({ parts: { sugars: 10, water: 89 } })["water"]).toBe(89);
  });
});

test.each([english, german])("new headers in $language mean what they stand for", (words) => {
  const read = Object.entries(words.larder.label.headers);
  expect(read.map(([, header]) => ownHeaderMeaning(header))).toEqual(read.map(([key]) => key));
});
