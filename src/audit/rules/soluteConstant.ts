import type { Solute } from "../../catalogue/solute";
import { solutes } from "../../catalogue/solutes";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { changedMix, gramsIn } from "../mix";
import { amountOf } from "../recipes/amountOf";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import { hydrateOfSolute, pureSolute } from "../pureSolute";
import type { Role } from "../recipes/headerRole";
import type { Rule } from "../rule";

const identity = { id: "constant-of-a-solute", severity: "error" } as const;

/** 58 for salt and 340 for sucrose are rounded, if boldly; crystal water makes 5 % and more. */
const MOLAR_MASS_TOLERANCE = 0.012;
/** Real salts count for a little less than their ions (0.85 at 1 mol/kg), never for more. */
const LEAST_PARTICLES = 0.84;

const columnOf = (block: RecipeBlock, role: Role): number | null =>
  block.layout === "down" ? ([...block.roles].find(([, one]) => one === role)?.[0] ?? null) : null;

/** The same substance with or without crystal water, when it is that one's molar mass that was given. */
function twinOf(solute: Solute, molarMass: number): Solute | null {
  const twins = [
    hydrateOfSolute(solute),
    solutes.find(({ name }) => name === solute.hydrateOf?.solute),
  ];
  const isIt = (twin: Solute) =>
    Math.abs(twin.molarMass.value / molarMass - 1) < MOLAR_MASS_TOLERANCE;
  return twins.find((twin) => twin !== undefined && isIt(twin)) ?? null;
}

/** What it does to the answer to count `factor` times the right number of particles of one ingredient. */
function effectOfCounting(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  factor: number,
) {
  const recipe = block.recipes.find((one) => gramsIn(context.mixOf(block, one), name) > 0);
  if (recipe === undefined) return null;
  const meant = context.mixOf(block, recipe);
  return mixEffect(changedMix(meant, name, { grams: gramsIn(meant, name) * factor }), meant);
}

function molarMassFinding(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  column: number,
): Finding | null {
  const value = block.sheet.cellAt(name.row, column)?.value;
  const solute = pureSolute(name.item, block.ownIngredients);
  if (typeof value !== "number" || value <= 0 || solute === null) return null;
  const right = solute.molarMass.value;
  if (Math.abs(value / right - 1) <= MOLAR_MASS_TOLERANCE) return null;
  const twin = twinOf(solute, value);
  const hint = twin === null ? "" : `; ${rounded(value, 2)} is that of ${twin.name}`;
  return findingAt(
    identity,
    block.sheet,
    { row: name.row, column },
    {
      message: `The molar mass of ${name.item} is given as ${rounded(value, 3)}, it is ${rounded(right, 2)} g/mol${hint}.`,
      effect: effectOfCounting(context, block, name, right / value),
      fix: `Use ${rounded(right, 2)}${twin === null ? "" : `, or name the ingredient ${twin.name}`}.`,
    },
  );
}

/** Without a column of molar masses the moles still tell which one was used, where it is the twin's. */
function molesFinding(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  column: number,
): Finding | null {
  const moles = block.sheet.cellAt(name.row, column)?.value;
  const solute = pureSolute(name.item, block.ownIngredients);
  const [recipe] = block.recipes;
  if (typeof moles !== "number" || moles <= 0 || solute === null || recipe === undefined)
    return null;
  const used = (amountOf(block, recipe, name).grams ?? 0) / moles;
  const twin = used > 0 ? twinOf(solute, used) : null;
  if (twin === null || block.recipes.length > 1) return null;
  const right = solute.molarMass.value;
  return findingAt(
    identity,
    block.sheet,
    { row: name.row, column },
    {
      message: `The moles of ${name.item} are those of ${twin.name} (${rounded(used, 2)} g/mol); its own molar mass is ${rounded(right, 2)} g/mol.`,
      effect: effectOfCounting(context, block, name, right / used),
      fix: `Divide by ${rounded(right, 2)}, or name the ingredient ${twin.name}.`,
    },
  );
}

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
    identity,
    block.sheet,
    { row: name.row, column },
    {
      message: `The number of particles (van 't Hoff factor) of ${name.item} is ${given}; one formula unit gives ${right}.`,
      effect: effectOfCounting(context, block, name, counted / right),
      fix: `Use ${right}.`,
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
  ...identity,
  title: "A molar mass or a number of particles contradicts the catalogue",
  find: (context) => context.blocks.flatMap((block) => findIn(context, block)),
};
