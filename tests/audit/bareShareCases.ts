import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** Sugar syrups by hand; 60 g in 100 g of water are 37.5 % of the syrup and 60 g to 100 g of water. */
const syrups = (headings: readonly [string, string], second: readonly [number, number]): Rows => [
  ["Probe", "Zucker (g)", "Wasser (g)", ...headings],
  ["A", 25, 100, 20, 25],
  ["B", 60, 100, ...second],
  ["C", 100, 100, 50, 100],
];

/** Shares of a list of three: none of them is that of the one thing dissolved. */
const list: Rows = [
  ["Zutat", "Masse (g)", "Anteil (%)"],
  ["Zucker", 50, 25],
  ["Wasser", 100, 50],
  ["Milch", 50, 25],
];

/** 20 g of salt in 500 g of water: 2.546 K by the law, 2.31 K in truth. */
const brine = (promise: string): Rows => [
  ["Gelöster Stoff", "NaCl"],
  ["Einwaage", "m", 20, "g"],
  ["Molare Masse", "M", 58.44, "g/mol"],
  ["Ionen je Formel", "i", 2],
  ["Wassermenge", "m(W)", 500, "g"],
  ["Gefrierpunktserniedrigung", "ΔT", formula("C4*1.86*C2/C3/C5*1000", 2.546), "K"],
  [promise],
];

const BASIS = "per-water-or-per-mix";
const IDEAL = "ideal-law-too-far-off";
const PLAIN = ["Massenanteil (%)", "auf 100 g Wasser (g)"] as const;

/** Shares that name no substance, and what a sheet promises of its law. */
export const bareShareCases: readonly RuleCase[] = [
  { rule: BASIS, what: "a bare share by the water", rows: syrups(PLAIN, [60, 60]), cells: ["D3"] },
  {
    rule: BASIS,
    what: "grams to so much water by the mix",
    rows: syrups(["w in %", "g to 100 g of water"], [37.5, 37.5]),
    cells: ["E3"],
  },
  { rule: BASIS, what: "bare shares of a syrup", rows: syrups(PLAIN, [37.5, 60]), cells: [] },
  { rule: BASIS, what: "shares of three things", rows: list, cells: [] },
  { rule: IDEAL, what: "auf 0,1 K", rows: brine("Hier stimmen sie auf 0,1 K."), cells: ["C6"] },
  { rule: IDEAL, what: "to 0.1 K", rows: brine("Right to 0.1 K if thin."), cells: ["C6"] },
  { rule: IDEAL, what: "rounding to 0.1 K", rows: brine("Rounded to 0.1 K."), cells: [] },
];
