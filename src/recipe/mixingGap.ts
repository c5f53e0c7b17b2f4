import type { Solution } from "../engine/dissolved";
import { solutionThetaMolPerKg } from "../engine/solutionTheta";
import type { Dose } from "./mix";
import type { SoluteKind } from "../catalogue/solute";

type Family = "sugars" | "salts" | "alcohols";

/** Substances that mix alike: within a family the mixing rule is not in doubt. */
function familyOf(kind: SoluteKind): Family {
  if (kind === "alcohol" || kind === "other") return "alcohols";
  return kind === "salt" || kind === "acid" || kind === "lumped" ? "salts" : "sugars";
}

/**
 * How far the two rules for mixtures of sugars, salts and alcohols are apart: the rule that is used (each
 * holds its own water) and the plain sum of what each family does alone. Until measurements decide, this is
 * the stated error of the rule.
 * @param measure what θ is turned into before it is summed (a depression, or θ itself)
 * @source kleinhansMazur2007
 */
export function mixingGap(
  doses: readonly Dose[],
  waterKg: number,
  temperatureC: number | "freezing",
  measure: (thetaMolPerKg: number) => number,
): number {
  const families = new Map<Family, Dose[]>();
  for (const dose of doses) {
    const family = familyOf(dose.substance.kind);
    families.set(family, [...(families.get(family) ?? []), dose]);
  }
  if (families.size < 2) return 0;
  const of = (some: readonly Dose[]) =>
    measure(solutionThetaMolPerKg(solution(some, waterKg), temperatureC));
  const apart = [...families.values()].reduce((sum, family) => sum + of(family), 0);
  return Math.abs(apart - of(doses));
}

const solution = (doses: readonly Dose[], waterKg: number): Solution => ({
  waterKg,
  solutes: doses.map(({ moles, substance }) => ({ moles, curve: substance.curve })),
});
