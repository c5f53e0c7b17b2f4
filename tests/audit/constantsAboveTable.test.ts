import { formula, type Rows } from "./bookOf";
import { expectFound, type Tried } from "./tried";

/** Cups of sugar water, 342.3 g/mol and one particle, whose constants stand once above all of them. */
function cups(molarMass: number, particles: number, water = "Water / g"): Rows {
  const masses = [8, 12, 16, 20];
  return [
    ["M(sucrose), g/mol", molarMass],
    ["i", particles],
    ["K_f, K kg mol⁻¹", 1.86],
    [],
    ["Cup", "Solute", "Solute / g", water, "n / mol", "m / mol kg⁻¹", "ΔT / K"],
    ...masses.map((grams, at) => {
      const row = 6 + at;
      const moles = grams / molarMass;
      return [
        ...[at + 1, "sucrose", grams, 200],
        formula(`C${row}/$B$1`, moles),
        formula(`E${row}/(D${row}/1000)`, moles * 5),
        formula(`$B$3*F${row}*$B$2`, 1.86 * moles * 5 * particles),
      ];
    }),
  ];
}

describe("A table of solutions below its constants", () => {
  test.each<Tried>([
    { what: "that are right", sheets: { Cups: cups(342.3, 1) }, found: [] },
    {
      what: "with a molar mass that is none",
      sheets: { Cups: cups(324.3, 1) },
      found: ["constant-of-a-solute Cups!B1"],
    },
    {
      what: "with two particles of a sugar",
      sheets: { Cups: cups(342.3, 2) },
      found: ["constant-of-a-solute Cups!B2", "result-differs Cups!G6"],
    },
    // So much water that none of it was taken for what is dissolved in 100 g.
    { what: "auf Wasser", sheets: { Cups: cups(342.3, 1, "auf Wasser (g)") }, found: [] },
    { what: "with water", sheets: { Cups: cups(342.3, 1, "with water (g)") }, found: [] },
  ])("$what", expectFound);
});
