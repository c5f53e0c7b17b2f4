import { plainWaterGrams } from "../amounts/plainWaterGrams";
import type { AuditContext } from "../context";
import { amountOf } from "../recipes/amounts/amountOf";
import type { Recipe, RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { saidOf, type SaidPlace } from "../recipes/saidOf";
import { countsParticles } from "./countsParticles";
import { molesOf } from "./molesOf";
import { pureSolute } from "./pureSolute";

/** Where a class sheet counts the particles of a solute. */
export interface CountedSolute {
  readonly place: SaidPlace;
  /** Of formula units. */
  readonly moles: number;
  /** How many times each of them is counted. */
  readonly times: number;
}

/** How the particles of a solute are counted, in moles or in moles to a kilogram of water; null where they are not. */
export function countedTimes(
  context: Pick<AuditContext, "mixOf">,
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
): CountedSolute | null {
  const molarMass = pureSolute(name.item, block.ownIngredients)?.molarMass.value;
  const grams = amountOf(block, recipe, name).grams ?? 0;
  if (molarMass === undefined || grams <= 0) return null;
  const moles = grams / molarMass;
  for (const role of ["moles", "molality"] as const) {
    const place = saidOf(block, name, role);
    if (place === null || !countsParticles(block, role, place.label)) continue;
    const perKg = role === "moles" ? 1 : plainWaterGrams(context.mixOf(block, recipe)) / 1000;
    return { place, moles, times: (molesOf(block, name, role) * perKg) / moles };
  }
  return null;
}
