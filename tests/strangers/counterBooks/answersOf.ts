import { callFunction } from "../../../src/worksheet/callFunction";

/** Grams under the names our functions know, whatever the person calls the foods in her sheet. */
type Mix = Readonly<Record<string, number>>;

/** What somebody worked out elsewhere for her list, rounded as people round. */
export function answersOf(mix: Mix) {
  const recipe = [
    Object.keys(mix).map((name) => [name]),
    Object.values(mix).map((grams) => [grams]),
  ];
  const answer = (name: string, digits: number, times: number, ...more: readonly unknown[]) => {
    const value = callFunction(name, ...recipe, ...more)[0]?.[0];
    if (typeof value !== "number") throw new Error(`${name} gives ${JSON.stringify(value)}.`);
    return Number((value * times).toFixed(digits));
  };
  return {
    freezing: (digits = 1) => answer("FREEZINGPOINT", digits, 1),
    depression: (digits = 1) => answer("DEPRESSION", digits, 1),
    icePercent: (temperatureC: number, digits = 0) =>
      answer("ICEFRACTION", digits, 100, temperatureC),
    grams: (component: string, digits = 0) => answer("COMPONENT", digits, 1, component),
  };
}
