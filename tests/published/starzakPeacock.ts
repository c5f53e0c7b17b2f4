import { iceLineThetaMolPerKg } from "../../src/engine/iceLine";
import { rootBetween } from "../../src/engine/rootBetween";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "../../src/foundation/constants";

/**
 * Water activity of sucrose solutions, a correlation of 1197 points of 56 papers:
 * ln γ_w = Q/(R·T)·x²·(1 + a·x + b·x²), x the mole fraction of sucrose.
 * @source starzakPeacock1997
 */
export function starzakPeacockActivity(molalityMolPerKg: number, temperatureC: number): number {
  const x = molalityMolPerKg / (molalityMolPerKg + 1 / WATER_MOLAR_MASS_KG_PER_MOL);
  const scale = -17638 / (8.314462618 * (temperatureC + 273.15));
  return (1 - x) * Math.exp(scale * x ** 2 * (1 - 1.0038 * x - 0.24653 * x ** 2));
}

/** Where the correlation meets the ice line, °C. */
export function starzakPeacockFreezingC(molalityMolPerKg: number): number {
  const excess = (temperatureC: number) =>
    starzakPeacockActivity(molalityMolPerKg, temperatureC) -
    Math.exp(-WATER_MOLAR_MASS_KG_PER_MOL * iceLineThetaMolPerKg(temperatureC));
  const root = rootBetween(excess, -60, 0);
  if (root === null) throw new Error(`no ice at ${molalityMolPerKg} mol/kg`);
  return root;
}
