import type { Solution } from "../../src/engine/dissolved";
import { additiveDepressionK } from "../../src/engine/additiveDepression";
import { freezingPointC } from "../../src/engine/freezingPoint";
import { saltMixtures } from "./saltMixtures";
import { REFERENCE_SALINITY_G_PER_KG, seawaterBrine, seawaterSalts } from "./seawater";
import { soluteNamed, solutionOf } from "./solutionOf";
import { wengMixtures } from "./wengMixtures";

/** A mixed solution with its printed freezing point. */
export interface PrintedMixture {
  readonly solution: Solution;
  readonly printedC: number;
}

const molar = (molesPerKg: Readonly<Record<string, number>>): Solution => ({
  waterKg: 1,
  solutes: Object.entries(molesPerKg).map(([name, moles]) => ({
    moles,
    curve: soluteNamed(name).curve,
  })),
});

/** Seawater or its brine, g of salt per kg; the moles are those at a salinity of `per`. */
export function seawaterOf(salinityGPerKg: number, per: number): Solution {
  const grams = Object.entries(seawaterSalts).map(([name, moles]) => [
    name,
    ((moles * salinityGPerKg) / per) * soluteNamed(name).molarMass.value,
  ]);
  return solutionOf(1000 - salinityGPerKg, Object.fromEntries(grams) as Record<string, number>);
}

const alcoholWithSalt = (alcohol: string): PrintedMixture[] =>
  wengMixtures
    .filter((entry) => entry.alcohol === alcohol)
    .map(({ alcoholMolPerKg, saltMolPerKg, freezingPointC: printedC }) => ({
      solution: molar({ [alcohol]: alcoholMolPerKg, "sodium chloride": saltMolPerKg }),
      printedC,
    }));

/** Every mixture in print that is held against the mixing rule, by name and source. */
export const mixtures: readonly (readonly [name: string, rows: readonly PrintedMixture[]])[] = [
  ...["methanol", "propylene glycol"].map(
    (alcohol) =>
      [`${alcohol} with sodium chloride (Weng, Li & Zuo 2011)`, alcoholWithSalt(alcohol)] as const,
  ),
  [
    "seawater and its brine to 12 % salt (TEOS-10)",
    seawaterBrine.map(([salinity, printedC]) => ({
      solution: seawaterOf(salinity, REFERENCE_SALINITY_G_PER_KG),
      printedC,
    })),
  ],
  ...saltMixtures.map(
    ({ first, second, rows }) =>
      [
        `${first} with ${second} (Toner & Catling 2017)`,
        rows.map(([a, b, printedC]) => ({
          solution: molar({ [first]: a, [second]: b }),
          printedC,
        })),
      ] as const,
  ),
];

/** Misses of the rule that is used and of its rival, the plain sum of the single depressions, K. */
export function missesOfBothRules(rows: readonly PrintedMixture[]) {
  return {
    rule: rows.map(({ solution, printedC }) => (freezingPointC(solution) as number) - printedC),
    sum: rows.map(
      ({ solution, printedC }) => -(additiveDepressionK(solution) as number) - printedC,
    ),
  };
}
