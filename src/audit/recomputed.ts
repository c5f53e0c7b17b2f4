import { freezingPointC, iceFraction } from "./answers";
import { callFunction } from "../worksheet/callFunction";
import type { AuditContext } from "./context";
import { idealMolality } from "./idealLaw";
import { labelledBasis } from "./resultLabel";
import { temperatureOfResultC } from "./servingTemperature";
import type { StatedResult } from "./statedResults";

/** Our number for a stated result, in °C, K, mol/kg or as a fraction; null when we have none. */
export function recomputed(context: AuditContext, result: StatedResult): number | null {
  const mix = context.mixOf(result.block, result.recipe);
  if (!mix.complete || mix.items.length === 0) return null;
  if (result.role === "molality") return idealMolality(mix);
  if (result.role === "ice fraction") {
    const temperatureC = temperatureOfResultC(context, result);
    return temperatureC === null
      ? null
      : iceFraction(mix, temperatureC, labelledBasis(result.label) ?? "water");
  }
  const point = freezingPointC(mix);
  if (point === null) return null;
  return result.role === "freezing point" ? point : -point;
}

/**
 * The freezing points of many results of one across block in one call, as a sheet would fill its column; °C
 * by row, null where there is none.
 */
export function freezingPointsByRow(
  context: AuditContext,
  results: readonly StatedResult[],
): ReadonlyMap<number, number | null> {
  const [first] = results;
  const points = new Map<number, number | null>();
  if (first === undefined) return points;
  const items = first.block.names.map(({ item }) => item);
  const grams = results.map(({ block, recipe }) => {
    const mix = context.mixOf(block, recipe);
    const amounts = new Map(mix.items.map((item, at) => [item, mix.grams[at] ?? 0]));
    return items.map((item) => amounts.get(item) ?? 0);
  });
  const answer = callFunction("FREEZINGPOINT", [items], grams, first.block.ownIngredients);
  for (const [at, { recipe }] of results.entries()) {
    const value = answer[at]?.[0];
    points.set(recipe.line, typeof value === "number" ? value : null);
  }
  return points;
}
