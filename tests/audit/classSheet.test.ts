import { findingsOf, of, placesOf } from "./findingsOf";
import { formula, type Rows } from "./bookOf";

/**
 * A class sheet that works with i·Kf·m by hand and holds six mistakes at once: Kf = 18.6, one particle for
 * salt, dextrose monohydrate with the molar mass of the anhydrous sugar, nuts counted as a solute, a freezer
 * in °F and an amount typed "12,5".
 */
const CLASS_SHEET: Rows = [
  ["Evening class, sheet 4: why does it stay soft?"],
  [],
  ["Ingredient", "Amount (g)", "Molar mass (g/mol)", "i", "Moles"],
  ["Water", 350, null, null, null],
  ["Sucrose", 80, 342.3, 1, formula("B5/C5*D5", 0.2337)],
  ["Dextrose monohydrate", 40, 180.16, 1, formula("B6/C6*D6", 0.222)],
  ["Sodium chloride", 3, 58.44, 1, formula("B7/C7*D7", 0.0513)],
  ["Pistachios", 40, null, null, 0.1169],
  ["Lemon juice", "12,5", null, null, null],
  [],
  ["Kf", 18.6],
  ["Molality (mol/kg)", formula("SUM(E5:E8)/(B4/1000)", 1.7826)],
  ["Depression (K)", formula("B11*B12", 33.16)],
  ["Churned to (°C)", -5],
  ["Freezer temperature (°C)", 0],
];

describe("The class sheet", () => {
  const findings = findingsOf(CLASS_SHEET).filter(({ severity }) => severity !== "note");
  test("has each of its six mistakes found, in its cell", () => {
    expect(placesOf(findings)).toEqual(
      expect.arrayContaining([
        "B11 cryoscopic-constant",
        "B15 temperature-units-mixed",
        "B9 number-as-text",
        "C6 constant-of-a-solute",
        "D7 constant-of-a-solute",
        "E8 inclusion-as-solute",
      ]),
    );
  });
  test("has nothing else found but that its results are off", () => {
    const others = findings.filter(({ rule }) => rule !== "result-differs");
    expect(placesOf(others)).toHaveLength(6);
    expect(of(findings, "result-differs").map(({ cell }) => cell)).toContain("B13");
  });
  test("has the effect of each in kelvins, degrees or percentage points", () => {
    for (const { effect } of findings) {
      expect(effect).not.toBeNull();
      expect(["°C", "K", "%", "mol/kg"]).toContain(effect?.unit);
      expect(effect?.from).not.toBe(effect?.to);
    }
  });
});

test("the same sheet without its mistakes has no error", () => {
  const mended: Rows = [
    ["Evening class, sheet 4: why does it stay soft?"],
    [],
    ["Ingredient", "Amount (g)", "Molar mass (g/mol)", "i", "Moles"],
    ["Water", 350, null, null, null],
    ["Sucrose", 80, 342.3, 1, formula("B5/C5*D5", 0.2337)],
    ["Dextrose monohydrate", 40, 198.17, 1, formula("B6/C6*D6", 0.2018)],
    ["Sodium chloride", 3, 58.44, 2, formula("B7/C7*D7", 0.1027)],
    ["Pistachios", 40, null, null, null],
    [],
    ["Kf", 1.86],
    // 0.2337 + 0.2018 + 0.1027 mol in 350 g of water and 3.64 g of crystal water
    ["Molality (mol/kg)", formula("SUM(E5:E7)/(B4/1000)", 1.5377)],
    ["Depression (K)", formula("B10*B11", 2.86)],
    ["Churned to (°C)", -5],
    ["Freezer temperature (°C)", -18],
  ];
  expect(findingsOf(mended).filter(({ severity }) => severity === "error")).toEqual([]);
});
