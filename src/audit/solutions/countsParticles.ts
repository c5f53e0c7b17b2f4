import { referencesOf } from "../../workbook/references";
import { isOfParticles } from "../recipes/amounts/ofParticles";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { saidOf } from "../recipes/saidOf";

/** What a class works out line by line, of which it can take formula units or particles. */
export type Counted = "moles" | "molality";

/** Whether what is counted of a solute is worked out with its number of particles. */
function readsItsFactor(block: RecipeBlock, name: RecipeName, role: Counted): boolean {
  const [counted, particles] = [saidOf(block, name, role), saidOf(block, name, "particles")];
  if (counted === null || particles === null) return false;
  const { row, column } = particles;
  // Where they stand on two sheets the label has to tell.
  if (counted.sheet !== particles.sheet) return false;
  return referencesOf(counted.sheet.cellAt(counted.row, counted.column)?.formula ?? "").some(
    ({ sheet, range: { top, bottom, left, right } }) =>
      sheet === null && top === row && bottom === row && left === column && right === column,
  );
}

const known = {
  moles: new WeakMap<RecipeBlock, boolean>(),
  molality: new WeakMap<RecipeBlock, boolean>(),
};

/** Whether what a list counts is particles: it is called so, or some read their factors. */
export function countsParticles(block: RecipeBlock, role: Counted, label: string): boolean {
  if (isOfParticles(label)) return true;
  const before = known[role].get(block);
  if (before !== undefined) return before;
  const isRead = block.names.some((name) => readsItsFactor(block, name, role));
  known[role].set(block, isRead);
  return isRead;
}
