import { densityOfParts, type VolumePart } from "../engine/density";
import { at, THERMAL_FIGURES, type FoodComponent } from "../engine/thermal/foodComponent";
import { isProblem, outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Mix } from "./mix";
import { solutionPart, solutionParts, waterPart } from "./solutionParts";

const AT_C = 20;
const MOST_AIR = 2;

/** Density of sucrose in water at 20 °C, g/mL, to 84 % by mass; the volumes are drawn on beyond. @source crc102 */
export const sucroseGramsPerMl = (massFraction: number): number =>
  densityOfParts(
    [waterPart(1 - massFraction), solutionPart("sucrose", massFraction, massFraction)],
    0,
  );

/** What does not dissolve, by its kind. @source choiOkos1986 */
const undissolved = (grams: number, kind: FoodComponent): VolumePart => ({
  grams,
  volumeMlPerG: 1000 / at(THERMAL_FIGURES[kind].densityKgPerM3, AT_C),
});

/**
 * Density of a mix at 20 °C, g/mL: volumes add up, each dissolved substance by what it adds to water at the
 * same share of dissolved matter. Good to ± 1 %, ± 2 % with much that does not dissolve.
 * @param overrunFraction volume of air over volume of mix, 0 to 2
 */
export function densityOfMix(mix: Mix, overrunFraction: number): Result<number> {
  if (overrunFraction > MOST_AIR) {
    return outsideValidity(
      `overrunFraction: ${overrunFraction} is not answered; at most ${MOST_AIR} is (200 % overrun).`,
    );
  }
  const liquid = mix.waterGrams > 0 || mix.doses.length > 0 ? solutionParts(mix) : [];
  if (isProblem(liquid)) return liquid;
  const parts = [
    ...liquid,
    undissolved(mix.fatGrams, "fat"),
    undissolved(mix.proteinGrams, "protein"),
    undissolved(mix.ashGrams, "ash"),
    undissolved(Math.max(mix.inertGrams - mix.pieceWaterGrams, 0), "fibre"),
    waterPart(mix.pieceWaterGrams),
  ];
  return densityOfParts(parts, overrunFraction);
}
