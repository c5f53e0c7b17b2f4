import type { Ingredient } from "../ingredient";
import type { Solute } from "../solute";

/** What a name in a cell is known as. */
export type KnownMatch =
  | { readonly kind: "solute"; readonly solute: Solute }
  | { readonly kind: "ingredient"; readonly ingredient: Ingredient }
  | { readonly kind: "ambiguous"; readonly word: string; readonly choices: readonly string[] };

/** What a name in a cell stands for. */
export type ItemMatch =
  KnownMatch | { readonly kind: "unknown"; readonly nearest: readonly string[] };
