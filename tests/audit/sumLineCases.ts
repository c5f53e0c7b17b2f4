import { formula } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const HEAD = ["Grams", "Lemon ice", "Cocoa ice", "Milk ice", "To have in store"] as const;
const store = (range: string, value: number) => formula(`SUM(${range})`, value);

/** Four lines of three flavours, with what the last column makes of the second one. */
const flavours = (second: ReturnType<typeof formula> | number) => [
  HEAD,
  ["Water", 600, 500, null, store("B2:D2", 1100)],
  ["Sucrose", 200, 180, 150, second],
  ["Milk", null, null, 700, store("B4:D4", 700)],
  ["Cocoa powder", null, 60, null, store("B5:D5", 60)],
  ["Batch", 800, 740, 850, null],
];

/** Sums that stand beside, below or between lists: along their lines, after blank rows, of what is worked out. */
export const sumLineCases: readonly RuleCase[] = [
  {
    rule: "total-incomplete",
    what: "a sum over the recipes of a line that leaves one out",
    rows: flavours(formula("SUM(B3:C3)", 380)),
    cells: ["E3"],
  },
  {
    rule: "total-incomplete",
    what: "a number typed among such sums",
    rows: flavours(500),
    cells: ["E3"],
  },
  {
    rule: "total-incomplete",
    what: "whole sums over recipes, and one with what is in the sack already",
    rows: flavours(formula("SUM(B3:D3)-100", 430)),
    cells: [],
  },
  {
    rule: "total-incomplete",
    what: "a weekly plan whose sum of one ice leaves out Sunday",
    rows: {
      Plan: [
        ["Portions", "Fri", "Sat", "Sun", "Weekend"],
        ["Lemon ice", 20, 30, 25, formula("SUM(B2:D2)", 75)],
        ["Cocoa ice", 15, 20, 30, formula("SUM(B3:C3)", 35)],
        ["Milk ice", 10, 12, 9, formula("SUM(B4:D4)", 31)],
        ["Nut ice", 8, 8, 8, formula("SUM(B5:D5)", 24)],
      ],
      Recipe: [
        ["Ingredient", "Amount (g)"],
        ["Water", 600],
        ["Sucrose", 200],
      ],
    },
    cells: ["E3"],
  },
  {
    rule: "total-incomplete",
    what: "a typed total after a blank row, where the alcohol is added up",
    rows: [
      ["Ingredient", "ABV (%)", "Weight (g)", "Alcohol in it (g)"],
      ["water", null, 400, null],
      ["caster sugar", null, 150, null],
      ["lemon juice", null, 60, null],
      ["gin 40 %", 40, 30, formula("C5*RIME.ABVTOMASSFRACTION(B5)", 10)],
      [],
      ["All of it", null, 560, formula("SUM(D2:D5)", 10)],
    ],
    cells: ["C7"],
  },
  {
    rule: "total-incomplete",
    what: "a typed total of costs above what the sheet works out",
    rows: [
      ["Ingredient", "Amount (g)", "EUR/kg", "Cost (EUR)"],
      ["water", 500, 0.01, formula("B2*C2/1000", 0.005)],
      ["sucrose", 150, 2, formula("B3*C3/1000", 0.3)],
      ["lemon juice", 60, 5, formula("B4*C4/1000", 0.3)],
      ["Total", formula("SUM(B2:B4)", 710), null, 0.68],
    ],
    cells: ["D5"],
  },
  {
    rule: "total-incomplete",
    what: "a typed total of alcohol that is worked out line by line, and a right one",
    rows: {
      Bar: [
        ["Drink", "% vol", "Poured (g)", "Alcohol (g)"],
        ["vodka 40 %", 40, 30, formula("C2*RIME.ABVTOMASSFRACTION(B2)", 10)],
        ["rum 40 %", 40, 60, formula("C3*RIME.ABVTOMASSFRACTION(B3)", 20)],
        ["Alcohol altogether", null, null, 34],
      ],
      Bar2: [
        ["Drink", "% vol", "Poured (g)", "Alcohol (g)"],
        ["vodka 40 %", 40, 30, formula("C2*RIME.ABVTOMASSFRACTION(B2)", 10)],
        ["rum 40 %", 40, 60, formula("C3*RIME.ABVTOMASSFRACTION(B3)", 20)],
        ["Alcohol altogether", null, null, 30],
      ],
    },
    cells: ["D4"],
  },
  {
    rule: "freezing-point-sign",
    what: "typed answers and aims between the titles of recipes and their lines",
    rows: [
      ["What the van sells"],
      [],
      ["Flavour", "€ per kg", "Lemon", "Orange"],
      ["Sold as", null, "scooped at −13", "scooped at −13"],
      ["Freezing point (°C)", null, -2.7, 2.6],
      [],
      ["water", 0.01, 600, 500],
      ["sugar", 1.2, 200, 180],
      ["lemon juice", 4, 100, 20],
    ],
    cells: ["D5"],
  },
];
