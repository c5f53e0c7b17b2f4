import { badInput, type Problem } from "../foundation/problem";
import type { Result } from "../foundation/result";
import type { Item } from "./item";
import type { Dose, Mix, MixPart } from "./mix";
import type { Substance } from "./substance";

/** A recipe lighter than this is nothing. */
const LEAST_GRAMS = 1e-6;

/** The mix of weighed items; a problem when it is nothing, or when more water was lost than there was. */
export function mixOf(parts: readonly MixPart[], place = "grams"): Result<Mix> {
  let weighed = 0;
  let lost = 0;
  const sums = { water: 0, fat: 0, protein: 0, ash: 0, inert: 0, pieceWater: 0 };
  const dissolved = new Map<Substance, number>();
  for (const { item, grams } of parts) {
    const { content } = item;
    if (item.origin.kind === "water lost") lost += grams;
    else weighed += grams;
    sums.water += grams * content.water;
    sums.fat += grams * content.fat;
    sums.protein += grams * content.protein;
    sums.ash += grams * content.ash;
    sums.inert += grams * content.inert;
    sums.pieceWater += grams * content.pieceWater;
    for (const [substance, share] of content.substances) {
      dissolved.set(substance, (dissolved.get(substance) ?? 0) + grams * share);
    }
  }
  const problem = impossible(weighed, lost, sums.water, place);
  if (problem !== null) return problem;
  const doses: Dose[] = [];
  for (const [substance, grams] of dissolved) {
    if (grams > 0) doses.push({ substance, grams, moles: grams / substance.molarMassGPerMol });
  }
  return {
    totalGrams: weighed - lost,
    waterGrams: sums.water <= 1e-12 * weighed ? 0 : sums.water,
    doses,
    fatGrams: sums.fat,
    proteinGrams: sums.protein,
    ashGrams: sums.ash,
    inertGrams: sums.inert,
    pieceWaterGrams: sums.pieceWater,
    parts,
  };
}

function impossible(weighed: number, lost: number, water: number, place: string): Problem | null {
  if (!(weighed >= LEAST_GRAMS)) {
    return badInput(
      `${place}: the amounts add up to ${weighed} g; a recipe needs at least ${LEAST_GRAMS} g.`,
    );
  }
  if (water < -1e-12 * weighed) {
    return badInput(
      `${place}: "water lost" is ${lost} g, more than the ${Number((water + lost).toPrecision(6))} g of water in the mix.`,
    );
  }
  return null;
}

/** How one item alone would be: for the amounts per 100 g of an ingredient. */
export const mixOfItem = (item: Item, grams: number): Result<Mix> => mixOf([{ item, grams }]);
