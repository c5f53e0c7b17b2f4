import {
  CHANGED_AMOUNT,
  numberAt,
  one,
  retypeNumber,
  textAt,
  type Mutation,
  type Variant,
} from "../mutation";
import { mistyped } from "./mistyped";

const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;

const servingInFahrenheit: Variant = {
  apply: (marked, random) => {
    const able = marked.inputs.filter(({ label }) => textAt(marked, label).includes("°C"));
    const chosen = one(random, able);
    if (chosen === null) return null;
    retypeNumber(marked, chosen.value, fahrenheit(numberAt(marked, chosen.value)), 0);
    return [chosen.value];
  },
};

/** Near −40 both scales say about the same: nobody can tell which a chiller at −34 was read in. */
const LEAST_APART_K = 6;

const columnInFahrenheit: Variant = {
  apply: (marked, random) => {
    const column = one(
      random,
      marked.numberColumns.filter(({ kind }) => kind === "temperature"),
    );
    const isTold = (celsius: number) => fahrenheit(celsius) - celsius >= LEAST_APART_K;
    const told = column?.spots.filter((each) => isTold(numberAt(marked, each)));
    const spot = told === undefined ? null : one(random, told);
    if (spot === null) return null;
    retypeNumber(marked, spot, fahrenheit(numberAt(marked, spot)), 0);
    return [spot];
  },
};

/** Temperatures in °F among those in °C. */
export const temperatureMutations: readonly Mutation[] = [
  {
    rule: "temperature-units-mixed",
    variants: [
      servingInFahrenheit,
      columnInFahrenheit,
      mistyped(["freezing point"], (_, right) => fahrenheit(right)),
    ],
    fair: {
      ...CHANGED_AMOUNT,
      "freezing-point-sign": "a positive freezing point",
      "formula-overwritten": "a number among formulas",
    },
  },
];
