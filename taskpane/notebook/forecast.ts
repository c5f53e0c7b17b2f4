import type { Matrix } from "../../src/foundation/cell";
import { askMix, firstNumber } from "../bowl/askMix";
import type { RecipeInGrams } from "../bowl/toGrams";

/** What the functions expect of a mix, to be held against what is measured; null where they decline. */
export interface Forecast {
  readonly pointC: number | null;
  readonly bandK: number | null;
  readonly brix: number | null;
  readonly firmness: string;
}

export function forecastOf(
  recipe: RecipeInGrams,
  own: Matrix | null,
  temperatureC: number,
): Forecast {
  const mix = { ...recipe, own };
  const word = askMix(mix, "TEXTURE", temperatureC)[0]?.[0];
  return {
    pointC: firstNumber(askMix(mix, "FREEZINGPOINT")),
    bandK: firstNumber(askMix(mix, "UNCERTAINTY", "freezing point", null)),
    brix: firstNumber(askMix(mix, "BRIX")),
    firmness: typeof word === "string" ? word : "",
  };
}
