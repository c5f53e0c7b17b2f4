import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

/** What a scale is told: whole milk with more sugar than dissolves in it, or less, and a second column of grams. */
const doses = (heading: string, sugar = 100): Rows => [
  ["Pos.", "Ingredient", "Set weight g", heading],
  [1, "Whole milk", 300, 2],
  [2, "Sucrose", sugar, 8],
  [3, "Water", 100, 1],
  [null, "Sum", formula("SUM(C2:C4)", 400 + sugar)],
];

const HEADINGS = [
  ...["Tolerance g", "± g", "max. deviation (g)", "Tare (g)", "allowed (g)", "Scale error (g)"],
  ...["Toleranz g", "zul. Abw. (g)", "Genauigkeit (g)", "Tara (g)", "erlaubte Abweichung (g)"],
] as const;

const rule = "more-than-dissolves";

/** Columns of grams that say how exactly, or in what, something is weighed. */
export const scaleCases: readonly RuleCase[] = [
  ...HEADINGS.map((heading): RuleCase => ({
    ...{ rule, cells: [], what: `what is headed "${heading}"` },
    rows: doses(heading),
  })),
  ...["Small batch (g)", "Weighed with tolerance (g)", "Probe (g)"].map((heading): RuleCase => ({
    ...{ rule, cells: ["D3"], what: `another amount, headed "${heading}"` },
    rows: doses(heading),
  })),
  {
    ...{ rule, cells: ["C3"], what: "an amount beside its tolerance" },
    rows: doses("Tolerance g", 1200),
  },
];

/** A list with tap water, and what is said of it right below. */
const card = (salt: number): Rows => [
  ["Kokosriegel"],
  ["Zutat", "g auf 1 kg"],
  ["Kokosmilch", 537],
  ["Leitungswasser", 210],
  ["Feinkristallzucker", 143],
  ["Glukosesirup DE 42", 46],
  ["Salz", salt],
  ["Kokosraspel", 60],
  ["Kontrolle", formula("SUM(B3:B8)", 996 + salt)],
  [],
  ["Zucker auf 100 g Wasser (g)", 27.94],
  ["Zucker in der Masse (%)", 17.1],
  ["Gefrierpunkt (°C)", formula("RIME.FREEZINGPOINT(A3:A8,B3:B8)", salt > 9 ? -5.61 : -2.46)],
  ["gelöste Stoffe (g)", 201],
];

/** Lists whose water is tap water are no worked example of the salt in them. */
export const tapWaterCases: readonly RuleCase[] = [
  {
    ...{ rule: "input-without-unit", cells: [], what: "the lines of a list with tap water" },
    rows: card(4),
  },
  {
    ...{ rule: "result-differs", cells: [], what: "the answers of a list with tap water" },
    rows: card(4),
  },
  {
    ...{ rule: "result-differs", cells: ["B14"], what: "the answers with more salt in it" },
    rows: card(34),
  },
];
