import type { ShortCell } from "../../src/workbook/sheetFromRows";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const NAMES = ["Water", "Sucrose", "Fructose", "Glucose", "Lemon juice"];

/** A costed recipe in rows 2 to 6 with its total in row 7; the last column is made row by row. */
const costed = (last: (row: number) => ShortCell, ...more: Rows): Rows => [
  ["Ingredient", "Amount (g)", "Price per kg", "Cost"],
  ...NAMES.map((name, at) => [name, 100, 2, last(at + 2)]),
  ["Total", formula("SUM(B2:B6)", 500), null, formula("SUM(D2:D6)", 1)],
  ...more,
];
const cost = (row: number) => formula(`B${row}*C${row}/1000`, 0.2);
const plain = (...names: readonly ShortCell[]): Rows => [
  ["Ingredient", "Amount (g)"],
  ["Water", 500],
  ...names.map((name) => [name, 60]),
];

/** True and false examples of the rules about formulas, names and texts. */
export const structureCases: readonly RuleCase[] = [
  {
    rule: "inconsistent-formula",
    what: "one pattern down the column",
    rows: costed(cost),
    cells: [],
  },
  {
    rule: "reference-slips",
    what: "a reference fixed in one row only",
    rows: costed((row) => (row === 4 ? formula("B4*$C$2/1000", 0.2) : cost(row))),
    cells: ["D4"],
  },
  {
    rule: "reference-slips",
    what: "a reference that moves in one row only",
    rows: costed((row) => formula(row === 5 ? "B5/B10" : `B${row}/$B$7`, 0.2)),
    cells: ["D5"],
  },
  {
    rule: "reference-slips",
    what: "a share of the total filled down without a $",
    rows: costed((row) => formula(`B${row}/B${row + 5}`, row === 2 ? 0.2 : "#DIV/0!")),
    cells: ["D3:D6"],
  },
  {
    rule: "reference-slips",
    what: "a share of the total with its $",
    rows: costed((row) => formula(`B${row}/$B$7`, 0.2)),
    cells: [],
  },
  {
    rule: "reference-slips",
    what: "another formula altogether",
    rows: costed((row) => (row === 4 ? formula("B4*C4/1000+D3", 0.2) : cost(row))),
    cells: [],
  },
  {
    rule: "hard-coded-number",
    what: "a price typed into a formula",
    rows: costed((row) => (row === 4 ? formula("B4*2.35/1000", 0.2) : cost(row))),
    cells: ["D4"],
  },
  {
    rule: "hard-coded-number",
    what: "a loss typed into a total",
    rows: costed(cost, ["After boiling (g)", formula("B7-45", 455)]),
    cells: ["B8"],
  },
  {
    rule: "hard-coded-number",
    what: "the same number down the column, told once",
    rows: costed((row) => formula(`B${row}*0.0024`, 0.2)),
    cells: ["D2:D6"],
  },
  ...["Tubs of 350 g", "Becher à 350 g", "350-g-Bomben"].map((label): RuleCase => ({
    ...{ rule: "hard-coded-number", cells: [] },
    what: `what each has of what is counted, as "${label}" says`,
    rows: costed(cost, [label, formula("B7/350", 1.4)]),
  })),
  ...["Tubs of 500 g", "Tubs, 350 of them"].map((label): RuleCase => ({
    ...{ rule: "hard-coded-number", cells: ["B8"] },
    what: `what each has of what is counted, not as "${label}" says`,
    rows: costed(cost, [label, formula("B7/350", 1.4)]),
  })),
  ...["Lemon ice for 20", "Lemon ice"].map((title): RuleCase => ({
    ...{ rule: "hard-coded-number", what: `three times as much for 60, under "${title}"` },
    rows: [
      [title],
      ["Ingredient", "g", "for 60"],
      ["water", 600, formula("B3*3", 1800)],
      ["sucrose", 150, formula("B4*3", 450)],
      ["lemon juice", 90, formula("B5*3", 270)],
    ],
    cells: title.endsWith("20") ? [] : ["C3:C5"],
  })),
  {
    ...{ rule: "hard-coded-number", cells: [] },
    what: "what each has of what is counted, which an answer happens to be as well",
    rows: costed(cost, ["Water frozen at −18 °C (%)", 80], ["80-g scoops", formula("B7/80", 6.3)]),
  },
  {
    rule: "hard-coded-number",
    what: "what each tub has, which has a cell of its own",
    rows: costed(cost, ["Tub (g)", 350], ["Tubs of 350 g", formula("B7/350", 1.4)]),
    cells: ["B9"],
  },
  {
    rule: "hard-coded-number",
    what: "the same number along a row, told once, and another beside it apart",
    rows: [
      ["Ingredient", "water", "sucrose", "lemon juice", "Total"],
      ["Amount (g)", 600, 200, 50, 850],
      ["Tonight (g)", ...["B", "C", "D"].map((column) => formula(`${column}2*1.35`, 9))],
      ["Later (g)", formula("B2*1.35", 9), formula("C2*1.35", 9), formula("D2*1.45", 9)],
    ],
    cells: ["B3:C4", "D3", "D4"],
  },
  {
    rule: "hard-coded-number",
    what: "a serving temperature typed into our own function though the sheet has a cell for it",
    rows: costed(
      cost,
      ["Serving temperature (°C)", -14],
      ["Ice", formula('RIME.ICEFRACTION(A2:A6,B2:B6,-14,"water")', 0.6)],
      ["Ice, by the cell", formula('RIME.ICEFRACTION(A2:A6,B2:B6,B8,"water")', 0.6)],
    ),
    cells: ["B9"],
  },
  {
    rule: "hard-coded-number",
    what: "0, 1, 100, unit factors, exponents, digits, places and thresholds",
    rows: costed(
      cost,
      ["Share", formula("ROUND(B2/B7*100,3)", 20)],
      ["Ounces", formula("B7/28.35", 17.6)],
      ["°F", formula("B7*9/5+32", 932)],
      ["Cube", formula("B7^3", 1.25e8)],
      ["Third", formula("INDEX(B2:B6,3,1)+VLOOKUP(A2,A2:C6,3,FALSE)", 102)],
      ["Large", formula('IF(B7>350,"yes","no")', "yes")],
      ["Typed sum", formula("250+75", 325)],
      ["Classroom depression", formula("1.86*B7/342.3", 2.7)],
      ["Ice", formula("RIME.ICEFRACTION(A2:A6,B2:B6,-14)", 0.6)],
      ["Code", formula('A2&" 25"', "Water 25")],
    ),
    cells: [],
  },
  {
    rule: "circular-reference",
    what: "a total that counts itself",
    rows: costed(cost, [null, formula("SUM(B2:B8)", 0)]),
    cells: ["B8"],
  },
  {
    rule: "circular-reference",
    what: "two cells that wait for each other",
    rows: costed(cost, ["Yield", formula("B9*2", 0)], ["Bars", formula("B8/2", 0)]),
    cells: ["B8"],
  },
  { rule: "circular-reference", what: "a chain of formulas", rows: costed(cost), cells: [] },
  {
    rule: "text-that-would-run",
    what: "a formula typed as text",
    rows: plain("=B2*0.5", "Sucrose", "+SUM(B2:B3)"),
    cells: ["A3", "A5"],
  },
  {
    rule: "text-that-would-run",
    what: "lists, telephone numbers, words and strokes",
    rows: plain("- sieve twice", "+49 30 123456", "@home", "-", "= thick", "-18 °C"),
    cells: [],
  },
  {
    rule: "formula-reaches-out",
    what: "a link in the names of a pasted recipe",
    rows: plain(formula('HYPERLINK("https://example.org","Sucrose")', "Sucrose"), "Fructose"),
    cells: ["A3"],
  },
  {
    rule: "formula-reaches-out",
    what: "a text that would start a program",
    rows: plain("Sucrose", "=cmd|' /C calc'!A0"),
    cells: ["A4"],
  },
  {
    rule: "formula-reaches-out",
    what: "a link to a supplier beside the recipe",
    rows: [
      ...plain("Sucrose"),
      [],
      ["Supplier", null, null, null, formula('HYPERLINK("https://example.org","shop")', "shop")],
    ],
    cells: [],
  },
  {
    rule: "name-with-odd-letters",
    what: "a blank after a name",
    rows: plain("Sucrose ", "Fructose"),
    cells: ["A3"],
  },
  {
    rule: "name-with-odd-letters",
    what: "a blank that is none for a look-up",
    rows: plain("Lemon\u00a0juice", "Fructose"),
    cells: ["A3"],
  },
  {
    rule: "name-with-odd-letters",
    what: "a Cyrillic letter in a Latin word",
    rows: plain("Suсrose", "Fructose"),
    cells: ["A3"],
  },
  {
    rule: "name-with-odd-letters",
    what: "a digit in the place of a letter, and an unseen sign",
    rows: plain("Who1e milk", "Fruc\u00adtose"),
    cells: ["A3", "A4"],
  },
  {
    rule: "name-with-odd-letters",
    what: "clean names, grades and umlauts",
    rows: plain("glucose syrup DE 42", "Weißer Zucker", "cream 35 % fat", "Äpfel"),
    cells: [],
  },
  {
    rule: "unknown-ingredient",
    what: "a name whose letters only look right: it has a rule of its own",
    rows: plain("Suсrose", "Fructose"),
    cells: [],
  },
  {
    rule: "more-digits-than-known",
    what: "an amount typed to a ten-thousandth of a gram, a point to the sixth decimal",
    rows: [
      ["Ingredient", "Amount (g)"],
      ["Water", 500.1234],
      ["Sucrose", 150],
      ["Freezing point (°C)", -1.812345],
    ],
    cells: ["B2", "B4"],
  },
  {
    rule: "more-digits-than-known",
    what: "a format that shows six decimals",
    rows: [
      ["Ingredient", "Amount (g)"],
      ["Water", 500],
      ["Sucrose", 150],
      [
        "Freezing point (°C)",
        { value: -1.8123456, formula: "RIME.FREEZINGPOINT(A2:A3,B2:B3)", format: "0.000000" },
      ],
    ],
    cells: ["B4"],
  },
  {
    rule: "more-digits-than-known",
    what: "a tenth of a gram, kilograms to the gram, a formula without a format",
    rows: [
      ["Ingredient", "Mass (kg)"],
      ["Water", 0.5121],
      ["Sucrose", { value: 0.15, format: "0.000" }],
      ["Freezing point (°C)", formula("RIME.FREEZINGPOINT(A2:A3,B2:B3)", -1.8123456)],
    ],
    cells: [],
  },
  {
    rule: "input-without-unit",
    what: "amounts and a temperature without one",
    rows: [
      ["Ingredient", "Amount"],
      ["Water", 500],
      ["Sucrose", 150],
      [],
      ["Freezer temperature", -18],
    ],
    cells: ["B1", "B5"],
  },
  {
    rule: "input-without-unit",
    what: "units in headers, cells, formats and notes",
    rows: {
      Sheet1: [
        ["Ingredient", "Amount"],
        ["Water", { value: 500, format: '0 "g"' }],
        ["Sucrose", { value: 150, format: '0 "g"' }],
        [],
        ["Freezer temperature", -18, "°C"],
        ["Room temperature (°C)", 21],
      ],
      Noted: [["All weights in grams"], ["Ingredient", "Amount"], ["Water", 500], ["Sucrose", 150]],
    },
    cells: [],
  },
];
