import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { rounded } from "../effect";
import { effectOfCounting } from "../effectOfCounting";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { molarMassFinding, molesFinding, SOLUTE_CONSTANT } from "../molarMasses";
import { pureSolute } from "../pureSolute";
import type { Role } from "../recipes/headerRole";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

/** Real salts count for a little less than their ions (0.85 at 1 mol/kg), never for more. */
const LEAST_PARTICLES = 0.84;

const columnOf = (block: RecipeBlock, role: Role): number | null =>
  block.layout === "down" ? ([...block.roles].find(([, one]) => one === role)?.[0] ?? null) : null;

function particlesFinding(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  column: number,
): Finding | null {
  const value = block.sheet.cellAt(name.row, column)?.value ?? null;
  const right = pureSolute(name.item, block.ownIngredients)?.vantHoff.value;
  if (right === undefined || (value !== null && typeof value !== "number")) return null;
  const counted = value ?? 1;
  if (counted >= LEAST_PARTICLES * right && counted <= right * 1.001) return null;
  const given = value === null ? "not given" : `given as ${rounded(value, 3)}`;
  return findingAt(
    SOLUTE_CONSTANT,
    block.sheet,
    { row: name.row, column },
    {
      message: `The number of particles (van 't Hoff factor) of ${name.item} is ${given}; one formula unit gives ${right}.`,
      effect: effectOfCounting(context, block, name, counted / right),
      fix: `Use ${right}.`,
      edits: numberEdit(block.sheet, { row: name.row, column }, right),
    },
  );
}

function findIn(context: AuditContext, block: RecipeBlock): Finding[] {
  const molarMass = columnOf(block, "molar mass");
  const particles = columnOf(block, "particles");
  const moles = molarMass === null ? columnOf(block, "moles") : null;
  return block.names
    .flatMap((name) => [
      molarMass === null ? null : molarMassFinding(context, block, name, molarMass),
      moles === null ? null : molesFinding(context, block, name, moles),
      particles === null ? null : particlesFinding(context, block, name, particles),
    ])
    .filter((found) => found !== null);
}

export const soluteConstant: Rule = {
  ...SOLUTE_CONSTANT,
  title: "A molar mass or a number of particles contradicts the catalogue",
  find: (context) => context.blocks.flatMap((block) => findIn(context, block)),
};
