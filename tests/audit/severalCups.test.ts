import { bookOf, formula, type Rows } from "./bookOf";
import { findingsOf } from "./findingsOf";
import { auditContext } from "../../src/audit/context";

/** A cup of salt water, worked by n·i·Kf/kg. */
const cup = (title: string, grams: number, water: number, top: number): Rows => {
  const moles = (grams * 2) / 58.44;
  const lower = (1860 * moles) / water;
  return [
    [title],
    ["Stirred in", "Particles", "Molar mass (g/mol)", "Mass (g)", "Moles of particles"],
    ["sodium chloride", 2, 58.44, grams, formula(`D${top + 2}*B${top + 2}/C${top + 2}`, moles)],
    ["Water (g)", water],
    ["Freezing point (°C)", formula(`-1860*E${top + 2}/B${top + 3}`, -lower)],
    [],
  ];
};
const cups: Rows = [...cup("Cup one", 2, 100, 1), ...cup("Cup two", 2, 400, 7)];

test("each cup has the water that stands nearest to it", () => {
  const { blocks, mixOf } = auditContext(bookOf({ Sheet1: cups }));
  const grams = blocks.map((block) => mixOf(block, block.recipes[0]!).grams);
  expect(grams).toEqual([
    [2, 100],
    [2, 400],
  ]);
  expect(findingsOf(cups).filter(({ rule }) => rule === "result-differs")).toEqual([]);
});

/** 1 mol of salt to 1 kg of water freezes at −3.37 °C (CRC Handbook, concentrative properties), by the law at −3.72 °C. */
const strong = (note: string): Rows => [...cup("Cup", 58.44, 1000, 1), [note]];

test.each([
  ["The simple law; our thermometer may differ by 0.2 K.", 1],
  ["The simple law; our thermometer may differ by 0.5 K.", 0],
  ["Our thermometer may be off by 0.2 K.", 0],
])("what a thermometer may be off by bounds a law that is named with it: %s", (note, count) => {
  const found = findingsOf(strong(note)).filter(({ rule }) => rule === "ideal-law-too-far-off");
  expect(found).toHaveLength(count);
});

/** Two ices of a list that share no first ingredient. */
const board = (second: string | number): Rows => [
  ["Tubs, all in kg"],
  ["Scoop (g)", 80],
  [],
  ["Goes in", "Peach ice", "Milk ice"],
  ["peach", 0.3, null],
  ["sugar", 0.08, 0.1],
  ["water", 0.12, null],
  ["whole milk", null, second],
  ["A tub weighs", formula("SUM(B5:B8)", 0.5), formula("SUM(C5:C8)", 0.7)],
];

test("titles head a list though a recipe lacks its first ingredients", () => {
  const [block] = auditContext(bookOf({ Sheet1: board(0.6) })).blocks;
  expect(block?.recipes.map(({ title }) => title)).toEqual(["Peach ice", "Milk ice"]);
  expect(block?.names).toHaveLength(4);
});

/** Salt and sugar; what one unit falls into and what a mole weighs stand on a sheet of their own. */
const withTable = (particles: number, molarMass: number): Record<string, Rows> => ({
  Trial: [
    ["Substance", "Mass (g)", "Water (g)", "Moles of particles", "Freezing point (°C)"],
    ["sodium chloride", 5, 500, formula("B2/Data!C2*Data!B2", (5 * particles) / 58.44), null],
    ["sucrose", 50, 500, formula("B3/Data!C3*Data!B3", 50 / molarMass), null],
  ],
  Data: [
    ["Substance", "Particles per unit", "Molar mass (g/mol)"],
    ["sodium chloride", particles, 58.44],
    ["sucrose", 1, molarMass],
  ],
});

test.each([
  [2, 342.3, []],
  [1, 342.3, ["Data!B2"]],
  [2, 180.16, ["Data!C3"]],
])("constants are read in a table of their own: i %d, M %d", (particles, molarMass, cells) => {
  const found = findingsOf(withTable(particles, molarMass)).filter(({ rule }) =>
    ["constant-of-a-solute", "particles-not-counted"].includes(rule),
  );
  expect(found.map(({ sheet, cell }) => `${sheet}!${cell}`)).toEqual(cells);
});

/** Two lists, amounts left of the names, and a line of answers in the row of an ingredient that both have. */
const kitchen: Rows = [
  ["How much (g)", "Of what"],
  [500, "water", null, "Water, juice counted (g)", 500],
  [100, "sucrose", null, "Sugars for every 100 g of water (g)", 20],
  [],
  ["How much (g)", "Of what"],
  [400, "whole milk", null, "Water, milk counted (g)", 350],
  [200, "sucrose"],
];

test("an ingredient of the list above is no title of the one below", () => {
  const found = findingsOf(kitchen).filter(({ rule }) => rule === "result-differs");
  expect(found).toEqual([]);
});

/** 5 g of salt in 200 g of water; the particles stand beside it and nothing reads them. */
const unread = (law: string, moles: number): Rows => [
  ["Cup"],
  ["Stirred in", "Particles", "Molar mass (g/mol)", "Mass (g)", "Moles"],
  ["sodium chloride", 2, 58.44, 5, formula(law, moles)],
  ["Water (g)", 200],
  ["Freezing point (°C)", formula("-1860*E3/B4", (-1860 * moles) / 200)],
];

test("a number of particles that no formula reads is not counted", () => {
  const rulesIn = (rows: Rows) => findingsOf(rows).map(({ rule }) => rule);
  expect(rulesIn(unread("D3/C3", 5 / 58.44))).toContain("particles-not-counted");
  expect(rulesIn(unread("D3/C3*B3", 10 / 58.44))).not.toContain("particles-not-counted");
});
