import type { Matrix } from "../../src/foundation/cell";
import { callFunction } from "../../src/worksheet/callFunction";
import type { RecipeInGrams } from "../bowl/toGrams";

/** What the functions expect of a mix, to be held against what is measured; null where they decline. */
export interface Forecast {
  readonly pointC: number | null;
  readonly bandK: number | null;
  readonly brix: number | null;
  readonly firmness: string;
}

export function forecastOf(
  { items, grams }: RecipeInGrams,
  own: Matrix | null,
  temperatureC: number,
): Forecast {
  const ask = (name: string, ...more: readonly unknown[]) =>
    callFunction(name, items, grams, ...more, own)[0]?.[0];
  const number = (cell: unknown) => (typeof cell === "number" ? cell : null);
  const word = ask("TEXTURE", temperatureC);
  return {
    pointC: number(ask("FREEZINGPOINT")),
    bandK: number(ask("UNCERTAINTY", "freezing point", null)),
    brix: number(ask("BRIX")),
    firmness: typeof word === "string" ? word : "",
  };
}
