import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Counted } from "./countsParticles";
import { saidOf } from "../recipes/saidOf";

/** Numbers worked out by hand agree to the digits on the sheet. */
const AGREES = 0.01;

/** Whether two numbers of a class sheet are the same. */
export const isNear = (one: number, other: number): boolean => Math.abs(one / other - 1) < AGREES;

/** The moles, or moles to a kilogram of water, that a class sheet gives for one solute; 0 when it gives none. */
export function molesOf(block: RecipeBlock, name: RecipeName, role: Counted = "moles"): number {
  const place = saidOf(block, name, role);
  const value = place === null ? null : place.sheet.cellAt(place.row, place.column)?.value;
  return typeof value === "number" ? value : 0;
}
