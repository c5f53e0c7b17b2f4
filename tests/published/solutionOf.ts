import { higherSaccharideCurve } from "../../src/catalogue/higherSaccharides";
import { solutes } from "../../src/catalogue/solutes";
import type { Solution } from "../../src/engine/dissolved";

/** A solution from grams of water and of catalogue solutes ("higherSaccharides504" is a DP ≥ 3 fraction). */
export function solutionOf(waterGrams: number, grams: Readonly<Record<string, number>>): Solution {
  return {
    waterKg: waterGrams / 1000,
    solutes: Object.entries(grams).map(([name, soluteGrams]) => {
      const higher = /^higherSaccharides(\d+)$/.exec(name);
      if (higher) {
        const molarMass = Number(higher[1]);
        return { moles: soluteGrams / molarMass, curve: higherSaccharideCurve(molarMass) };
      }
      const solute = soluteNamed(name);
      return { moles: soluteGrams / solute.molarMass.value, curve: solute.curve };
    }),
  };
}

export function soluteNamed(name: string) {
  const solute = solutes.find((entry) => entry.name === name);
  if (solute === undefined) throw new Error(`${name} is not in the catalogue`);
  return solute;
}
