import type { Item } from "./item";
import type { Substance } from "./substance";

/** An amount of one dissolved substance. */
export interface Dose {
  readonly substance: Substance;
  readonly grams: number;
  readonly moles: number;
}

/** A line of the recipe: what was weighed in. */
export interface MixPart {
  readonly item: Item;
  readonly grams: number;
}

/** A recipe as the physics sees it. Everything in grams; the shares add up to `totalGrams`. */
export interface Mix {
  readonly totalGrams: number;
  /** Water that dissolves and freezes; what is in undissolved pieces is not in it. */
  readonly waterGrams: number;
  readonly doses: readonly Dose[];
  readonly fatGrams: number;
  readonly proteinGrams: number;
  readonly ashGrams: number;
  /** Everything else that does not dissolve: fibre, starch, cocoa, and the sugars and water of pieces. */
  readonly inertGrams: number;
  /** Of the inert mass: water inside pieces that do not dissolve. */
  readonly pieceWaterGrams: number;
  readonly parts: readonly MixPart[];
}
