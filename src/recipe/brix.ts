import { refractiveIndexOf, type RefractingPart } from "../engine/refractiveIndex";
import { rootBetween } from "../engine/rootBetween";
import { isProblem, outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Mix } from "./mix";
import { solutionPart, solutionParts, waterPart } from "./solutionParts";

/** The refractometer's own scale ends here: sucrose is printed to 84 % by mass. @source crc102 */
const MOST_BRIX = 84;

/**
 * Protein in a liquid at 20 °C: mL/g, and mL/g of refraction, which raise the index by 0.185 per g/mL.
 * From memory of protein chemistry.
 * @source commonPractice
 */
const PROTEIN = { volumeMlPerG: 0.735, refractionMlPerG: 0.2465 } as const;

/** Protein that is in the liquid: of milk and egg. That of nuts, cocoa or flour sits in particles. */
function liquidProteinGrams({ parts }: Mix): number {
  return parts.reduce((sum, { item, grams }) => {
    const { origin, content } = item;
    const liquid =
      origin.kind === "ingredient" &&
      ["dairy", "eggs"].includes(origin.ingredient.group) &&
      origin.ingredient.inclusion !== true;
    return liquid ? sum + grams * content.protein : sum;
  }, 0);
}

const indexOfSucrose = (brix: number): number =>
  refractiveIndexOf([waterPart(100 - brix), solutionPart("sucrose", brix, brix / 100)]);

/**
 * Degrees Brix that a refractometer at 20 °C would read on the liquid part: its refractive index, read as if all
 * were sucrose. Sucrose in water reads its mass per cent, by definition.
 * @source lorentzLorenz1880; crc102
 */
export function brixOfMix(mix: Mix): Result<number> {
  if (!(mix.waterGrams > 0 || mix.doses.length > 0)) {
    return outsideValidity(
      "grams: nothing in this mix is liquid at 20 °C; water or something dissolved is expected.",
    );
  }
  const solution = solutionParts(mix);
  if (isProblem(solution)) return solution;
  const protein: RefractingPart = { grams: liquidProteinGrams(mix), ...PROTEIN };
  const index = refractiveIndexOf([...solution, protein]);
  const missing = (brix: number) => indexOfSucrose(brix) - index;
  if (Math.abs(missing(0)) < 1e-12) return 0;
  return (
    rootBetween(missing, 0, MOST_BRIX) ??
    outsideValidity(
      `grams: the reading would lie ${missing(0) > 0 ? "below 0" : `above ${MOST_BRIX}`} °Bx; 0 to ${MOST_BRIX} is answered.`,
    )
  );
}
