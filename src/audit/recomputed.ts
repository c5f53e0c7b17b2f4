import { freezingPointC, iceFraction } from "./answers";
import { callFunction } from "../worksheet/callFunction";
import type { AuditContext } from "./context";
import type { Mix } from "./mix";
import { idealMolality } from "./idealLaw";
import { amountOf } from "./recipes/amountOf";
import type { Recipe, RecipeBlock } from "./recipes/recipeBlock";
import { labelledBasis } from "./resultLabel";
import { temperatureOfResultC } from "./servingTemperature";
import type { StatedResult } from "./statedResults";

/** By the basis that the label names; where it names none, by the one that is nearer to what is stated. */
function iceShare(
  mix: Mix,
  temperatureC: number,
  { label, value, unit }: StatedResult,
): number | null {
  const basis = labelledBasis(label);
  if (basis !== null) return iceFraction(mix, temperatureC, basis);
  const [water, whole] = [
    iceFraction(mix, temperatureC, "water"),
    iceFraction(mix, temperatureC, "mix"),
  ];
  if (water === null || whole === null) return null;
  const stated = unit === "%" ? value / 100 : value;
  return Math.abs(water - stated) <= Math.abs(whole - stated) ? water : whole;
}

/** Our number for a stated result, in °C, K, mol/kg or as a fraction; null when we have none. */
export function recomputed(context: AuditContext, result: StatedResult): number | null {
  const mix = context.mixOf(result.block, result.recipe);
  if (!mix.complete || mix.items.length === 0) return null;
  if (result.role === "molality") return idealMolality(mix);
  if (result.role === "ice fraction") {
    const temperatureC = temperatureOfResultC(context, result);
    return temperatureC === null ? null : iceShare(mix, temperatureC, result);
  }
  const point = freezingPointC(mix);
  if (point === null) return null;
  return result.role === "freezing point" ? point : -point;
}

/**
 * The freezing points of many results of one across block in one call, as a sheet would fill its column; °C
 * by row. Rows that cannot be read without doubt, and mixes without a freezing point, are left out.
 */
export function freezingPointsByRow(
  context: AuditContext,
  block: RecipeBlock,
  recipes: readonly Recipe[],
): ReadonlyMap<number, number> {
  const points = new Map<number, number>();
  const check = context.checkFor(block);
  const names = block.names.filter(({ item }) => check(item).kind === "known");
  const doubtful = block.names.filter((name) => !names.includes(name));
  const readable = recipes.filter((recipe) =>
    doubtful.every((name) => (amountOf(block, recipe, name).grams ?? 0) === 0),
  );
  const rows = readable.map((recipe) => names.map((name) => amountOf(block, recipe, name)));
  const items = [names.map(({ item }) => item)];
  const grams = rows.map((row) => row.map((amount) => amount.grams ?? 0));
  const answer = callFunction("FREEZINGPOINT", items, grams, block.ownIngredients);
  for (const [at, { line }] of readable.entries()) {
    const value = answer[at]?.[0];
    const isRead = rows[at]?.every(({ unreadable }) => unreadable === null) === true;
    if (typeof value === "number" && isRead) points.set(line, value);
  }
  return points;
}
