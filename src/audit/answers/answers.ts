import type { Cell } from "../../foundation/cell";
import { callFunction } from "../../worksheet/callFunction";
import type { Mix } from "../mix";

/** The first cell of a worksheet function's answer when it is a number, else null. */
export function numberFrom(name: string, ...args: readonly unknown[]): number | null {
  const answer: Cell | undefined = callFunction(name, ...args)[0]?.[0];
  return typeof answer === "number" ? answer : null;
}

/** A list as a column of cells. */
export const column = <T>(values: readonly T[]): T[][] => values.map((value) => [value]);

/** °C at which the first ice forms, or null when there is no such number. */
export const freezingPointC = ({ items, grams, ownIngredients }: Mix): number | null =>
  items.length === 0
    ? null
    : numberFrom("FREEZINGPOINT", column(items), column(grams), ownIngredients);

/** One standard uncertainty of the freezing point, K; 0 when it is not known. */
export const freezingPointUncertaintyK = ({ items, grams, ownIngredients }: Mix): number =>
  numberFrom("UNCERTAINTY", column(items), column(grams), "freezing point", null, ownIngredients) ??
  0;

/** Share that is ice at a temperature, 0–1, or null. */
export const iceFraction = (
  mix: Mix,
  temperatureC: number,
  basis: "water" | "mix",
): number | null =>
  mix.items.length === 0
    ? null
    : numberFrom(
        "ICEFRACTION",
        column(mix.items),
        column(mix.grams),
        temperatureC,
        basis,
        mix.ownIngredients,
      );

/** g of a component in the whole mix, or null. */
export const componentGrams = (mix: Mix, component: string): number | null =>
  mix.items.length === 0
    ? null
    : numberFrom("COMPONENT", column(mix.items), column(mix.grams), component, mix.ownIngredients);

/** g of a component in 100 g of one item, or null. */
export const componentPer100 = (
  item: string,
  component: string,
  ownIngredients: Mix["ownIngredients"],
) => numberFrom("COMPONENT", [[item]], [[100]], component, ownIngredients);

const compositions = new WeakMap<Mix, ReadonlyMap<string, number>>();

/** g of every part of a mix by name: water, solutes, fat…; empty when it cannot be computed. */
export function compositionGrams(mix: Mix): ReadonlyMap<string, number> {
  const known = compositions.get(mix);
  if (known !== undefined) return known;
  const table =
    mix.items.length === 0
      ? []
      : callFunction("COMPOSITION", column(mix.items), column(mix.grams), mix.ownIngredients);
  const parts = table.flatMap(([name, grams]): [string, number][] =>
    typeof name === "string" && typeof grams === "number" && name !== "total"
      ? [[name, grams]]
      : [],
  );
  const grams = new Map(parts);
  compositions.set(mix, grams);
  return grams;
}
