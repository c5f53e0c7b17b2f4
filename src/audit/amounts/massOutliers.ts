import { findItem } from "../../catalogue/findItem";
import { catalogueName } from "../catalogueName";
import { decimalsOf } from "../decimalsOf";
import { FACTORS_OF_UNITS, type Line, type MassOutlier } from "./massOutlier";
import { amountOf } from "../recipes/amounts/amountOf";
import {
  amountPlace,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipes/recipeBlock";
import { totalPlaces } from "../recipes/totals/totalPlaces";
import { solutionOutliers } from "./solutionOutliers";
import { versionOutliers } from "./versionOutliers";
import { isWater } from "../recipes/forms/isWater";

/** What a recipe has plenty of; of gums, salts, acids and flavours a gram may be all. Common practice, no source. */
const PLENTY = new Set([
  "water",
  "sugars",
  "honey",
  "dairy",
  "eggs",
  "fruit",
  "plant drinks",
  "nuts and seeds",
]);

/** Nobody makes so much water up with a pinch of something. */
const A_VAT_GRAMS = 20_000;

/** Nobody weighs so few grams of milk or fruit into a mix; they are kilograms. */
const LEAST_PLENTY_GRAMS = 4;
/** Nor a few grams with tenths into many kilograms weighed to the gram. */
const [LEAST_OF_TENTHS_GRAMS, LEAST_OF_MANY] = [10, 0.003];

const sumOf = (lines: readonly Line[]) => lines.reduce((sum, { grams }) => sum + grams, 0);

function isPlentiful(block: RecipeBlock, { item }: RecipeName): boolean {
  const match = findItem(catalogueName(item, block.ownIngredients) ?? "");
  return match.kind === "ingredient"
    ? PLENTY.has(match.ingredient.group)
    : match.kind === "solute" && match.solute.kind === "sugar";
}

const hasDecimals = (grams: number): boolean => !Number.isInteger(Number((grams * 10).toFixed(9)));

const isWhole = (grams: number): boolean => Number.isInteger(Number(grams.toFixed(6)));

const WHOLE = "and only then do the amounts come to a round sum";
/** A recipe is made up to so many grams, or to several times as much. */
const ROUND_GRAMS = 100;

/** A part of a gram beside whole ones that brings them to a round sum as kilograms, whatever it is. */
function makesItWhole({ grams }: Line, others: readonly Line[]): boolean {
  const meant = Number((grams * 1000).toFixed(6));
  const isOdd =
    grams < 1 && hasDecimals(grams) && others.every((one) => Number.isInteger(one.grams));
  return isOdd && Number.isInteger(meant) && (sumOf(others) + meant) % ROUND_GRAMS === 0;
}

/** Grams for kilograms or the reverse, where the other amounts leave no doubt. */
function outOfScale(block: RecipeBlock, lines: readonly Line[]): MassOutlier[] {
  const plenty = new Set(lines.map(({ name }) => name).filter((name) => isPlentiful(block, name)));
  return lines.flatMap((line): MassOutlier[] => {
    const others = lines.filter((other) => other !== line);
    const main = others.filter(({ name }) => plenty.has(name));
    const sizes = (main.length < 2 ? others : main).map(({ grams }) => grams);
    const [smallest, largest, sum] = [Math.min(...sizes), Math.max(...sizes), sumOf(others)];
    if (sizes.length >= 2 && makesItWhole(line, others))
      return [{ name: line.name, factor: 1000, why: WHOLE }];
    if (sizes.length < 2 || !plenty.has(line.name)) return [];
    // What a recipe has most of may well be ten times the rest.
    const isAmong = (grams: number) => grams >= smallest / 3 && grams <= 10 * sum;
    const { name, grams } = line;
    const why = "which no recipe has beside the other amounts";
    // Three decimals among whole grams are kilograms; the rest has to be far more otherwise.
    const isOdd = hasDecimals(grams) && others.every((other) => Number.isInteger(other.grams));
    const isFiner = !isWhole(grams) && others.every((other) => isWhole(other.grams));
    const isFew = isFiner && grams < LEAST_OF_TENTHS_GRAMS && grams < LEAST_OF_MANY * sum;
    const times = isOdd || isFew ? 40 : 200;
    const isTrace =
      (isFew || grams < LEAST_PLENTY_GRAMS) && grams * times < largest && grams < smallest / 10;
    if (isTrace && isAmong(grams * 1000)) return [{ name, factor: 1000, why }];
    const isThin = isWater(name.item) && grams < A_VAT_GRAMS;
    const least = isThin ? 200 : 30;
    return grams > least * sum && isAmong(grams / 1000) ? [{ name, factor: 0.001, why }] : [];
  });
}

/** Calculated amounts have no more decimals than matter. */
const decimalsIn = (amount: number): number => decimalsOf(Number(amount.toFixed(6)));

const isNear = (one: number, other: number, within: number) => Math.abs(one / other - 1) <= within;

/** The one amount by which a typed total misses the sum. */
function againstTotal(block: RecipeBlock, recipe: Recipe, lines: readonly Line[]): MassOutlier[] {
  const { sheet } = block;
  const [place, ...more] = totalPlaces(block, recipe);
  if (place === undefined || more.length > 0 || lines.length < 3) return [];
  const cell = sheet.cellAt(place.row, place.column);
  const first = lines[0];
  if (typeof cell?.value !== "number" || cell.formula !== undefined || first === undefined)
    return [];
  // The total is in the unit of the amounts.
  const { row, column } = amountPlace(block, recipe, first.name);
  const typed = sheet.cellAt(row, column)?.value;
  const total = typeof typed === "number" ? (cell.value * first.grams) / typed : cell.value;
  const perGram = typeof typed === "number" ? typed / first.grams : 1;
  const most = Math.max(...lines.map(({ grams }) => decimalsIn(grams * perGram)));
  const sum = sumOf(lines);
  if (isNear(sum, total, 0.02)) return [];
  const fitting = lines.flatMap(({ name, grams }) =>
    FACTORS_OF_UNITS.filter(
      (factor) =>
        isNear(sum + (factor - 1) * grams, total, 0.002) &&
        // An amount is meant as exactly as the others are weighed.
        (factor > 1 || decimalsIn(factor * grams * perGram) <= most) &&
        // Nearly nothing would do as well: then the line may be one too many.
        (factor > 1 || factor * grams > 0.01 * total),
    ).map((factor) => ({
      name,
      factor,
      why: "and only then do the amounts come to the total that is written",
    })),
  );
  return fitting.length === 1 ? fitting : [];
}

/** The amounts of a recipe that are out by a factor of units. */
export function massOutliers(block: RecipeBlock, recipe: Recipe): readonly MassOutlier[] {
  const lines = block.names.flatMap((name): Line[] => {
    const { grams } = amountOf(block, recipe, name);
    return grams !== null && grams > 0 ? [{ name, grams }] : [];
  });
  const written = againstTotal(block, recipe, lines);
  if (written.length > 0) return written;
  const beside = versionOutliers(block, recipe, lines);
  if (beside.length > 0) return beside;
  return lines.length === 2 ? solutionOutliers(block, lines) : outOfScale(block, lines);
}
