import { fitHydration } from "../../src/catalogue/fit/hydrationFit";
import { plans } from "../../src/catalogue/fit/plan";
import { freezingPoints } from "../../src/catalogue/fit/points";
import { residualsK } from "../../src/catalogue/fit/residuals";
import { soluteNamed } from "../published/solutionOf";

/** The sugars with a long table of freezing points in print. */
export const sugarsOfPrint = ["sucrose", "glucose", "fructose", "maltose"] as const;

/** A printed freezing point above −5 °C, and by how much a fit to the other rows misses it. */
export interface LeftOut {
  readonly molalityMolPerKg: number;
  readonly printedC: number;
  readonly missK: number;
}

/** Every fifth row of a sugar's printed freezing points, foretold by a fit that has not read it. */
export function leftOutFifths(name: string): LeftOut[] {
  const plan = plans.find(({ solute }) => solute === name);
  if (plan?.form !== "hydration") throw new Error(`${name} has no hydration plan`);
  const points = freezingPoints(name, soluteNamed(name).molarMass.value, "fit");
  return [0, 1, 2, 3, 4].flatMap((fold) => {
    const left = points.filter((point, i) => i % 5 === fold && point.freezingPointC > -5);
    const curve = fitHydration(
      plan,
      points.filter((_, i) => i % 5 !== fold),
    );
    return residualsK(curve, left).map((missK, i) => ({
      molalityMolPerKg: left[i]!.molalityMolPerKg,
      printedC: left[i]!.freezingPointC,
      missK,
    }));
  });
}
