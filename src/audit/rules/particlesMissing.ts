import { IDEAL_KF_K_KG_PER_MOL } from "../../foundation/constants";
import { componentGrams } from "../answers";
import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { labelledNumbers } from "../labels";
import { changedMix, gramsIn, type Mix } from "../mix";
import { pureSolute } from "../pureSolute";
import { amountOf } from "../recipes/amountOf";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { StatedResult } from "../statedResults";
import type { Rule } from "../rule";

const identity = { id: "particles-not-counted", severity: "error" } as const;

/** A result that is the sum of the moles agrees with it to the digits on the sheet. */
const AGREES = 0.01;

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
    return found.filter(
      (one, at) =>
        found.findIndex(({ cell, sheet }) => cell === one.cell && sheet === one.sheet) === at,
    );
  },
};
