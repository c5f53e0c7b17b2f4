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
  /** The same as one would weigh it, g by name, water included. */
  readonly grams: Readonly<Record<string, number>>;
  readonly printedC: number;
}

const weighed = (grams: Readonly<Record<string, number>>): Solution => {
  const { water = 0, ...solutes } = grams;
  return solutionOf(water, solutes);
};

const gramsOf = (moles: Readonly<Record<string, number>>) =>
  Object.fromEntries(
    Object.entries(moles).map(([name, amount]) => [
      name,
      amount * soluteNamed(name).molarMass.value,
    ]),
  );

const printed = (grams: Readonly<Record<string, number>>, printedC: number): PrintedMixture => ({
  solution: weighed(grams),
  grams,
  printedC,
});

const molar = (molesPerKg: Readonly<Record<string, number>>) => ({
  water: 1000,
  ...gramsOf(molesPerKg),
});

/** 1 kg of seawater or its brine, g of salt per kg; the moles are those at a salinity of `per`. */
export const seawaterGrams = (salinityGPerKg: number, per: number) => ({
  water: 1000 - salinityGPerKg,
  ...gramsOf(
    Object.fromEntries(
      Object.entries(seawaterSalts).map(([name, moles]) => [name, (moles * salinityGPerKg) / per]),
    ),
  ),
});

export const seawaterOf = (salinityGPerKg: number, per: number): Solution =>
  weighed(seawaterGrams(salinityGPerKg, per));

const alcoholWithSalt = (alcohol: string): PrintedMixture[] =>
  wengMixtures
    .filter((entry) => entry.alcohol === alcohol)
    .map(({ alcoholMolPerKg, saltMolPerKg, freezingPointC: printedC }) =>
      printed(molar({ [alcohol]: alcoholMolPerKg, "sodium chloride": saltMolPerKg }), printedC),
    );

/** Every mixture in print that is held against the mixing rule, by name and source. */
export const mixtures: readonly (readonly [name: string, rows: readonly PrintedMixture[]])[] = [
  ...["methanol", "propylene glycol"].map(
    (alcohol) =>
      [`${alcohol} with sodium chloride (Weng, Li & Zuo 2011)`, alcoholWithSalt(alcohol)] as const,
  ),
  [
    "seawater and its brine to 12 % salt (TEOS-10)",
    seawaterBrine.map(([salinity, printedC]) =>
      printed(seawaterGrams(salinity, REFERENCE_SALINITY_G_PER_KG), printedC),
    ),
  ],
  ...saltMixtures.map(
    ({ first, second, rows }) =>
      [
        `${first} with ${second} (Toner & Catling 2017)`,
        rows.map(([a, b, printedC]) => printed(molar({ [first]: a, [second]: b }), printedC)),
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
