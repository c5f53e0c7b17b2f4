import { IDEAL_KF_K_KG_PER_MOL } from "../../foundation/constants";
import { componentGrams } from "../answers/answers";
import { numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect, rounded } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { labelledNumbers } from "../labels";
import { changedMix, gramsIn, type Mix } from "../mix";
import { isNear, molesOf } from "../solutions/molesOf";
import { pureSolute } from "../solutions/pureSolute";
import { amountOf } from "../recipes/amounts/amountOf";
import type { RecipeName } from "../recipes/recipeBlock";
import { saidOf } from "../recipes/saidOf";
import type { StatedResult } from "../answers/statedResults";
import { toldOnce } from "../toldOnce";
import { PARTICLES, unusedFactors } from "../formulas/unusedFactors";
import type { Rule } from "../rule";

/** Salts whose moles of formula units stand in the moles column. */
function saltsCountedOnce({ block, recipe }: StatedResult): readonly RecipeName[] {
  return block.names.filter((name) => {
    const solute = pureSolute(name.item, block.ownIngredients);
    const grams = amountOf(block, recipe, name).grams ?? 0;
    return (
      solute !== null &&
      solute.vantHoff.value >= 2 &&
      grams > 0 &&
      isNear(molesOf(block, name), grams / solute.molarMass.value)
    );
  });
}

/** Whether the stated result is Kf times the plain sum of the moles over the water: every i taken as 1. */
function isPlainSum(
  context: AuditContext,
  { block, role, value }: StatedResult,
  mix: Mix,
): boolean {
  const moles = block.names.reduce((sum, name) => sum + molesOf(block, name), 0);
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
    factors.some((kf) => isNear(Math.abs(value), (kf * moles * 1000) / grams)),
  );
}

function findFor(context: AuditContext, result: StatedResult): Finding[] {
  const { block, recipe } = result;
  const roles = [...block.roles.values()];
  if (!roles.includes("moles") || roles.includes("particles")) return [];
  const salts = saltsCountedOnce(result);
  const mix = context.mixOf(block, recipe);
  if (salts.length === 0 || !isPlainSum(context, result, mix)) return [];
  return salts.flatMap((name) => {
    const place = saidOf(block, name, "moles");
    if (place === null) return [];
    const ions = pureSolute(name.item, block.ownIngredients)?.vantHoff.value ?? 1;
    const moles = molesOf(block, name);
    const fewer = changedMix(mix, name, { grams: gramsIn(mix, name) / ions });
    return findingAt(PARTICLES, place.sheet, place, {
      message: `${name.item} falls into ${ions} particles, but "${result.label}" counts its ${rounded(moles, 4)} mol once.`,
      effect: mixEffect(fewer, mix),
      fix: `Multiply its moles by the van 't Hoff factor ${ions}.`,
      // A formula of its own in a filled column would be the next thing to stumble over.
      edits: numberEdit(place.sheet, place, rounded(ions * moles, 6)),
    });
  });
}

export const particlesMissing: Rule = {
  ...PARTICLES,
  title: "The van 't Hoff factor of a salt is left out",
  find: (context) => {
    const found = context.results
      .filter(({ role, block }) => role !== "ice fraction" && block.layout === "down")
      .flatMap((result) => findFor(context, result));
    // A molality and a depression built on it show the same slip: told once.
    const once = toldOnce(found);
    return [...once, ...unusedFactors(context, once)];
  },
};
