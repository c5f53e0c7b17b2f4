import type { Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const board = (said: string): Rows => [
  ["Zutat", "Gramm"],
  ["Vollmilch", 600],
  ["Kristallzucker", 150],
  [said],
];

/** A recipe with milk, and one with an ingredient that the sheet itself describes. */
const withOwn = (said: string): Readonly<Record<string, Rows>> => ({
  Sheet1: board(said),
  Eigene: [
    ["Name", "Wasser (g)", "Zucker (g)", "inert (g)"],
    ["Haferdrink, süß", 92, 5, 3],
    ["Saft der Nachbarin", 88, 12, 0],
    [],
    ["Zutat", "Menge (g)"],
    ["Haferdrink, süß", 350],
    ["Saft der Nachbarin", 100],
    ["Zucker", 50],
    [],
    ["Allergene: Hafer"],
  ],
});

const BOTTLES: Rows = [
  ["Flasche", "% vol", "je Gast (g)"],
  ["Gin", 40, 9],
  ["Weinbrand", 36, 19],
];
const WITH_GIN: Rows = [
  ["Zutat", "Gramm"],
  ["Gin", 40],
  ["Wasser", 500],
  ["Zucker", 150],
];

const CAUTION = "caution-not-named";

/** What is told of a recipe on a board or on another sheet, or of bottles by their strength. */
export const toldElsewhereCases: readonly RuleCase[] = [
  { rule: CAUTION, what: "words for the board", rows: board("Auf die Tafel: Milch"), cells: [] },
  {
    rule: CAUTION,
    what: "what is to be noted on the card",
    rows: board("Auf der Karte vermerken: Milch"),
    cells: [],
  },
  {
    rule: CAUTION,
    what: "what goes on the menu",
    rows: board("Write on the menu: milk, egg"),
    cells: [],
  },
  {
    rule: CAUTION,
    what: "allergens that are no ingredients, behind a colon",
    rows: board("Für den Service: Schalenfrüchte (Haselnüsse), Milch. Nüsse ganz"),
    cells: [],
  },
  { rule: CAUTION, what: "a step", rows: board("Dann dazu: Milch"), cells: ["A1:B3"] },
  {
    rule: CAUTION,
    what: "what is told of another sheet's own ingredient",
    rows: withOwn("kalt stellen"),
    cells: ["A1:B3"],
  },
  {
    rule: CAUTION,
    what: "a recipe beside one with an own ingredient",
    rows: withOwn("Allergene: Milch"),
    cells: [],
  },
  {
    rule: CAUTION,
    what: "words to those who eat",
    rows: board("Bitte beachten: Milch."),
    cells: [],
  },
  { rule: CAUTION, what: "other words", rows: board("Zuerst die Milch"), cells: ["A1:B3"] },
  {
    rule: "ambiguous-ingredient",
    what: "bottles with their strengths",
    rows: BOTTLES,
    cells: [],
  },
  {
    rule: "ambiguous-ingredient",
    what: "a spirit without its strength in a mix",
    rows: WITH_GIN,
    cells: ["A2"],
  },
  {
    ...{ rule: CAUTION, cells: ["A1:B4"] },
    what: "alcohol told of the bottles of another sheet",
    rows: {
      Sheet1: [...WITH_GIN.slice(0, 1), ["Wodka 40 %", 40], ...WITH_GIN.slice(2)],
      Flaschen: [["Zum Tränken (Alkohol: nicht für Kinder)"], [], ...BOTTLES],
    },
  },
  ...["A: Milch.", "Allerg.: Milch"].map((said) => ({
    ...{ rule: CAUTION, what: `a heading of hints with ${said}`, cells: [] },
    rows: [
      ["Sorte", "Vollmilch", "Zucker", "Hinweis"],
      ["Milcheis", 700, 150, said],
      ["Stracciatella", 690, 140, said],
    ] satisfies Rows,
  })),
  {
    ...{ rule: CAUTION, what: "shelves by their letters", cells: ["A1:D3"] },
    rows: [
      ["Sorte", "Vollmilch", "Zucker", "Fach"],
      ["Milcheis", 700, 150, "B: Milch"],
      ["Stracciatella", 690, 140, "B: Milch"],
    ],
  },
];
