import { findItem } from "../../catalogue/findItem";
import type { Ingredient } from "../../catalogue/ingredient";
import type { Solute } from "../../catalogue/solute";
import { solutes } from "../../catalogue/solutes";
import type { Matrix } from "../../foundation/cell";
import { catalogueName } from "../catalogueName";

/** An ingredient this pure is its solute: refined sugar, fine salt. */
const PURE_PERCENT = 97;

/** The hydrate of a solute, if the catalogue has one. */
export const hydrateOfSolute = ({ name }: Solute): Solute | undefined =>
  solutes.find((one) => one.hydrateOf?.solute === name);

function ofIngredient({ composition }: Ingredient): Solute | null {
  const [only, ...more] = Object.entries(composition.solutes ?? {}).filter(
    ([, grams]) => grams > 1,
  );
  const solute = only === undefined ? undefined : solutes.find(({ name }) => name === only[0]);
  if (only === undefined || solute === undefined || more.length > 0) return null;
  if (only[1] >= PURE_PERCENT) return solute;
  const hydrate = hydrateOfSolute(solute);
  const dry = 100 * (1 - (hydrate?.hydrateOf?.waterMassFraction ?? 1));
  return hydrate !== undefined && Math.abs(only[1] - dry) < 1 ? hydrate : null;
}

/** The one solute that a name stands for, be it sold under a kitchen name; null for mixtures. */
export function pureSolute(item: string, ownIngredients: Matrix | null = null): Solute | null {
  const name = catalogueName(item, ownIngredients);
  if (name === null) return null;
  const match = findItem(name);
  if (match.kind === "solute") return match.solute;
  return match.kind === "ingredient" ? ofIngredient(match.ingredient) : null;
}
