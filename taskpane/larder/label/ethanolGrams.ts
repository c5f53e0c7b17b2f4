import { callFunction } from "../../../src/worksheet/callFunction";

const number = (name: string, ...args: readonly unknown[]): number => {
  const answer = callFunction(name, ...args)[0]?.[0];
  return typeof answer === "number" ? answer : 0;
};

/** Ethanol in 100 g of something of so many % by volume: by its density, else as of spirit and water alone. */
export const ethanolGrams = (abvPercent: number, gramsPerMl: number | null): number =>
  gramsPerMl === null
    ? 100 * number("ABVTOMASSFRACTION", abvPercent)
    : number("GRAMS", "ethanol", abvPercent, "mL") / gramsPerMl;
