import { callFunction } from "../../../src/worksheet/callFunction";

/** What one of our functions says of a mix of named grams, rounded as its writer rounds it. */
export function answerFor(
  functionName: string,
  mix: Readonly<Record<string, number>>,
  digits: number,
  ...more: readonly (string | number)[]
): number {
  const names = Object.keys(mix).map((name) => [name]);
  const grams = Object.values(mix).map((amount) => [amount]);
  const value = callFunction(functionName, names, grams, ...more)[0]?.[0];
  if (typeof value !== "number") throw new Error(`${functionName}: ${JSON.stringify(value)}`);
  return Number(value.toFixed(digits));
}
