import { addressed } from "../workbook/addressed/addressed";
import type { Workbook } from "../workbook/model";
import type { Recalculation } from "../workbook/recalculation";
import { meantMix, type MeantMix } from "./mix";
import type { RecipeCorrection } from "./recipes/corrections/recipeCorrection";
import { storedCorrections } from "./recipes/corrections/storedCorrections";
import { ownTargets, type OwnTarget } from "./targets/ownTargets";
import { findRecipes, type FoundRecipes } from "./recipes/findRecipes";
import { knownItems, type ItemCheck } from "./recipes/names/knownItems";
import type { Recipe, RecipeBlock } from "./recipes/recipeBlock";
import { statedResults, type StatedResult } from "./answers/statedResults";

/** What every rule works from. */
export interface AuditContext extends FoundRecipes {
  readonly workbook: Workbook;
  readonly results: readonly StatedResult[];
  /** Serving targets that the workbook defines, by normal name. */
  readonly ownTargets: ReadonlyMap<string, OwnTarget>;
  readonly checkFor: (block: RecipeBlock) => ItemCheck;
  readonly mixOf: (block: RecipeBlock, recipe: Recipe) => MeantMix;
  /** What the formulas give when they are calculated anew; null when that was not done. */
  readonly recalculated: Recalculation | null;
}

/** A hundred thousand recipes are read again when asked for, not kept. */
const MOST_KEPT = 500;

/** Reads a workbook once for all rules; without `corrections` by those that the workbook itself keeps. */
export function auditContext(
  given: Workbook,
  corrections?: readonly RecipeCorrection[],
): AuditContext {
  const workbook = addressed(given);
  const kept =
    corrections === undefined ? storedCorrections(workbook) : { entries: corrections, notes: [] };
  const found = findRecipes(workbook, kept.entries);
  const checks = new Map<unknown, ItemCheck>();
  const checkFor = ({ ownIngredients }: RecipeBlock): ItemCheck => {
    const check = checks.get(ownIngredients) ?? knownItems(ownIngredients);
    checks.set(ownIngredients, check);
    return check;
  };
  const mixes = new WeakMap<Recipe, MeantMix>();
  const mixOf = (block: RecipeBlock, recipe: Recipe): MeantMix => {
    const mix = mixes.get(recipe) ?? meantMix(block, recipe, checkFor(block));
    if (block.recipes.length <= MOST_KEPT) mixes.set(recipe, mix);
    return mix;
  };
  return {
    ...found,
    notes: [...kept.notes, ...found.notes],
    workbook,
    results: statedResults(workbook, found.blocks),
    ownTargets: ownTargets(workbook),
    checkFor,
    mixOf,
    recalculated: null,
  };
}
