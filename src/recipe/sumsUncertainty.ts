import { isProblem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Mix } from "./mix";
import { spreadVariance } from "./spreadVariance";
import type { Substance } from "./substance";
import { sweetnessOfMix } from "./sweetness";

/** One standard deviation, g, of a sum over the ingredients: from their natural and trade spread. */
const ofSpreads = ({ parts }: Mix, effectOf: (component: "water" | Substance) => number): number =>
  Math.hypot(...parts.map(({ item, grams }) => grams * Math.sqrt(spreadVariance(item, effectOf))));

/** One standard uncertainty of SWEETNESS, g of sucrose per 100 g: the tongue's figures and the ingredients' spread. */
export function sweetnessUncertainty(mix: Mix): Result<number> {
  const sweetness = sweetnessOfMix(mix);
  if (isProblem(sweetness)) return sweetness;
  const ofFigures = mix.doses.map(
    ({ grams, substance }) => grams * (substance.solute?.sweetness?.uncertainty ?? 0),
  );
  const spread = ofSpreads(mix, (component) =>
    component === "water" ? 0 : (component.sweetness ?? 0),
  );
  return (100 * Math.hypot(spread, ...ofFigures)) / mix.totalGrams;
}

/** One standard uncertainty of the share of a mix that is solids: all but water and alcohol. */
export const solidsUncertainty = (mix: Mix): number =>
  ofSpreads(mix, (component) => (component === "water" || component.name === "ethanol" ? -1 : 0)) /
  mix.totalGrams;
