import { FACTORS_OF_UNITS, type Line, type MassOutlier } from "./massOutlier";
import { amountOf } from "../recipes/amounts/amountOf";
import type { Recipe, RecipeBlock, RecipeName } from "../recipes/recipeBlock";

const MOST_RECIPES = 200;

const isWithin = (one: number, other: number, times: number) =>
  one <= other * times && one * times >= other;
const isOfUnits = (factor: number): boolean => ![0.01, 0.1, 10, 100].includes(factor);
const medianOf = (sizes: readonly number[]): number =>
  [...sizes].sort((one, other) => one - other)[Math.floor(sizes.length / 2)] ?? 0;

/** The grams of other recipes of the same ingredients, by name. */
function versionsOf(block: RecipeBlock, recipe: Recipe, lines: readonly Line[]): number[][] {
  const used = new Set(lines.map(({ name }) => name));
  const others = block.recipes.slice(0, MOST_RECIPES).filter((other) => other !== recipe);
  const alike = others
    .map((other) => block.names.map((name) => amountOf(block, other, name).grams ?? 0))
    .filter((grams) =>
      grams.every((one, at) => one > 0 === used.has(block.names[at] as RecipeName)),
    );
  return lines.map(({ name }) => alike.map((grams) => grams[block.names.indexOf(name)] ?? 0));
}

/** By how much a recipe is larger than its versions, by its middle line; two lines do not tell. */
function scaleOf(lines: readonly Line[], medians: readonly number[]): number {
  const ratios = lines.map(({ grams }, at) => grams / (medians[at] ?? grams));
  return lines.length > 2 ? medianOf(ratios) : 1;
}

/** The one amount that is far from those of at least three versions of the recipe, which otherwise agree. */
export function versionOutliers(
  block: RecipeBlock,
  recipe: Recipe,
  lines: readonly Line[],
): MassOutlier[] {
  if (block.recipes.length < 4) return [];
  const versions = versionsOf(block, recipe, lines);
  if ((versions[0]?.length ?? 0) < 3) return [];
  const medians = versions.map(medianOf);
  const scale = scaleOf(lines, medians);
  const far = lines.filter(({ grams }, at) => !isWithin(grams, scale * (medians[at] ?? 0), 2.5));
  const [line, ...more] = far;
  const sizes = line === undefined ? [] : (versions[lines.indexOf(line)] ?? []);
  const median = scale * medianOf(sizes);
  const main = versions[medians.indexOf(Math.max(...medians))] ?? [];
  // What is a thousand times off is so beside recipes that differ among themselves, too.
  const isFar = line !== undefined && !isWithin(line.grams, median, 100);
  const [spread, near] = isFar ? [5, 4] : [2, 1.6];
  const isAgreed = [sizes, main].every((some) => Math.max(...some) <= spread * Math.min(...some));
  if (line === undefined || more.length > 0 || !isAgreed) return [];
  // Solutions of one substance are made up in strengths that are ten times apart on purpose.
  const factors = lines.length > 2 ? FACTORS_OF_UNITS : FACTORS_OF_UNITS.filter(isOfUnits);
  const factor = factors.find((one) => isWithin(line.grams * one, median, near));
  return factor === undefined
    ? []
    : [{ name: line.name, factor, why: "as in the recipes beside it" }];
}
