import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Trials in rows, all of whose amounts come to 1, and what is weighed in for them. */
const trials = (sugar: number, batch: string, dextrose = "Dextrose-Monohydrat") => ({
  Plan: [
    ["Versuch", "Wasser", "Zucker", dextrose],
    ["V1", 0.745, sugar, 0.043],
    ["V2", 0.782, 0.187, 0.031],
    ["V3", 0.801, 0.174, 0.025],
  ] satisfies Rows,
  Einwaagen: [
    [batch, 750],
    [],
    ["Versuch, g", "Wasser", "Zucker", dextrose],
    ...[2, 3, 4].map((row) => [
      `V${row - 1}`,
      ...["B", "C", "D"].map((column) => formula(`Plan!${column}${row}*$B$1`, 150)),
    ]),
  ] satisfies Rows,
});

/** Each line's water by a share of its own: 500 g poured in and 91.2 g of 100 g of lemon juice. */
const waterOfLines = (total: Rows[number][number]): Rows => [
  ["Ingredient", "g", "Water in 100 g (g)", "Water it brings (g)"],
  ["Water", 500, 100, formula("B2*C2/100", 500)],
  ["Lemon juice", 100, 91.2, formula("B3*C3/100", 91.2)],
  ["Sucrose", 150, 0, formula("B4*C4/100", 0)],
  ["Total", formula("SUM(B2:B4)", 750), null, total],
];

const lolly = (label: string): Rows => [
  ["Ingredient", "g", "Used up (£)"],
  ["Water", 850, 0.1],
  ["Sucrose", 150, 0.3],
  ["Total", formula("SUM(B2:B3)", 1000), formula("SUM(C2:C3)", 0.4)],
  [],
  [label, 0.06],
  ["One costs us (£)", formula("C4/12+B6", 0.0933)],
];

/** Amounts left of their names, and answers with their units beyond a free column, from the list's header on. */
const hut = (point: number, water: number): Rows => [
  ["Menge", "Einheit", "Was", null, "Gefrierpunkt", point, "°C"],
  [750, "g", "Wasser", null, "Wasser drin", water, "g"],
  [150, "g", "Saccharose", null, "Eis in der Truhe bei −20 °C, von der ganzen Masse", 0, "%"],
  [100, "g", "Zitronensaft", null, "Zucker je 100 g Wasser", 18, "g"],
  [formula("SUM(A2:A4)", 1000), "g", "zusammen"],
];

/** Parts of a whole, in rows and below lines, and numbers whose unit a formula tells. */
export const wholeCases: readonly RuleCase[] = [
  {
    ...{ rule: "more-digits-than-known", cells: [], what: "rows of fractions that come to 1" },
    rows: trials(0.212, "Ein Versuch (g)"),
  },
  {
    ...{ rule: "percent-and-fraction", cells: ["C2"], what: "per cent in rows of fractions" },
    rows: trials(21.2, "Ein Versuch (g)"),
  },
  {
    ...{ rule: "percent-and-fraction", cells: [], what: "rows of fractions" },
    rows: trials(0.212, "Ein Versuch (g)"),
  },
  {
    ...{
      rule: "input-without-unit",
      cells: ["B1"],
      what: "a batch that fractions of another sheet are of",
    },
    rows: trials(0.212, "Ein Versuch"),
  },
  {
    ...{ rule: "input-without-unit", cells: [], what: "fractions, and a batch in grams" },
    rows: trials(0.212, "Ein Versuch (g)"),
  },
  {
    ...{
      rule: "hydrate-not-stated",
      cells: ["D1"],
      what: "a name once where a list is worked out from another",
    },
    rows: trials(0.212, "Ein Versuch (g)", "Dextrose"),
  },
  {
    ...{
      rule: "water-not-counted",
      cells: ["D5"],
      what: "a total that links to the water poured in",
    },
    rows: waterOfLines(formula("B2", 500)),
  },
  {
    ...{
      rule: "total-incomplete",
      cells: [],
      what: "the water poured in typed for a total, told as such",
    },
    rows: waterOfLines(500),
  },
  {
    ...{ rule: "water-not-counted", cells: [], what: "the water of all lines" },
    rows: waterOfLines(formula("SUM(D2:D4)", 591.2)),
  },
  {
    ...{ rule: "error-in-an-amount", cells: ["D5"], what: "an error in a row of totals" },
    rows: waterOfLines(formula("SUM(D2:D4)/C5", { error: "#DIV/0!" })),
  },
  {
    ...{ rule: "input-without-unit", cells: ["B6"], what: "what is added to pounds" },
    rows: lolly("Stick and bag"),
  },
  {
    ...{ rule: "input-without-unit", cells: [], what: "pounds that are added to pounds" },
    rows: lolly("Stick and bag (£)"),
  },
  {
    ...{
      rule: "water-not-counted",
      cells: ["F2"],
      what: "answers with units beyond a free column",
    },
    rows: hut(-1.1, 750),
  },
  {
    ...{
      rule: "freezing-point-sign",
      cells: ["F1"],
      what: "an answer in the row of a list's header",
    },
    rows: hut(1.1, 841),
  },
  {
    ...{
      rule: "temperature-units-mixed",
      cells: [],
      what: "a share of ice whose unit stands behind it",
    },
    rows: hut(-1.1, 841),
  },
];
