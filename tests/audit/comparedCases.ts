import { callFunction } from "../../src/worksheet/callFunction";
import { formula, type Rows } from "./bookOf";
import type { RuleCase } from "./ruleCase";

const LIST: Rows = [
  ["Ingredient", "g"],
  ["Water", 600],
  ["Sucrose", 150],
  ["Dextrose monohydrate", 50],
  [],
];

const READINGS = [-13.5, -14, -12, -13.5, -11];

/** Readings of a pail and by how much they are too warm; −13 °C are 8.6 °F. */
const pail = (label: string, wanted: number): Rows => [
  ...LIST,
  [label, wanted],
  [],
  ["Day", "Middle of the pail (°C)", "Too warm by (K)"],
  ...READINGS.map((read, at) => [at + 1, read, formula(`B${at + 9}-$B$6`, read - wanted)]),
];

/** Readings with a remark beside each; one of them is in °F. */
const logged = (remark: string): Rows => [
  ...LIST,
  ["Batch", "Out of the machine (°C)", "Seen"],
  ...[-7.5, -7, 19, -6.5, -7, -7.5].map((read, at) => [
    at + 1,
    read,
    read > 0 ? remark : "just right",
  ]),
];

/** A tub of what is spent on it: its lid is added, a share of loss is multiplied. */
const tub = (label: string, value: number, cost: string): Rows => [
  ...LIST,
  ["Tub costs (€)", 2.5],
  [label, value],
  ["A tub in all (€)", formula(cost, 3)],
];

/** 800 g with a share of ice at −9 °C that is either of the water or of the mix. */
function frozen(label: string, basis: "water" | "mix"): Rows {
  const [[share] = []] = callFunction(
    "ICEFRACTION",
    [["water"], ["sucrose"], ["dextrose monohydrate"]],
    [[600], [150], [50]],
    -9,
    basis,
  );
  return [...LIST, [label, Math.round(Number(share) * 1000) / 10, "%"]];
}

const unit = { rule: "input-without-unit" } as const;
const scale = { rule: "temperature-units-mixed" } as const;

/** Inputs whose unit is told by what formulas compare them with or add them to, and remarks that explain nothing. */
export const comparedCases: readonly RuleCase[] = [
  {
    ...{ ...scale, cells: ["B6"], what: "a wanted temperature that readings are compared with" },
    rows: pail("Wanted in the middle (°C)", 9),
  },
  {
    ...{ ...scale, cells: [], what: "the same in °C" },
    rows: pail("Wanted in the middle (°C)", -13),
  },
  {
    ...{ ...scale, cells: ["B9"], what: "a reading beside a crumb that is open" },
    rows: logged("open"),
  },
  { ...{ ...scale, cells: [], what: "a lid that was open" }, rows: logged("lid left open") },
  {
    ...{ ...unit, cells: ["B6"], what: "a wanted temperature without a unit" },
    rows: pail("Wanted in the middle", -13),
  },
  {
    ...{ ...unit, cells: [], what: "a wanted temperature in °C" },
    rows: pail("Wanted in the middle (°C)", -13),
  },
  {
    ...{ ...unit, cells: ["B7"], what: "a fraction that is added to a price" },
    rows: tub("Lid and sticker", 0.54, "B6/2+B7"),
  },
  {
    ...{ ...unit, cells: [], what: "a fraction that prices are multiplied with" },
    rows: tub("Left on the paddle", 0.05, "B6*(1+B7)"),
  },
  ...["Should be ice at −9 °C, of the water", "Water still frozen at −9 °C"].flatMap(
    (label): RuleCase[] => [
      {
        ...{ rule: "ice-of-water-or-mix", cells: ["B6"], what: `of the mix, though "${label}"` },
        rows: frozen(label, "mix"),
      },
      {
        ...{ rule: "ice-of-water-or-mix", cells: [], what: `of the water, as "${label}"` },
        rows: frozen(label, "water"),
      },
    ],
  ),
];
