import type { Ingredient } from "../../src/catalogue/ingredient";
import { ingredients } from "../../src/catalogue/ingredients";
import type { Solute } from "../../src/catalogue/solute";
import { solutes } from "../../src/catalogue/solutes";

/** One thing on the shelf: what dissolves, or what recipes are made of. */
export type LarderEntry =
  | { readonly kind: "solute"; readonly item: Solute }
  | { readonly kind: "ingredient"; readonly item: Ingredient };

/** Everything in the catalogue, solutes first. */
export const larderEntries: readonly LarderEntry[] = [
  ...solutes.map((item) => ({ kind: "solute" as const, item })),
  ...ingredients.map((item) => ({ kind: "ingredient" as const, item })),
];

/** Unique within the larder: an ingredient may be called like the solute it is made of. */
export const entryKey = ({ kind, item }: LarderEntry): string => `${kind}:${item.name}`;
