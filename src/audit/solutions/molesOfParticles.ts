import { referencesOf } from "../../workbook/references";
import { isOfParticles } from "../recipes/amounts/ofParticles";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { saidOf } from "../recipes/saidOf";

/** Whether the moles of a solute are worked out with its number of particles. */
function readsItsFactor(block: RecipeBlock, name: RecipeName): boolean {
  const [moles, particles] = [saidOf(block, name, "moles"), saidOf(block, name, "particles")];
  if (moles === null || particles === null) return false;
  const { row, column } = particles;
  // Where they stand on two sheets the label has to tell.
  if (moles.sheet !== particles.sheet) return false;
  return referencesOf(moles.sheet.cellAt(moles.row, moles.column)?.formula ?? "").some(
    ({ sheet, range: { top, bottom, left, right } }) =>
      sheet === null && top === row && bottom === row && left === column && right === column,
  );
}

const known = new WeakMap<RecipeBlock, boolean>();

/** Whether the moles of a list are those of particles: they are called so, or some read their factors. */
export function givesMolesOfParticles(block: RecipeBlock, label: string): boolean {
  if (isOfParticles(label)) return true;
  const before = known.get(block);
  if (before !== undefined) return before;
  const isRead = block.names.some((name) => readsItsFactor(block, name));
  known.set(block, isRead);
  return isRead;
}
