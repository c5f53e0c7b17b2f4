import type { HeldWaterCurve } from "../engine/heldWaterCurve";
import type { Figure } from "../foundation/figure";
import { maltose } from "./solutes/maltose";

/** Mass of one glucose unit in a chain and of the water at its end, g/mol. @source ciaaw2021 */
const UNIT_G_PER_MOL = 162.141;
const END_G_PER_MOL = 18.015;

/** Saccharides of three units and more (DP ≥ 3) of a syrup or maltodextrin, taken as one substance. */
export interface HigherSaccharides {
  readonly curve: HeldWaterCurve;
  /** One standard uncertainty of the freezing-point depression they cause, as a share of it. */
  readonly relativeUncertainty: number;
  readonly basis: string;
  readonly glassTransitionDry: Figure;
  readonly gordonTaylor: Figure;
  readonly maxFreezeTemperature: Figure;
  readonly maxFreezeSolids: Figure;
}

/**
 * Homologue rule: a chain is one particle, and each of its glucose units hydrates as in maltose. The mean
 * length is that of the number-average molar mass (homologues of 504 g/mol and up).
 */
export function higherSaccharideCurve(molarMassGPerMol: number): HeldWaterCurve {
  const { curve } = maltose;
  if (curve.form !== "hydration") throw new Error("maltose is expected in the hydration form");
  const chainLength = (molarMassGPerMol - END_G_PER_MOL) / UNIT_G_PER_MOL;
  return { ...curve, units: chainLength / 2 };
}

/** Curve, glass and freeze-concentration figures of the DP ≥ 3 fraction of this number-average molar mass. */
export function higherSaccharides(molarMassGPerMol: number): HigherSaccharides {
  const tableTop = { obtained: "from memory", source: "roosKarel1991" } as const;
  return {
    curve: higherSaccharideCurve(molarMassGPerMol),
    relativeUncertainty: 0.1,
    basis:
      "homologue rule from maltose; the mean chain length of a trade syrup is known to about 8 %",
    glassTransitionDry: {
      ...tableTop,
      value: 243 - 52800 / molarMassGPerMol,
      unit: "°C",
      uncertainty: 15,
      basis: "Fox–Flory line of maltodextrins; measured figures scatter by moisture",
    },
    gordonTaylor: {
      ...tableTop,
      value: 6.5,
      unit: "1",
      uncertainty: 0.7,
      basis: "between maltose (6.15) and maltodextrins (about 7)",
    },
    maxFreezeTemperature: {
      value: -5.6 - 9040 / molarMassGPerMol,
      unit: "°C",
      source: "belitz2004",
      obtained: "computed here",
      uncertainty: 4,
      basis:
        "straight line in 1/M through maltose (−32) and maltotriose (−23.5 °C); DE 10 is printed as −8",
    },
    maxFreezeSolids: {
      ...tableTop,
      value: 0.8,
      unit: "mass fraction",
      uncertainty: 0.03,
      basis: "sugars and maltodextrins alike",
    },
  };
}
