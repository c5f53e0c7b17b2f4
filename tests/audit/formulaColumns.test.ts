import { auditContext } from "../../src/audit/context";
import { bookOf, formula, type Rows } from "./bookOf";
import { findingsOf, placesOf } from "./findingsOf";

/** A worksheet with a column for the formula; 2.34 g of salt in 400 g water give 0.04 mol of it, 0.08 mol of particles. */
const worksheet = (particles: string, moles: number): Rows => [
  ["Größe", "Formel", "Becherglas 1"],
  ["Gelöster Stoff", null, "Natriumchlorid"],
  ["Masse des Stoffs in g", "m", 2.34],
  ["Masse des Wassers in g", "m(Wasser)", 400],
  ["Molare Masse in g/mol", "M", 58.44],
  ["Teilchen je Formeleinheit", "i", 2],
  ["Kf in K·kg/mol", "Kf", 1.86],
  ["Stoffmenge in mol", "n = m : M", formula("C3/C5", 0.04004)],
  ["Teilchen in mol", "n · i", formula(particles, moles)],
  ["Molalität in mol/kg", "b = n · i : m(Wasser)", formula("C9/(C4/1000)", moles / 0.4)],
  ["Gefrierpunktserniedrigung in K", "ΔT = Kf · b", formula("C7*C10", (1.86 * moles) / 0.4)],
];

test("a formula in letters may stand between a label and its value", () => {
  const { results } = auditContext(bookOf({ Sheet1: worksheet("C8*C6", 0.08008) }), []);
  expect(results.map(({ row, role }) => [row, role])).toContainEqual([10, "depression"]);
  expect(
    findingsOf(worksheet("C8*C6", 0.08008)).filter(({ severity }) => severity === "error"),
  ).toEqual([]);
});

test("moles of particles that count each unit once are told where they stand", () => {
  expect(placesOf(findingsOf(worksheet("C8", 0.04004)))).toContain("C9 particles-not-counted");
});

/** Measured groups below each other: 4 g of potassium chloride in 400 g water. */
const groups = (head: string, molarMass: number): Rows => [
  ["Group", "Dissolved", "Water / g", head, "M / (g/mol)", "n / mol", "i"],
  [1, "potassium chloride", 400, 4, molarMass, formula("D2/E2", 4 / molarMass), 2],
  [2, "sodium chloride", 300, 3, 58.44, formula("D3/E3", 0.0513), 2],
];

test.each(["Solute / g", "Solute (g)", "Solute, g", "Dissolved / g", "Stoff in g"])(
  "%s heads what is weighed in, with the water beside it",
  (head) => {
    const { blocks } = auditContext(bookOf({ Sheet1: groups(head, 74.55) }), []);
    expect(blocks.map(({ names }) => names.map(({ item }) => item))).toEqual([
      ["potassium chloride", "water"],
      ["sodium chloride", "water"],
    ]);
    expect(placesOf(findingsOf(groups(head, 84)))).toContain("E2 constant-of-a-solute");
  },
);

/** An ice with spirit, and the syrups of the bar beside it: 30 g whisky of 40 % hold 10 g alcohol. */
const besideSyrups: Rows = [
  ["Ingredient", "Weight (g)", "Alcohol in it (g)", null, "Syrup", "Sugar (g)", "Water (g)"],
  ["water", 700, null, null, "thin", 250, 500],
  ["caster sugar", 200, null, null, "simple", 500, 500],
  ["whisky 40 %", 30, 10, null, "rich", 600, 300],
];

test("a column of another list is no answer of the rows beside it", () => {
  expect(placesOf(findingsOf(besideSyrups)).filter((one) => one.startsWith("C4"))).toEqual([]);
});
