import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

type Cell = Rows[number][number];
interface Changes {
  readonly goal?: string;
  readonly ice?: Cell;
  readonly sugars?: Cell;
  readonly label?: string;
}

/** Two mixes with a column free behind each, their answers above them; the second's as given. */
const board = ({ goal = "scooped at −13", ice, sugars = 33, label = "Sold as" }: Changes): Rows => [
  ["cabinet set to (°C)", -13],
  ["deep store (°C)", -22],
  [],
  [null, "Orange ice", null, "Milk ice"],
  ["Starts to freeze [°C]", -2.3, null, -2.3],
  ["Sugars [g per 100 g water]", 30.6, null, sugars],
  [
    ...["Water frozen in the cabinet [%]"],
    formula('100*RIME.ICEFRACTION($A$12:$A$16,B12:B16,$B$1,"water")', 77),
    null,
    ice ?? formula('100*RIME.ICEFRACTION($A$12:$A$16,D12:D16,$B$1,"water")', 77),
  ],
  [label, "scooped at −13", null, goal],
  ["Board", null, null, "Contains milk."],
  [],
  ["Ingredient, in %", "Mix 1", "in the lot", "Mix 2", "in the lot"],
  ["orange juice", 70, formula("B12*40", 2800), null, formula("D12*40", 0)],
  ["whole milk", null, formula("B13*40", 0), 58, formula("D13*40", 2320)],
  ["cream 35 % fat", null, formula("B14*40", 0), 23, formula("D14*40", 920)],
  ["sugar", 17, formula("B15*40", 680), 19, formula("D15*40", 760)],
  ["water", 13, formula("B16*40", 520), null, formula("D16*40", 0)],
  ["Sum", formula("SUM(B12:B16)", 100), null, formula("SUM(D12:D16)", 100)],
];

/** What stores shall be at and what they are; the second as read, with a remark behind it. */
const stores = (read: number, remark: string | null = null): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ["Sucrose", 150],
  [],
  ["Store", "Set [°C]", "Today [°C]", "Remark"],
  ["blast freezer", -36, -35],
  ["cold store 1", -20, read, remark],
  ["cold store 2", -20, -19],
  ["counter", -13, -12.5],
];

const FAHRENHEIT = "temperature-units-mixed";
const example = (
  rule: string,
  what: string,
  rows: Rows,
  cells: readonly string[] = [],
): RuleCase => ({ rule, what, rows, cells });

/** Sheets of a trade school: mixes beside each other with a column free between them, and what stores are at. */
export const vocationalCases: readonly RuleCase[] = [
  ...["misses-its-target", "ice-of-water-or-mix", "number-as-text", "result-differs"].map((rule) =>
    example(rule, "answers above mixes beside each other, all right", board({})),
  ),
  ...["Sold as", "what for"].map((label) =>
    example(
      "misses-its-target",
      `a target without its temperature beside one that tells it, after "${label}"`,
      board({ goal: "drinkable slush", label }),
      ["D8"],
    ),
  ),
  example("ice-of-water-or-mix", "a typed share among formulas", board({ ice: 49 }), ["D7"]),
  example("ice-of-water-or-mix", "a typed share of the water", board({ ice: 77 })),
  example("number-as-text", "a text over a free column", board({ sugars: "33,1" }), ["D6"]),
  example("number-as-text", "words over a free column", board({ sugars: "ask table 2" })),
  example(FAHRENHEIT, "a store that is as cold as it shall be in °F", stores(-5), ["C7"]),
  example(FAHRENHEIT, "stores about as cold as they shall be", stores(-18)),
  example(FAHRENHEIT, "a store too warm in either unit", stores(-12)),
  example(FAHRENHEIT, "a warm store whose door was open", stores(-5, "door left open")),
];
