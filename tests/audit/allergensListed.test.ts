import type { Rows } from "./bookOf";
import { findingsOf, of } from "./findingsOf";

/** Milk, egg and hazelnuts are in it, and that the yolk is pasteurised is told. */
const ICE: Rows = [
  ["Ingredient", "Amount (g)"],
  ["Whole milk", 500],
  ["Egg yolk", 60],
  ["Hazelnut paste", 40],
  ["Sucrose", 100],
  ["Total", 700],
  [],
  ["Yolk pasteurised."],
];

const isSilent = (sheets: Readonly<Record<string, Rows>>): boolean =>
  of(findingsOf(sheets), "caution-not-named").length === 0;

const withText = (text: string) => ({ Ice: [...ICE, [], [text]] });

describe("All the allergens of a mix listed one behind the other", () => {
  test.each([
    "Ask before anyone eats. In it: milk, egg, tree nuts (hazelnuts).",
    "What some cannot have: milk, egg, hazelnuts",
    "Zutaten, die Probleme machen können: Milch, Ei, Nüsse",
    "Unverträglichkeit: Milch, Ei, Nüsse",
    "MILK EGG NUTS",
    "[Milch, Ei, Nüsse]",
    "milk - egg - nuts",
    "enth. Milch, Ei, Haselnüsse",
    "not ok for: milk, egg, nut people",
    "Sag Bescheid: da ist Milch, Ei und Nuss drin",
    "Mind the nuts, egg and milk",
    "Milk, egg, nuts - ask first",
    "Sensitive to milk, eggs or nuts? Not this one.",
    "If you can't have milk, eggs or nuts take the sorbet",
    "Ingredients: whole MILK, sugar, EGG yolk, HAZELNUT paste",
    "Zutaten: VOLLMILCH, Zucker, EIGELB, HASELNUSSMARK",
    "G, C, H",
    "A: G C H",
    "Not dairy free.",
    "laktosefrei: nein",
    "Cont: milk",
  ])("%s", (text) => {
    expect(isSilent(withText(text))).toBe(true);
  });

  test.each([
    "Add milk, egg, nuts",
    "Wer einkauft: Milch, Eier, Nüsse",
    "Auf die Einkaufsliste: Milch, Eier, Nüsse",
    "Fridge: milk, eggs, nuts",
    "Still to buy: milk, eggs, nuts",
    "Milch, Ei, Nüsse verrühren",
    "First: milk, egg, nuts",
    "Contains no milk, egg or nuts",
    "In the pan: milk, egg",
    "Milk and egg ice with nuts",
    "INGREDIENTS FOR ONE POT",
    "A, B, D",
    "dairy free",
  ])("what tells the cook, or not all of them: %s", (text) => {
    expect(isSilent(withText(text))).toBe(false);
  });
});

describe("A table or a column of allergens", () => {
  const board = (rows: Rows) => ({ Ice: ICE, Board: rows });
  test.each([
    {
      what: "marks below their names",
      rows: [
        ["Eis", "Milch", "Ei", "Nüsse", "Gluten"],
        ["Haselnuss", "ja", "ja", "ja", "nein"],
      ],
    },
    {
      what: "marks beside their names",
      rows: [
        ["milk", "x"],
        ["egg", "x"],
        ["tree nuts", "x"],
        ["gluten", "-"],
      ],
    },
  ])("$what", ({ rows }) => {
    expect(isSilent(board(rows))).toBe(true);
  });

  test.each([
    {
      what: "one of them without a mark",
      rows: [
        ["Eis", "Milch", "Ei", "Nüsse"],
        ["Haselnuss", "ja", "nein", "ja"],
      ],
    },
    {
      what: "prices below their names",
      rows: [
        ["Shop", "Milk", "Eggs", "Nuts"],
        ["Corner", 1.2, 0.3, 9],
      ],
    },
    { what: "a list of what to buy", rows: [["Milk"], ["Eggs"], ["Nuts"], ["Paper bags"]] },
  ])("$what", ({ rows }) => {
    expect(isSilent(board(rows))).toBe(false);
  });
});
