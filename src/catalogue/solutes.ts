import type { Solute } from "./solute";

/** Every solute of the catalogue, one file each. */
export const solutes: readonly Solute[] = [];
