import { IDEAL_KF_K_KG_PER_MOL } from "../../foundation/constants";
import { parseCellName } from "../../workbook/address";
import { componentGrams } from "../answers";
import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import { explainResult, SALT_AS_ONE } from "../explainResult";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { labelledNumbers } from "../labels";
import { changedMix, gramsIn, type Mix } from "../mix";
import { pureSolute } from "../pureSolute";
import { amountOf } from "../recipes/amountOf";
import { textAt } from "../recipes/cells";
import { isClassSheet } from "../recipes/classSheet";
import type { Role } from "../recipes/headerRole";
import type { Place, RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { StatedResult } from "../statedResults";
import type { Rule } from "../rule";

const identity = { id: "particles-not-counted", severity: "error" } as const;

/** A result that is the sum of the moles agrees with it to the digits on the sheet. */
const AGREES = 0.01;

const OF_PARTICLES = /particles?|teilchen|ions|ionen|osmol|\bi\s*[·*×x]\s*n\b/i;

const near = (one: number, other: number): boolean => Math.abs(one / other - 1) < AGREES;

function molesAt(block: RecipeBlock, { row }: RecipeName): number {
  const column = [...block.roles].find(([, role]) => role === "moles")?.[0];
  const value = column === undefined ? null : block.sheet.cellAt(row, column)?.value;
  return typeof value === "number" ? value : 0;
}

/** Salts whose moles of formula units stand in the moles column. */
function saltsCountedOnce({ block, recipe }: StatedResult): readonly RecipeName[] {
  return block.names.filter((name) => {
    const solute = pureSolute(name.item, block.ownIngredients);
    const grams = amountOf(block, recipe, name).grams ?? 0;
    return (
      solute !== null &&
      solute.vantHoff.value >= 2 &&
      grams > 0 &&
      near(molesAt(block, name), grams / solute.molarMass.value)
    );
  });
}

/** Whether the stated result is Kf times the plain sum of the moles over the water: every i taken as 1. */
function isPlainSum(
  context: AuditContext,
  { block, role, value }: StatedResult,
  mix: Mix,
): boolean {
  const moles = block.names.reduce((sum, name) => sum + molesAt(block, name), 0);
  const all = componentGrams(mix, "water");
  const poured = mix.items.reduce(
    (sum, item, at) => sum + (/^water$/i.test(item.trim()) ? (mix.grams[at] ?? 0) : 0),
    0,
  );
  const waters = [all ?? 0, poured].filter((grams) => grams > 0);
  const written = labelledNumbers(context.workbook, ["cryoscopic constant"]).map(
    (label) => label.value,
  );
  const factors = role === "molality" ? [1] : [IDEAL_KF_K_KG_PER_MOL, ...written];
  return waters.some((grams) =>
    factors.some((kf) => near(Math.abs(value), (kf * moles * 1000) / grams)),
  );
}

const columnOf = ({ roles }: RecipeBlock, wanted: Role): number | null =>
  [...roles].find(([, role]) => role === wanted)?.[0] ?? null;

function findingOf(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
  place: Place,
  says: string,
): Finding[] {
  const [recipe] = block.recipes;
  const ions = pureSolute(name.item, block.ownIngredients)?.vantHoff.value ?? 1;
  if (recipe === undefined) return [];
  const mix = context.mixOf(block, recipe);
  const grams = gramsIn(mix, name);
  return [
    findingAt(identity, block.sheet, place, {
      message: `${name.item} falls into ${ions} particles, but ${says} once.`,
      effect: mixEffect(changedMix(mix, name, { grams: grams / ions }), mix),
      fix: `Multiply by the van 't Hoff factor ${ions}.`,
    }),
  ];
}

/** Salts that the sheet itself gives no wrong number of particles, which another rule would tell. */
const saltsOf = (block: RecipeBlock): readonly RecipeName[] => {
  const column = columnOf(block, "particles");
  return block.names.filter(({ item, row }) => {
    const ions = pureSolute(item, block.ownIngredients)?.vantHoff.value ?? 1;
    const given = column === null ? null : block.sheet.cellAt(row, column)?.value;
    return ions >= 2 && (column === null || (typeof given === "number" && given > 1));
  });
};

/** A column of moles of particles in which a salt has its formula units. */
function inColumn(context: AuditContext, block: RecipeBlock): Finding[] {
  const column = columnOf(block, "moles");
  const [recipe] = block.recipes;
  const header = textAt(block.sheet, block.headerRow ?? -1, column ?? -1);
  if (column === null || recipe === undefined || !OF_PARTICLES.test(header)) return [];
  return saltsOf(block).flatMap((name) => {
    const solute = pureSolute(name.item, block.ownIngredients);
    const grams = amountOf(block, recipe, name).grams ?? 0;
    const isOnce =
      solute !== null && grams > 0 && near(molesAt(block, name), grams / solute.molarMass.value);
    const says = `"${header}" counts each of its ${rounded(molesAt(block, name), 4)} mol`;
    return isOnce ? findingOf(context, block, name, { row: name.row, column }, says) : [];
  });
}

/** A result that comes out when every salt is taken for one particle, on a sheet that works with moles. */
function inResults(context: AuditContext, block: RecipeBlock): Finding[] {
  const first = context.results.find(
    (result) =>
      result.block === block &&
      (result.role === "depression" || result.role === "freezing point") &&
      isSaltAsOne(context, result),
  );
  const [salt] = saltsOf(block);
  return first === undefined || salt === undefined
    ? []
    : findingOf(context, block, salt, first, `"${first.label}" counts each unit of it`);
}

function isSaltAsOne(
  context: AuditContext,
  { block, recipe, role, value, unit, sheet, row, column }: StatedResult,
): boolean {
  if (role !== "depression" && role !== "freezing point") return false;
  if (sheet.cellAt(row, column)?.formula === undefined) return false; // a typed one differs, whatever the moles say
  const explained = explainResult(context.mixOf(block, recipe), role, value, unit === "°F");
  return explained?.mistakes.length === 1 && explained.mistakes[0] === SALT_AS_ONE;
}

/** Class sheets that have a factor, or moles of particles, and do not use it for one salt. */
function findUnused(context: AuditContext, told: readonly Finding[]): Finding[] {
  const blocks = context.blocks.filter(
    ({ layout, roles }) => layout === "down" && isClassSheet(roles),
  );
  return blocks.flatMap((block) => {
    const isTold = told.some(
      ({ sheet, cell }) =>
        sheet === block.sheet.name &&
        block.names.some(({ row }) => parseCellName(cell)?.row === row),
    );
    if (isTold) return [];
    const inMoles = inColumn(context, block);
    return inMoles.length > 0 ? inMoles : inResults(context, block);
  });
}

function findFor(context: AuditContext, result: StatedResult): Finding[] {
  const { block, recipe } = result;
  const roles = [...block.roles.values()];
  if (!roles.includes("moles") || roles.includes("particles")) return [];
  const salts = saltsCountedOnce(result);
  const mix = context.mixOf(block, recipe);
  if (salts.length === 0 || !isPlainSum(context, result, mix)) return [];
  const column = [...block.roles].find(([, role]) => role === "moles")?.[0] ?? 0;
  return salts.map(({ row, item, column: nameColumn }) => {
    const ions = pureSolute(item, block.ownIngredients)?.vantHoff.value ?? 1;
    const name = { row, item, column: nameColumn };
    const grams = gramsIn(mix, name);
    return findingAt(
      identity,
      block.sheet,
      { row, column },
      {
        message: `${item} falls into ${ions} particles, but "${result.label}" counts its ${rounded(molesAt(block, name), 4)} mol once.`,
        effect: mixEffect(changedMix(mix, name, { grams: grams / ions }), mix),
        fix: `Multiply its moles by the van 't Hoff factor ${ions}.`,
        // A formula of its own in a filled column would be the next thing to stumble over.
        edits: numberEdit(block.sheet, { row, column }, rounded(ions * molesAt(block, name), 6)),
      },
    );
  });
}

export const particlesMissing: Rule = {
  ...identity,
  title: "The van 't Hoff factor of a salt is left out",
  find: (context) => {
    const found = context.results
      .filter(({ role, block }) => role !== "ice fraction" && block.layout === "down")
      .flatMap((result) => findFor(context, result));
    // A molality and a depression built on it show the same slip: told once.
    const once = found.filter(
      (one, at) =>
        found.findIndex(({ cell, sheet }) => cell === one.cell && sheet === one.sheet) === at,
    );
    return [...once, ...findUnused(context, once)];
  },
};
