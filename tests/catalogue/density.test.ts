import { solutionFiguresOf } from "../../src/catalogue/density/solutionFiguresOf";
import { fittedFigures } from "../../src/catalogue/density/fittedFigures";
import { densityTables } from "../../src/catalogue/fit/figures/crcDensities";
import { fittedVolume, fitVolume, SUGAR_BEND_ML_PER_G } from "../../src/catalogue/fit/fitVolume";
import { ingredients } from "../../src/catalogue/ingredients";
import { ofRecipe } from "../worksheet/ask";

test.each(densityTables)("the figures of $solute are what the fit gives", (table) => {
  const { name, volumeMlPerG, refractionMlPerG } = fitVolume(table).figures;
  const kept = fittedFigures.find((entry) => entry.name === name);
  expect(kept?.volumeMlPerG).toEqual(volumeMlPerG);
  expect(kept?.refractionMlPerG).toEqual(refractionMlPerG);
});

test("the sugars bend as sucrose does", () => {
  const [, , bend] = fittedVolume(
    densityTables.find(({ solute }) => solute === "sucrose")!,
    3,
    0,
  );
  expect(bend).toBeCloseTo(SUGAR_BEND_ML_PER_G, 4);
});

// CRC 102nd ed.; half a printed digit and the fit's own largest residual. Maltose's table jumps by 0.004 near 20 %
test.each(densityTables)("every printed density of $solute is met within 0.2 %", (table) => {
  const { solute, massPercent, gramsPerMl } = table;
  const misses = massPercent.map((percent, at) => {
    const found = ofRecipe("DENSITY", { [solute]: percent, water: 100 - percent });
    return Math.abs(found / gramsPerMl[at]! - 1);
  });
  expect(Math.max(...misses)).toBeLessThan(0.002);
});

test("everything that an ingredient of the catalogue brings into solution has a density", () => {
  const names = new Set(
    ingredients.flatMap(({ composition }) => Object.keys(composition.solutes ?? {})),
  );
  const missing = [...names].filter((name) => solutionFiguresOf(name) === undefined);
  expect(missing).toEqual([]);
});
