import { outsideValidity } from "../foundation/problem";
import type { Result } from "../foundation/result";
import { interpolated } from "./interpolated";
import type { Mix } from "./mix";
import { solutionRows, type SolutionRow } from "./solutionRows";
import { standIn } from "./standIn";

const WATER_G_PER_ML = 0.9982;

const densityRows = (rows: readonly SolutionRow[]) =>
  rows.map(([massPercent, gramsPerMl]) => [massPercent, gramsPerMl] as const);

const sucroseRows = densityRows(solutionRows["sucrose"] ?? []);

/** Density of sucrose in water at 20 °C, g/mL, to 84 % by mass; beyond, the last printed one. @source crc102 */
export const sucroseGramsPerMl = (massFraction: number): number =>
  interpolated(sucroseRows, Math.min(Math.max(100 * massFraction, 0), 84)) ?? WATER_G_PER_ML;

/**
 * Densities at 20 °C of what does not dissolve or has no table of its own, g/mL.
 * @source choiOkos1986: protein, fat, carbohydrate, ash (ASHRAE Refrigeration 2006, chapter 9, table 1)
 */
const FAT = 0.9172;
const PROTEIN = 1.3194;
const CARBOHYDRATE = 1.5929;
const ASH = 2.4182;
const FIBRE = 1.3042;

/** Volume that a gram of a dissolved substance adds to the water, mL, at this share of the liquid. */
function addedMlPerGram(name: string, massFraction: number): number {
  const rows = solutionRows[name] ?? solutionRows["sucrose"] ?? [];
  const top = rows.at(-1)?.[0] ?? 0;
  const percent = Math.min(Math.max(100 * massFraction, 2), top);
  const density = interpolated(densityRows(rows), percent);
  if (density === null || percent === 0) return 1 / CARBOHYDRATE;
  const share = percent / 100;
  return (1 / density - (1 - share) / WATER_G_PER_ML) / share;
}

/** Volume of the liquid part of a mix at 20 °C, mL. */
function liquidMl(mix: Mix): number {
  const dissolved = mix.doses.reduce((sum, { grams }) => sum + grams, 0);
  const fraction = dissolved / (dissolved + mix.waterGrams);
  return mix.doses.reduce(
    (sum, { substance, grams }) => sum + grams * addedMlPerGram(standIn(substance), fraction),
    mix.waterGrams / WATER_G_PER_ML,
  );
}

const MOST_AIR = 2;

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
  const undissolved = mix.inertGrams - mix.pieceWaterGrams;
  const volume =
    liquidMl(mix) +
    mix.fatGrams / FAT +
    mix.proteinGrams / PROTEIN +
    mix.ashGrams / ASH +
    undissolved / FIBRE +
    mix.pieceWaterGrams / WATER_G_PER_ML;
  return mix.totalGrams / (volume * (1 + overrunFraction));
}
