import type { Kit } from "../kit";
import type { MadeRecipe } from "../recipes";

const hasMilk = ({ lines }: MadeRecipe): boolean =>
  lines.some(({ allergen }) => allergen?.en === "milk");

/** Recipes with milk in them first; one with a mistake in it before all others. */
export function withMilk(kit: Kit, count: number): MadeRecipe[] {
  const rank = (made: MadeRecipe): number =>
    made.seeded !== undefined ? 0 : hasMilk(made) ? 1 : 2;
  return [...kit.make(3 * count)].sort((one, other) => rank(one) - rank(other)).slice(0, count);
}
