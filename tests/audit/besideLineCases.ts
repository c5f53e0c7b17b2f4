import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const ITEMS = [["Vollmilch"], ["Sahne 35 %"], ["Kristallzucker"]];
const GRAMS = [[600], [200], [150]];

const shareOfIce = (basis: "water" | "mix", temperatureC: number): number =>
  Math.round(
    1000 * Number(callFunction("ICEFRACTION", ITEMS, GRAMS, temperatureC, basis)[0]?.[0]),
  ) / 10;

/** Amounts and units left of the names, prices and what is declared right of them. */
const priced = (declared: string, given: { second?: string; sum?: number } = {}): Rows => [
  ["Menge", "Einheit", "Zutat", "€/kg", "Wert (€)", "zu deklarieren"],
  [0.6, "kg", "Vollmilch", 1.2, formula("A2*D2", 0.72), declared],
  [0.2, "kg", "Sahne 35 %", 5.5, formula(given.second ?? "A3*D3", 1.1), declared],
  [0.15, "kg", "Kristallzucker", 1.8, formula("A4*D4", 0.27)],
  [0.05, "kg", "Dextrose-Monohydrat", 2.4, formula("A5*D5", 0.12)],
  [...[formula("SUM(A2:A5)", 1), "kg", "zusammen", ""], given.sum ?? formula("SUM(E2:E5)", 2.21)],
];

/** Shares of what each line holds, which add up to nothing. */
const contents = (share: number): Rows => [
  ["Komponente", "Massenanteil (%)", "Wassergehalt (%)", "Trockenmasse (%)", "Wasser (g)"],
  ["Orangensaft", share, 88.3, 11.7, formula("B2*C2/10", 729.4)],
  ["Zucker", 11, 0, 100, formula("B3*C3/10", 0)],
  ["Glukosesirup DE 42", 6.4, 20, 80, formula("B4*C4/10", 12.8)],
  ["Summe", formula("SUM(B2:B4)", share + 17.4), "", "", formula("SUM(E2:E4)", 742.2)],
];

/** A list for two numbers of groups, and what the class is asked of it. */
const asked = (waterPercent: number): Rows => [
  ["Zutaten", "für eine Gruppe in g", "für alle in g"],
  ["Vollmilch", 600, formula("4*B2", 2400)],
  ["Sahne 35 %", 200, formula("4*B3", 800)],
  ["Kristallzucker", 150, formula("4*B4", 600)],
  ["Summe", formula("SUM(B2:B4)", 950), formula("SUM(C2:C4)", 3800)],
  [],
  ["Fragen zum Rezept", "Lösung"],
  ["1. Wie viel Prozent des Wassers sind bei −18 °C gefroren?", waterPercent, "%"],
  ["2. Wie viel Prozent der Masse sind bei −18 °C Eis?", shareOfIce("mix", -18), "%"],
];

/** The temperature is that of a freezer, read off. */
const readOff = (ofAll: number): Rows => [
  ["Gefrierfach, abgelesen (°C)", -17],
  [],
  ["Zutat", "Gramm"],
  ["Vollmilch", 600],
  ["Sahne 35 %", 200],
  ["Kristallzucker", 150],
  ["zusammen", formula("SUM(B4:B6)", 950)],
  ["gefroren (% vom Wasser)", shareOfIce("water", -17)],
  ["Eis darin (% von allem)", ofAll],
];

const dumplings = (label: string): Rows => [
  ["Bankett", "Hochzeit"],
  ["Gäste", 90],
  [label, 40],
  ["Reserve", 0.1],
  ["Bedarf (g)", formula("B2*B3*(1+B4)", 3960)],
  [],
  ["Produkt", "Anteil", "abwiegen (g)"],
  ["Orangensaft", 0.816, formula("B8*$B$5", 3231.4)],
  ["Zucker", 0.115, formula("B9*$B$5", 455.4)],
  ["Glukosesirup DE 42", 0.069, formula("B10*$B$5", 273.2)],
];

const CAUTION = "caution-not-named";

/** What stands beside the lines of a list, or is said and asked around it. */
export const besideLineCases: readonly RuleCase[] = [
  { rule: CAUTION, what: "a column of allergens", rows: priced("Milch"), cells: [] },
  { rule: CAUTION, what: "a column of remarks", rows: priced("Bio"), cells: ["A1:F6"] },
  {
    rule: "inconsistent-formula",
    what: "units before the names",
    rows: priced("Milch", { second: "A2*D3" }),
    cells: ["E3"],
  },
  { rule: "inconsistent-formula", what: "values of lines", rows: priced("Milch"), cells: [] },
  {
    rule: "total-incomplete",
    what: "a typed sum far beside the total of the amounts",
    rows: priced("Milch", { sum: 1.94 }),
    cells: ["E6"],
  },
  { rule: "total-incomplete", what: "contents in per cent", rows: contents(82.6), cells: [] },
  {
    rule: "total-incomplete",
    what: "shares beside contents",
    rows: contents(88),
    cells: ["B2:B4"],
  },
  {
    rule: "ice-of-water-or-mix",
    what: "an answer to a question",
    rows: asked(shareOfIce("mix", -18)),
    cells: ["B8"],
  },
  {
    rule: "ice-of-water-or-mix",
    what: "right answers to questions",
    rows: asked(shareOfIce("water", -18)),
    cells: [],
  },
  {
    rule: "ice-of-water-or-mix",
    what: "a share of all at a freezer's temperature",
    rows: readOff(shareOfIce("water", -17)),
    cells: ["B9"],
  },
  {
    rule: "ice-of-water-or-mix",
    what: "right shares at a freezer's temperature",
    rows: readOff(shareOfIce("mix", -17)),
    cells: [],
  },
  { rule: "input-without-unit", what: "a tenth more", rows: dumplings("Nocke"), cells: ["B3"] },
  { rule: "input-without-unit", what: "with its unit", rows: dumplings("Nocke (g)"), cells: [] },
];
