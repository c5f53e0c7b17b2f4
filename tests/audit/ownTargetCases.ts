import type { Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const recipe = (style: string): Rows => [
  ["Ingredient", "g"],
  ["Water", 800],
  ["Sucrose", 200],
  ["Style", style],
];

const HEADERS = ["Name", "Temperature (°C)", "Ice from", "Ice to", "Basis"];

/** 200 g sucrose in 800 g water at the eutectic, 62.4 % at −13.95 °C (Young & Jones 1949): 85 % of the water is ice. */
const books: Readonly<Record<string, Readonly<Record<string, Rows>>>> = {
  missed: {
    Mix: recipe("window counter"),
    Aims: [HEADERS, ["Window counter", -13.9, 0.6, 0.7, "water"]],
  },
  met: {
    Mix: recipe("window counter"),
    Aims: [HEADERS, ["Window counter", -13.9, 0.8, 0.9, "water"]],
  },
  refused: {
    Mix: recipe("window counter"),
    Aims: [HEADERS, ["Window counter", -13.9, 60, 70, "water"]],
  },
  "of a catalogue name": {
    Mix: recipe("drinkable slush"),
    Aims: [HEADERS.slice(0, 4), ["Drinkable slush", -13.9, 0.8, 0.9]],
  },
};

const ownCase = (what: string, book: string, cells: readonly string[]): RuleCase => ({
  rule: "misses-its-target",
  what,
  rows: books[book]!,
  cells,
});

/** Serving targets that the workbook itself defines, headed as RIME.CHECK wants them. */
export const ownTargetCases: readonly RuleCase[] = [
  ownCase("a mix too hard for a target of the workbook's own", "missed", ["B4"]),
  ownCase("a target of the workbook's own that is met", "met", []),
  ownCase("a target in per cent, which RIME.CHECK refuses", "refused", []),
  ownCase("a catalogue target whatever the workbook calls so", "of a catalogue name", ["B4"]),
  {
    rule: "misses-its-target",
    what: "a target below its own list, which another list follows",
    rows: [
      ["Ingredient", "g"],
      ["Water", 850],
      ["Sucrose", 150],
      ["Style", "drinkable slush"],
      [],
      ["Ingredient", "g"],
      ["Water", 950],
      ["Sucrose", 50],
    ],
    cells: [],
  },
  {
    rule: "misses-its-target",
    what: "a target whose label nobody knows, since it names its temperature",
    rows: [
      ["Ingredient", "g"],
      ["Water", 950],
      ["Sucrose", 50],
      [],
      ["On the sign", "scooped at −13"],
    ],
    cells: ["B5"],
  },
  {
    rule: "misses-its-target",
    what: "a name of a style that may be a title",
    rows: [["ice pop"], ["Ingredient", "g"], ["Water", 990], ["Sucrose", 10]],
    cells: [],
  },
  {
    rule: "misses-its-target",
    what: "a target without a temperature below its list, whatever its label",
    rows: [
      ["Ingredient", "g"],
      ["Water", 990],
      ["Sucrose", 10],
      ["Goes out as", "drinkable slush"],
    ],
    cells: ["B4"],
  },
  {
    rule: "misses-its-target",
    what: "a title below a list that is a target's name",
    rows: [
      ["Ingredient", "g"],
      ["Water", 990],
      ["Sucrose", 10],
      ["Title on the menu", "slush"],
    ],
    cells: [],
  },
  {
    rule: "misses-its-target",
    what: "a column of targets beside recipes in rows, whatever its heading",
    rows: [
      ["Mix", "Water", "Sucrose", "Goes out as"],
      ["Weak", 990, 10, "drinkable slush"],
      ["Strong", 700, 300, "drinkable slush"],
    ],
    cells: ["D3", "D2"],
  },
  {
    rule: "misses-its-target",
    what: "a column of remarks beside recipes in rows",
    rows: [
      ["Mix", "Water", "Sucrose", "What guests say"],
      ["Weak", 990, 10, "slush"],
      ["Strong", 700, 300, "too sweet"],
      ["Other", 750, 250, "thin"],
    ],
    cells: [],
  },
];
