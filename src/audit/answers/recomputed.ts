import { freezingPointC, iceFraction } from "./answers";
import { callFunction } from "../../worksheet/callFunction";
import type { AuditContext } from "../context";
import type { Mix } from "../mix";
import { idealMolality } from "../solutions/idealLaw";
import { amountOf } from "../recipes/amounts/amountOf";
import type { Recipe, RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { labelledBasis } from "./resultLabel";
import { temperatureOfResultC } from "../temperatures/servingTemperature";
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

/** So many rows are handed over at once: enough to be quick, few enough to be forgotten soon. */
const ROWS_AT_ONCE = 2000;

/**
 * The freezing points of many recipes of one across block, a few thousand rows a call, as a sheet would fill
 * its column; °C by row. Rows that cannot be read without doubt, and mixes without a freezing point, are
 * left out.
 */
export function freezingPointsByRow(
  context: AuditContext,
  block: RecipeBlock,
  recipes: readonly Recipe[],
): ReadonlyMap<number, number> {
  const points = new Map<number, number>();
  const check = context.checkFor(block);
  const isKnown = ({ item }: RecipeName) => check(item).kind === "known";
  const names = block.names.filter(isKnown);
  const doubtful = block.names.filter((name) => !isKnown(name));
  const items = [names.map(({ item }) => item)];
  for (let from = 0; from < recipes.length; from += ROWS_AT_ONCE) {
    const readable = recipes
      .slice(from, from + ROWS_AT_ONCE)
      .map((recipe) => ({ line: recipe.line, grams: gramsOf(block, recipe, names, doubtful) }))
      .filter((row) => row.grams !== null);
    const grams = readable.map((row) => row.grams);
    if (grams.length === 0) continue;
    const answer = callFunction("FREEZINGPOINT", items, grams, block.ownIngredients);
    for (const [at, { line }] of readable.entries()) {
      const value = answer[at]?.[0];
      if (typeof value === "number") points.set(line, value);
    }
  }
  return points;
}

/** One row of grams; null when something in it cannot be read without doubt. */
function gramsOf(
  block: RecipeBlock,
  recipe: Recipe,
  names: readonly RecipeName[],
  doubtful: readonly RecipeName[],
): number[] | null {
  if (doubtful.some((name) => (amountOf(block, recipe, name).grams ?? 0) !== 0)) return null;
  const grams: number[] = [];
  for (const name of names) {
    const amount = amountOf(block, recipe, name);
    if (amount.unreadable !== null) return null;
    grams.push(amount.grams ?? 0);
  }
  return grams;
}
