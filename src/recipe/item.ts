import type { Ingredient } from "../catalogue/ingredient";
import type { KitchenFacts } from "../catalogue/kitchenFacts";
import type { Solute } from "../catalogue/solute";
import type { Substance } from "./substance";

/** What one gram of an item brings into a mix, in grams. */
export interface Content {
  readonly water: number;
  readonly substances: readonly (readonly [Substance, number])[];
  readonly fat: number;
  readonly protein: number;
  readonly ash: number;
  readonly inert: number;
  /** Part of `inert`: water inside pieces that do not dissolve. */
  readonly pieceWater: number;
}

/** Something that a recipe can name: a solute, an ingredient of the catalogue or of the user. */
export interface Item {
  readonly name: string;
  readonly content: Content;
  /** One standard deviation, grams per gram, by "water", "fat", "protein", "higherSaccharides" or a solute. */
  readonly spread: Readonly<Record<string, number>>;
  readonly facts: KitchenFacts;
  /** What the user's own range says in words about allergens and cautions. */
  readonly allergenText: string | null;
  readonly cautionText: string | null;
  readonly source: string;
  /** What was taken for granted about the item's figures, to be said with the answer. */
  readonly assumptions: readonly string[];
  readonly origin:
    | { readonly kind: "solute"; readonly solute: Solute }
    | { readonly kind: "ingredient"; readonly ingredient: Ingredient }
    | { readonly kind: "own" }
    | { readonly kind: "water lost" };
}
