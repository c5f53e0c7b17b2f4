import { liquidWaterKg } from "../engine/liquidWater";
import { COLDEST_C } from "../foundation/constants";
import { isProblem, outsideValidity, type Problem } from "../foundation/problem";
import { glassTransitionOfMix } from "./glass";
import type { Mix } from "./mix";
import { shownTemperature } from "./shownTemperature";
import { solutionOf } from "./solution";

const FREEZER_C = -18;
const PLENTY_KG = 1e6;

const rounded = (temperatureC: number): string => shownTemperature(temperatureC, 0);

/** How much of the mix would have to be water for ice to form in a freezer, in words; "" when not known. */
function waterForIce(mix: Mix): string {
  const solution = solutionOf(mix);
  if (isProblem(solution)) return "";
  const heldGrams = 1000 * liquidWaterKg({ ...solution, waterKg: PLENTY_KG }, FREEZER_C);
  const percent = (100 * heldGrams) / (mix.totalGrams - mix.waterGrams + heldGrams);
  const there = (100 * mix.waterGrams) / mix.totalGrams;
  return ` At ${rounded(FREEZER_C)} °C ice would need about ${percent.toFixed(0)} % of water in it; it has ${there.toFixed(0)} %.`;
}

/**
 * Why no ice forms in a mix.
 * @param iceLineC null when it lies below the coldest that is answered
 * @param endOfFreezingC Tm′
 */
export function neverFreezes(mix: Mix, iceLineC: number | null, endOfFreezingC: number): Problem {
  // With a decimal where whole degrees would say "at −38 °C, below the −38 °C".
  const isClose = iceLineC !== null && rounded(iceLineC) === rounded(endOfFreezingC);
  const exact = (temperatureC: number) => shownTemperature(temperatureC, isClose ? 1 : 0);
  const where = iceLineC === null ? `below ${rounded(COLDEST_C)}` : `at ${exact(iceLineC)}`;
  const glassC = glassTransitionOfMix(mix);
  const glass = isProblem(glassC) ? "" : ` near ${rounded(glassC)} °C`;
  return outsideValidity(
    `grams: no ice forms in this mix: its ice line lies ${where} °C, below the ${exact(endOfFreezingC)} °C (Tm′) at which freezing ends.${waterForIce(mix)} It thickens into a glass${glass} instead, and sugar that crystallises in it, as glucose does in honey, is not freezing.`,
  );
}
