import fc from "fast-check";
import { refractiveIndexOf } from "../../src/engine/refractiveIndex";
import { solutionPart, waterPart } from "../../src/recipe/solutionParts";
import { numberOf, ofRecipe, problemOf } from "./ask";

const brix = (grams: Readonly<Record<string, number>>) => ofRecipe("BRIX", grams);

// The scale itself: ICUMSA 1974, refractive index at 20 °C, from memory; the fit is to the CRC's four decimals
test.each([
  [10, 1.34782],
  [20, 1.36384],
  [30, 1.38115],
  [40, 1.39986],
  [50, 1.42009],
  [60, 1.44193],
  [70, 1.46546],
  [80, 1.49071],
])("ICUMSA: %d °Brix is an index of %d, met within 0.0002 (0.1 °Bx)", (degrees, index) => {
  const found = refractiveIndexOf([
    waterPart(100 - degrees),
    solutionPart("sucrose", degrees, degrees / 100),
  ]);
  expect(Math.abs(found - index)).toBeLessThan(0.0002);
});

test("sucrose reads its mass per cent, by definition", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 83, noNaN: true }),
      (percent) => Math.abs(brix({ water: 100 - percent, sucrose: percent }) - percent) < 1e-8,
    ),
  );
});

// CRC: an index found in the row of sucrose with the same index, by hand
test.each([
  ["glucose", 30, 1.3805, 29.6],
  ["fructose", 40, 1.3985, 39.3],
  ["maltose", 40, 1.4013, 40.7],
  ["ethanol", 30, 1.3535, 13.6],
  ["glycerol", 36, 1.3785, 28.5],
  ["sodium chloride", 10, 1.3505, 11.7],
  ["citric acid", 20, 1.3598, 17.5],
])("CRC: %s at %d %% has the index %d, so it reads %d °Bx", (name, percent, _index, reads) => {
  expect(Math.abs(brix({ water: 100 - percent, [name]: percent }) - reads)).toBeLessThan(0.3);
});

// ISO 1743: indices of glucose syrup at 20 °C and 20, 60, 68 % solids: 1.36534, 1.44767, 1.46762 (40 % was used
// to set the long saccharides); in sucrose's scale 20.9, 62.5, 70.9. Within the stated 1 °Bx
test.each([
  [25, 20.9],
  [75, 62.5],
  [85, 70.9],
])("ISO 1743: %d g of glucose syrup in 100 g read %d °Bx", (syrup, reads) => {
  const found = brix({ "glucose syrup DE 42": syrup, water: 100 - syrup });
  expect(Math.abs(found - reads)).toBeLessThan(1);
});

// Milk's total solids are its Brix reading and 2 (stored copy of a calf-feeding advice; Moore and others 2009:
// 0.9984·Brix + 2.077, from memory); 12.5 % solids read 10 to 11
test("whole milk reads 10.4 °Bx within the stated 1", () => {
  expect(Math.abs(numberOf("BRIX", "whole milk", 100) - 10.4)).toBeLessThan(1);
});

// AOAC 969.38 (after Chataway): honey of 17.2 % water has the index 1.4935 at 20 °C (from memory), 81.1 °Bx
test("honey of 17.2 % water reads 81.1 °Bx within the stated 1", () => {
  expect(Math.abs(numberOf("BRIX", "honey", 100) - 81.1)).toBeLessThan(1);
});

// NBS C440: invert sugar reads 0.022 °Bx too little for each per cent of it (from memory)
test.each([20, 40, 60, 80])(
  "%d %% of invert sugar read 0.022 of it less, within 0.5 °Bx",
  (percent) => {
    const found = brix({ water: 100 - percent, glucose: percent / 2, fructose: percent / 2 });
    expect(Math.abs(found - (percent - 0.022 * percent))).toBeLessThan(0.5);
  },
);

// United States Pharmacopeia, Sorbitol Solution: index 1.455 to 1.465 at 20 °C, which is 65.6 to 69.8 °Bx
test("syrup of 70 % sorbitol reads between 65.6 and 69.8 °Bx", () => {
  const found = brix({ sorbitol: 70, water: 30 });
  expect(found).toBeGreaterThan(65.6);
  expect(found).toBeLessThan(69.8);
});

describe("laws and limits", () => {
  test("water reads 0, and nuts do not change the reading", () => {
    expect(numberOf("BRIX", "water", 1)).toBe(0);
    expect(brix({ water: 80, sucrose: 20, almonds: 30 })).toBeCloseTo(20, 8);
  });

  test("more of anything dissolved reads higher", () => {
    const names = ["glucose", "fructose", "lactose", "sorbitol", "fine salt", "citric acid"];
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.double({ min: 0.1, max: 25, noNaN: true }),
        (name, grams) =>
          brix({ water: 100, [name]: grams * 1.1 }) > brix({ water: 100, [name]: grams }),
      ),
    );
  });

  test("what is no liquid, or reads beyond the scale, is declined in words", () => {
    expect(problemOf("BRIX", "almonds", 100).message).toContain("nothing in this mix is liquid");
    expect(problemOf("BRIX", [["water", "sucrose"]], [[5, 95]]).message).toContain("above 84 °Bx");
  });
});
