import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST: Rows = [
  ["Ingredient", "g"],
  ["water", 100],
  ["whole milk", 500],
  ["sucrose", 120],
  ["Total", formula("SUM(B2:B4)", 720)],
];
const UNITS_BESIDE: Rows = [
  ["Amount", "Unit", "Ingredient"],
  [500, "g", "whole milk"],
  [150, "g", "cream 35 % fat"],
  [120, "g", "sucrose"],
  [770, "g", "Total"],
];
const spring = (amount: Rows[number][number]): Rows => [
  ["grams", "Coffee granita", "Cocoa ice"],
  ["brewed coffee", amount, null],
  ["sugar", 124, null],
  ["dextrose monohydrate", 29, 117],
  ["water", null, 1616],
  ["cocoa powder", null, 187],
];
const shelf = (...readings: Rows[number]): Rows => [
  ["Batch", "Shelf (°C)"],
  ...readings.map((reading, at) => [`Batch ${at + 1}`, reading]),
];
const baths = (measured: Rows[number][number]): Rows => [
  ["Brine baths, amounts in grams"],
  ["Bath", "water", "salt", "Freezing point (°C)", "Measured (°C)"],
  ["Bath 1", 5000, 612, -7.31, -7.3],
  ["Bath 2", 3500, 859, -16.2, measured],
];

/** Answers above the columns of the recipes, under their titles. */
const answersOnTop = (lemon: number, milk: number): Rows => [
  ["Sugars, % of the mix", lemon, milk],
  [],
  ["grams", "Lemon ice", "White ice"],
  ["lemon juice", 80, 0],
  ["whole milk", 0, 400],
  ["water", 500, 100],
  ["sucrose", 200, 110],
  ["dextrose monohydrate", 20, 20],
];
/** A list of drinks with its own answer in rows, above syrups in columns. */
const DRINKS_ON_TOP: Rows = [
  ["Drink", "rum 40 %", "vodka 37.5 %", "All"],
  ["Poured (g)", 50, 20, 70],
  ["Pure alcohol (g)", 16.7, 6.2, 22.9],
  [],
  ["Syrup", "thin", "thick"],
  ["Sucrose (g)", 120, 245],
  ["Water (g)", 300, 350],
];

/** True and false examples of answers and readings by where they stand. */
/** Answers in words, with the marks that each brings behind them. */
const marked = (point: Rows[number][number]): Rows => [
  ...LIST,
  [],
  ["Model answers", null, null, "marks"],
  ["Freezing point", point, null, 2],
  ["Water in the mix", "537 g", null, 3],
];

export const placedAnswerCases: readonly RuleCase[] = [
  {
    rule: "result-differs",
    what: "marks behind an answer that is told in words",
    rows: marked("-1.6 °C"),
    cells: [],
  },
  {
    rule: "freezing-point-sign",
    what: "a number behind the words of a freezing point",
    rows: marked("-1.6 °C"),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "a number that is the answer, with marks behind",
    rows: marked(-4.6),
    cells: ["B8"],
  },
  {
    rule: "result-differs",
    what: "an answer behind the words of how it is worked out",
    rows: [...LIST, [], ["Freezing point", "0 °C minus depression", -4.6, "°C"]],
    cells: ["C7"],
  },
  {
    rule: "per-water-or-per-mix",
    what: "an answer above a recipe's column",
    rows: answersOnTop(27.5, 32.6),
    cells: ["C1"],
  },
  {
    rule: "per-water-or-per-mix",
    what: "answers above the columns, all right",
    rows: answersOnTop(27.5, 23.4),
    cells: [],
  },
  {
    rule: "result-differs",
    what: "answers of another list above the columns",
    rows: DRINKS_ON_TOP,
    cells: [],
  },
  {
    rule: "water-not-counted",
    what: "water below the total, among the answers, that is only what was poured in",
    rows: [...LIST, ["Freezing point (°C)", -1.75], ["Water (g)", 100]],
    cells: ["B7"],
  },
  {
    rule: "water-not-counted",
    what: "water below the total that has no answers beside it and may be added later",
    rows: [...LIST, ["Water (g)", 100]],
    cells: [],
  },
  {
    rule: "result-differs",
    what: "water below the total that is none of the mix",
    rows: [...LIST, ["Freezing point (°C)", -1.75], ["Water (g)", 690]],
    cells: ["B7"],
  },
  {
    rule: "result-differs",
    what: "an answer left of its label, below a total with its unit between",
    rows: [...UNITS_BESIDE, [-6, "°C", "Freezing point"]],
    cells: ["A6"],
  },
  {
    rule: "error-in-an-amount",
    what: "an error in the first line, by which it is still one of the list",
    rows: spring({ error: "#VALUE!" }),
    cells: ["B2"],
  },
  {
    rule: "temperature-units-mixed",
    what: "one shelf of four in °F",
    rows: shelf(-17, 1, -20, -16),
    cells: ["B3"],
  },
  {
    rule: "temperature-units-mixed",
    what: "a shelf that is warmer than the others in either unit",
    rows: shelf(-17, 14, -20, -16),
    cells: [],
  },
  {
    rule: "temperature-units-mixed",
    what: "a thermometer's reading in °F beside the freezing point of its brine",
    rows: baths(2.8),
    cells: ["E4"],
  },
  {
    rule: "temperature-units-mixed",
    what: "a thermometer's reading that is off by two kelvins",
    rows: baths(-14.2),
    cells: [],
  },
  {
    rule: "temperature-units-mixed",
    what: "a right freezing point of a mix whose largest share was typed as a fraction",
    rows: [
      ["Ingredient", "%"],
      ["water", 0.65],
      ["sucrose", 20],
      ["whole milk", 15],
      [],
      ["Freezing point (°C)", -1.9],
    ],
    cells: [],
  },
];
