import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const MILK = (heading: string, said: string | null): Rows => [
  ["Ingredient", "Amount (g)", heading, "Remark"],
  ["Whole milk", 500, said, null],
  ["Sucrose", 100, null, "fine"],
];

const PLAIN: Rows = [
  ["Ingredient", "g"],
  ["Whole milk", 500],
  ["Sucrose", 100],
];

/** A menu beside whose texts temperatures stand, and the recipe on another sheet. */
const menu = (said: string): Record<string, Rows> => ({
  Karte: [
    ["Tag", "Eis", "für die Gäste am Tisch", "Truhe (°C)"],
    ["Mo", "Milcheis", said, -15.1],
    ["Di", "Zitroneneis", null, -16.4],
  ],
  Rezepturen: MILK("Bemerkung", null),
});

/** Ways in which sheets do and do not tell the eater. */
export const sayingCases: readonly RuleCase[] = [
  ...["Allergens", "Declarable allergen", "Deklarationspflichtige Allergene"].map((heading) => ({
    ...{ rule: "caution-not-named", cells: ["A1:D3"] },
    what: `a heading of allergens with nothing under it: ${heading}`,
    rows: MILK(heading, null),
  })),
  {
    rule: "caution-not-named",
    what: "allergens in a column of the list",
    rows: MILK("Allergens", "milk"),
    cells: [],
  },
  ...["Tasters, this has milk.", "Tell the floor: the ice has milk, egg. Keep it cold."].map(
    (said): RuleCase => ({
      ...{ rule: "caution-not-named", what: said, rows: [...MILK("Notes", null), [said]] },
      cells: [],
    }),
  ),
  ...["When the milk has cooled, stir in the rest.", "Bottles, alcohol by weight"].map(
    (said): RuleCase => ({
      ...{ rule: "caution-not-named", what: `the cook is told: ${said}`, cells: ["A1:D4"] },
      rows: [...MILK("Notes", null), ["Vodka 40 %", 30], [said]],
    }),
  ),
  ...(
    [
      ["egg yolk, pasteurised", []],
      ["Eigelb (pasteurisiert)", []],
      ["egg yolk", ["A1:B4"]],
      ["raw egg yolk", ["A1:B4"]],
    ] as const
  ).map(([yolk, cells]): RuleCase => ({
    ...{ rule: "caution-not-named", what: `the name says whether it is raw: ${yolk}`, cells },
    rows: [...PLAIN, [yolk, 90], [], ["Contains milk and egg."]],
  })),
  {
    rule: "caution-not-named",
    what: "a label of allergens without a word, and alcohol as a number only",
    rows: [
      ["Ingredient", "Amount (g)"],
      ["Whole milk", 500],
      ["Vodka 40 %", 30],
      [],
      ["Alcohol (g)", 9.5],
      ["Allergens"],
      ["Shelf", "B"],
    ],
    cells: ["A1:B3"],
  },
  {
    rule: "caution-not-named",
    what: "a label with its words beside it",
    rows: [...MILK("Remarks", null), [], ["Allergens", null, "milk"]],
    cells: [],
  },
  {
    rule: "caution-not-named",
    what: "a label with its words below it",
    rows: [...MILK("Remarks", null), [], ["Allergens"], ["Milk"]],
    cells: [],
  },
  {
    rule: "caution-not-named",
    what: "a card with nothing but allergens",
    rows: [...MILK("Remarks", null), [], ["Tell the guests"], ["milk; tree nuts (walnuts)"]],
    cells: [],
  },
  {
    rule: "caution-not-named",
    what: "allergens and a sentence of what else to mind, beside a number",
    rows: menu("Milch. Honig: Babys unter 12 Monaten bekommen Obst."),
    cells: [],
  },
  {
    rule: "caution-not-named",
    what: "a lone word beside a number",
    rows: menu("Milch"),
    cells: ["A1:D3"],
  },
  {
    rule: "caution-not-named",
    what: "glycerol, which its own name does not tell of",
    rows: [
      ["Ingredient", "Amount (g)"],
      ["Water", 500],
      ["Sucrose", 100],
      ["Glycerol", 20],
    ],
    cells: ["A1:B4"],
  },
  {
    rule: "caution-not-named",
    what: "a note below the list that names the allergens without a label",
    rows: {
      Walnuts: [
        ["Zutat", "Menge (g)"],
        ["Vollmilch", 500],
        ["Zucker", 100],
        ["Walnüsse", 60],
        [],
        ["Milch, Schalenfrüchte (Walnüsse); ganze Nüsse: nicht für kleine Kinder"],
      ],
    },
    cells: [],
  },
  {
    rule: "caution-not-named",
    what: "a lone word for the allergen below the amounts",
    rows: [...MILK("Remarks", null), [], [null, null, "milk"]],
    cells: [],
  },
  {
    rule: "caution-not-named",
    what: "the allergen's name as an ingredient, a heading, the label of a number and in a shopping list",
    rows: {
      Recipe: [
        ["Ingredient", "Amount (g)"],
        ["Whole milk", 500],
        ["Egg yolk", 60],
        ["Sugar", 90],
      ],
      Prices: [["Shop", "Milk", "Eggs"], ["Corner", 1.2, 0.3], [], ["Milk, eggs", "EUR", 1.5]],
      Shopping: [["Milk"], ["Eggs"], ["Paper bags"]],
    },
    cells: ["A1:B4"],
  },
  {
    rule: "caution-not-named",
    what: "a count of what the store holds, beside a recipe without allergens",
    rows: {
      Store: [
        ["Item", "Shelf", "Counted (kg)"],
        ["Honey", "A", 12],
        ["Whole milk", "B", 6],
        ["Sugar", "A", 5],
      ],
      Recipe: [
        ["Ingredient", "Amount (g)"],
        ["Water", 500],
        ["Sugar", 90],
      ],
    },
    cells: [],
  },
  {
    rule: "ambiguous-ingredient",
    what: "allergens right of the amounts of trials",
    rows: [
      ["Trial (g)", "Whole milk", "Cream 35 % fat", "Sucrose", "Allergens"],
      ["A", 500, 100, 120, "Milk"],
      ["B", 510, 90, 125, "Milk"],
      ["C", 520, 80, 120, "Milk"],
    ],
    cells: [],
  },
  {
    ...{ rule: "caution-not-named", cells: ["A1:B3"], what: "what is told of another recipe only" },
    rows: { Milk: [...PLAIN, [], ["Contains: milk."]], Party: PLAIN },
  },
  {
    ...{ rule: "caution-not-named", cells: [], what: "what a board tells of all" },
    rows: { Milk: PLAIN, Party: PLAIN, Board: [["All our ices contain milk."]] },
  },
  {
    ...{ rule: "caution-not-named", cells: [], what: "what is told of the recipe once more" },
    rows: {
      Milk: [...PLAIN, [], ["Contains: milk."]],
      Party: [
        ["Ingredient", "g"],
        ["Whole milk", formula("Milk!B2*4", 2000)],
        ["Sucrose", formula("Milk!B3*4", 400)],
      ],
    },
  },
];
