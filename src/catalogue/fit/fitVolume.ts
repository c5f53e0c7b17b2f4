import type { SolutionFigures } from "../density/solutionFigures";
import { WATER_GRAMS_PER_ML, WATER_REFRACTION_ML_PER_G } from "../density/water";
import type { DensityTable } from "./figures/crcDensities";
import { leastSquares } from "./leastSquares";

/**
 * Terms of the apparent volume: as few as the table needs. Sugars whose tables end early bend as sucrose does,
 * which is printed to 84 %: so they can be drawn on to syrups and honey.
 */
interface Plan {
  readonly terms: number;
  readonly bent: boolean;
  readonly upTo: number;
}

const SUGAR: Plan = { terms: 2, bent: true, upTo: 0.9 };
const plain = (terms: number, upTo: number): Plan => ({ terms, bent: false, upTo });

const PLANS: Readonly<Record<string, Plan>> = {
  sucrose: plain(4, 0.84),
  glucose: SUGAR,
  fructose: SUGAR,
  lactose: SUGAR,
  maltose: SUGAR,
  mannitol: SUGAR,
  glycerol: plain(3, 1),
  ethanol: plain(5, 1),
  "sodium chloride": plain(3, 0.26),
  "citric acid": plain(2, 0.6),
};

/** Third coefficient of sucrose's apparent volume when three are fitted, mL/g; a test holds it to the fit. */
export const SUGAR_BEND_ML_PER_G = 0.0198;

const REFRACTION_TERMS = 2;

export interface VolumeFit {
  readonly figures: SolutionFigures;
  readonly largestGramsPerMl: number;
  readonly largestIndex: number;
}

const lorentz = (index: number): number => (index ** 2 - 1) / (index ** 2 + 2);

const valueAt = (coefficients: readonly number[], fraction: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * fraction + coefficient, 0);

/** Polynomial p with fraction·p(fraction) nearest to the targets. */
function fitted(fractions: readonly number[], targets: readonly number[], terms: number): number[] {
  const rows = fractions.map((w) => Array.from({ length: terms }, (_, power) => w ** (power + 1)));
  return leastSquares(rows, targets).map((value) => Number(value.toPrecision(6)));
}

/** Coefficients of the apparent volume of a table. */
export function fittedVolume(table: DensityTable, terms: number, bend: number): number[] {
  const fractions = table.massPercent.map((percent) => percent / 100);
  const targets = fractions.map(
    (w, at) => 1 / (table.gramsPerMl[at] ?? 0) - (1 - w) / WATER_GRAMS_PER_ML - bend * w ** 3,
  );
  const straight = fitted(fractions, targets, terms);
  return bend === 0 ? straight : [...straight, bend];
}

/** Fits one printed table and says how far the printed rows are met. */
export function fitVolume(table: DensityTable): VolumeFit {
  const { solute, source, massPercent, gramsPerMl, refractiveIndex } = table;
  const plan = PLANS[solute];
  if (plan === undefined) throw new Error(`${solute} has no plan.`);
  const fractions = massPercent.map((percent) => percent / 100);
  const density = (at: number) => gramsPerMl[at] ?? 0;
  const index = (at: number) => refractiveIndex[at] ?? 0;
  const volumeMlPerG = fittedVolume(table, plan.terms, plan.bent ? SUGAR_BEND_ML_PER_G : 0);
  const refractionMlPerG = fitted(
    fractions,
    fractions.map(
      (w, at) => lorentz(index(at)) / density(at) - (1 - w) * WATER_REFRACTION_ML_PER_G,
    ),
    REFRACTION_TERMS,
  );
  const computed = fractions.map((w) => {
    const found = 1 / ((1 - w) / WATER_GRAMS_PER_ML + w * valueAt(volumeMlPerG, w));
    const share = found * ((1 - w) * WATER_REFRACTION_ML_PER_G + w * valueAt(refractionMlPerG, w));
    return { density: found, index: Math.sqrt((1 + 2 * share) / (1 - share)) };
  });
  const misses = computed.map((found, at) => found.density - density(at));
  const indexMisses = computed.map((found, at) => found.index - index(at));
  const rms = Math.sqrt(misses.reduce((sum, miss) => sum + miss ** 2, 0) / misses.length);
  const indexRms = Math.sqrt(indexMisses.reduce((sum, m) => sum + m ** 2, 0) / misses.length);
  const top = Math.max(...massPercent);
  return {
    figures: {
      name: solute,
      volumeMlPerG,
      refractionMlPerG,
      upToMassFraction: plan.upTo,
      source,
      obtained: "computed here",
      relativeUncertainty: { volume: 0.003, refraction: 0.003 },
      basis: `fitted to ${massPercent.length} rows to ${top} % by mass: RMS ${rms.toPrecision(2)} g/mL and ${indexRms.toPrecision(2)} of the index`,
    },
    largestGramsPerMl: Math.max(...misses.map(Math.abs)),
    largestIndex: Math.max(...indexMisses.map(Math.abs)),
  };
}
