import { solutionFiguresOf } from "../catalogue/density/solutionFiguresOf";
import { WATER_GRAMS_PER_ML, WATER_REFRACTION_ML_PER_G } from "../catalogue/density/water";
import type { RefractingPart } from "../engine/refractiveIndex";
import { outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Mix } from "./mix";

/** Of the liquid so much may be of substances whose density is not known; they count as carbohydrate. */
const MOST_WITHOUT_FIGURE = 0.02;
/** @source choiOkos1986 (carbohydrate 1592.9 kg/m³ at 20 °C) */
const CARBOHYDRATE_ML_PER_G = 1 / 1.5929;

const valueAt = (coefficients: readonly number[], fraction: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * fraction + coefficient, 0);

/** A dissolved substance's volume and refraction at 20 °C at a mass fraction of all that is dissolved. */
export function solutionPart(name: string, grams: number, dissolvedFraction: number) {
  const figures = solutionFiguresOf(name);
  if (figures === undefined) {
    const volumeMlPerG = CARBOHYDRATE_ML_PER_G;
    return { grams, volumeMlPerG, refractionMlPerG: WATER_REFRACTION_ML_PER_G };
  }
  const fraction = Math.min(dissolvedFraction, figures.upToMassFraction);
  return {
    grams,
    volumeMlPerG: valueAt(figures.volumeMlPerG, fraction),
    refractionMlPerG: valueAt(figures.refractionMlPerG, fraction),
  };
}

export const waterPart = (grams: number): RefractingPart => ({
  grams,
  volumeMlPerG: 1 / WATER_GRAMS_PER_ML,
  refractionMlPerG: WATER_REFRACTION_ML_PER_G,
});

/** Water and all that is dissolved, at 20 °C; declined when too much of it has no known density. */
export function solutionParts({ doses, waterGrams }: Mix): Result<readonly RefractingPart[]> {
  const dissolved = doses.reduce((sum, { grams }) => sum + grams, 0);
  const liquid = dissolved + waterGrams;
  const unknown = doses.filter(({ substance }) => solutionFiguresOf(substance.name) === undefined);
  const unknownGrams = unknown.reduce((sum, { grams }) => sum + grams, 0);
  if (unknownGrams > MOST_WITHOUT_FIGURE * liquid) {
    const percent = ((100 * unknownGrams) / liquid).toFixed(1);
    const names = unknown.map(({ substance }) => `"${substance.name}"`).join(", ");
    return outsideValidity(
      `grams: ${percent} % of the liquid is ${names}, whose density in water is not in the catalogue; at most ${100 * MOST_WITHOUT_FIGURE} % may be.`,
    );
  }
  return [
    waterPart(waterGrams),
    ...doses.map(({ substance, grams }) => solutionPart(substance.name, grams, dissolved / liquid)),
  ];
}
