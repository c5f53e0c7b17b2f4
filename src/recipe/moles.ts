import type { Solute } from "../catalogue/solute";
import { soluteContent } from "./catalogueItem";

/** Moles that so many grams of a solute give, and the water that comes with them from a hydrate, g. */
export function moleOf(
  solute: Solute,
  grams: number,
): { readonly moles: number; readonly waterGrams: number } {
  const { water, substances } = soluteContent(solute);
  const moles = substances.reduce(
    (sum, [{ molarMassGPerMol }, share]) => sum + (grams * share) / molarMassGPerMol,
    0,
  );
  return { moles, waterGrams: grams * water };
}
