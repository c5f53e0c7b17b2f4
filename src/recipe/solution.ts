import type { Solution } from "../engine/dissolved";
import { isProblem, badInput } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { maxFreezeConcentrated, type FreezeConcentrated } from "../engine/maxFreezeConcentrated";
import type { Mix } from "./mix";

/** The water of a mix with what is dissolved in it; a problem when there is no water. */
export function solutionOf({ waterGrams, doses }: Mix): Result<Solution> {
  if (!(waterGrams > 0)) {
    return badInput(
      "grams: the mix holds 0 g of water, so nothing in it can dissolve or freeze; more than 0 g is expected.",
    );
  }
  return {
    waterKg: waterGrams / 1000,
    solutes: doses.map(({ moles, substance }) => ({ moles, curve: substance.curve })),
  };
}

/** The maximally freeze-concentrated phase of a mix, or why it is not known. */
export function freezeConcentratedOf({ doses }: Mix): Result<FreezeConcentrated> {
  return maxFreezeConcentrated(
    doses.map(({ grams, substance }) => ({
      grams,
      temperatureC: substance.maxFreezeTemperatureC,
      solidsFraction: substance.maxFreezeSolidsFraction,
    })),
  );
}

/** Tm′ of a mix, °C: below it no more ice forms. Null when it has none or none is known. */
export function maxFreezeTemperatureC(mix: Mix): number | null {
  const found = freezeConcentratedOf(mix);
  return isProblem(found) ? null : found.temperatureC;
}
