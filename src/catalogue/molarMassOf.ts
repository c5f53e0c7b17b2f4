import type { Figure } from "../foundation/figure";

/** Abridged standard atomic weights, g/mol. @source ciaaw2021 */
const ATOMIC_WEIGHTS: Readonly<Record<string, number>> = {
  H: 1.008,
  Li: 6.94,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  Mg: 24.305,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
};

/** Molar mass of a formula such as "C6H12O6" or "CaCl2·2H2O", g/mol. */
export function molarMassOf(formula: string): Figure {
  const value = formula.split("·").reduce((sum, part) => sum + massOfPart(part), 0);
  return {
    value: Math.round(value * 1000) / 1000,
    unit: "g/mol",
    source: "ciaaw2021",
    obtained: "computed here",
    uncertainty: 0.005,
    basis: "natural spread of the atomic weights",
  };
}

function massOfPart(part: string): number {
  const count = /^\d*/.exec(part)?.[0] ?? "";
  let sum = 0;
  for (const [, symbol, atoms] of part.slice(count.length).matchAll(/([A-Z][a-z]?)(\d*)/g)) {
    const weight = ATOMIC_WEIGHTS[symbol ?? ""];
    if (weight === undefined) throw new Error(`${part}: no atomic weight for ${symbol ?? ""}.`);
    sum += weight * Number(atoms === "" ? 1 : atoms);
  }
  return sum * Number(count === "" ? 1 : count);
}
