import type { RuleCase } from "./ruleCase";

/** How many digits are too many depends on the unit, which has to be written. */
export const writtenUnitsCases: readonly RuleCase[] = [
  {
    rule: "more-digits-than-known",
    what: "amounts in a unit that is not written",
    rows: [
      ["Ingredient", "Amount"],
      ["Water", 500.1234],
      ["Sucrose", 150],
      ["Lemon juice", 20],
    ],
    cells: [],
  },
  {
    rule: "more-digits-than-known",
    what: "an amount of a sheet whose title says the unit of all",
    rows: [
      ["Lemon ice, all amounts in g"],
      [],
      ["Ingredient", "Lemon ice"],
      ["Water", 500.1234],
      ["Sucrose", 150],
      ["Lemon juice", 20],
    ],
    cells: ["B4"],
  },
  {
    rule: "more-digits-than-known",
    what: "an amount with its unit in a cell behind it",
    rows: [
      ["Ingredient", "Amount", "Unit"],
      ["Water", 500.1234, "g"],
      ["Sucrose", 150, "g"],
      ["Lemon juice", 20, "g"],
    ],
    cells: ["B2"],
  },
];
