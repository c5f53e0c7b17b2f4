import { IDEAL_KF_K_KG_PER_MOL } from "../../foundation/constants";
import { freezingPointC } from "../answers/answers";
import { cellEdit, formulaEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { freezingEffect } from "../effect";
import type { Effect, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { withNumber } from "../formulas/formulaNumbers";
import { constantCells } from "../formulas/constantCells";
import type { Place, Recipe, RecipeBlock } from "../recipes/recipeBlock";
import type { WorkbookSheet } from "../../workbook/model";
import type { Rule } from "../rule";

const identity = { id: "cryoscopic-constant", severity: "error" } as const;

/** Values of Kf that are mistakes, within 1 %, and what they are. 3.35 is 1.86 × 9/5; 0.512 is Kb (OpenStax 11.4). */
const MISTAKES: readonly (readonly [value: number, what: string])[] = [
  [18.6, "ten times the constant of water"],
  [0.186, "a tenth of the constant of water"],
  [3.35, "the constant for degrees Fahrenheit"],
  [0.512, "the boiling constant Kb"],
  [5.12, "the constant of benzene, or the boiling constant ten times"],
];
/** Printed values for water run from 1.853 to 1.86; some round to 1.9. */
const RIGHT_WITHIN = 0.03;
const mistakeOf = (value: number) =>
  MISTAKES.find(([mistake]) => Math.abs(value / mistake - 1) < 0.01) ?? null;

const otherThanRight = (value: number) =>
  Math.abs(value / IDEAL_KF_K_KG_PER_MOL - 1) <= RIGHT_WITHIN
    ? null
    : ([value, "not the constant of water"] as const);

const LITERAL = /(?<![\w.$])(\d+\.\d+)(?![\w.(!:])/g;

function firstRecipeOn(
  context: AuditContext,
  sheet: WorkbookSheet,
): { block: RecipeBlock; recipe: Recipe } | null {
  const block = context.blocks.find((one) => one.sheet === sheet) ?? context.blocks[0];
  const recipe = block?.recipes[0];
  return block === undefined || recipe === undefined ? null : { block, recipe };
}

/** The freezing point with every depression scaled by the wrong constant. */
function effectOf(
  context: AuditContext,
  where: { block: RecipeBlock; recipe: Recipe } | null,
  value: number,
): Effect | null {
  if (where === null) return null;
  const right = freezingPointC(context.mixOf(where.block, where.recipe));
  return right === null ? null : freezingEffect((right * value) / IDEAL_KF_K_KG_PER_MOL, right);
}

function finding(
  sheet: WorkbookSheet,
  place: Place,
  value: number,
  what: string,
  effect: Effect | null,
): Finding {
  const formula = sheet.cellAt(place.row, place.column)?.formula;
  const isMistake = (number: number) => number === value;
  const edits =
    formula === undefined
      ? cellEdit(sheet, place, IDEAL_KF_K_KG_PER_MOL)
      : formulaEdit(sheet, place, withNumber(formula, isMistake, IDEAL_KF_K_KG_PER_MOL));
  return findingAt(identity, sheet, place, {
    message: `Kf is ${value}: ${what}; for water and degrees Celsius it is ${IDEAL_KF_K_KG_PER_MOL} K·kg/mol.`,
    effect,
    fix: `Use ${IDEAL_KF_K_KG_PER_MOL}.`,
    edits,
  });
}

function inCells(context: AuditContext): Finding[] {
  return constantCells(context).flatMap(({ sheet, unit, value, ...place }) => {
    const mistake = mistakeOf(Math.abs(value)) ?? otherThanRight(Math.abs(value));
    if (mistake === null || (unit === "°F" && mistake[0] === 3.35)) return [];
    const effect = effectOf(context, firstRecipeOn(context, sheet), value);
    return finding(sheet, place, value, mistake[1], effect);
  });
}

/** A wrong constant typed into the formula of a freezing point or a depression. */
function inFormulas(context: AuditContext): Finding[] {
  return context.results.flatMap(({ role, unit, sheet, row, column, block, recipe }) => {
    const formula = sheet.cellAt(row, column)?.formula;
    if (formula === undefined || (role !== "freezing point" && role !== "depression")) return [];
    for (const [, digits] of formula.matchAll(LITERAL)) {
      const value = Number(digits);
      const mistake = mistakeOf(value);
      if (mistake === null || (mistake[0] === 3.35 && unit === "°F")) continue;
      return finding(
        sheet,
        { row, column },
        value,
        mistake[1],
        effectOf(context, { block, recipe }, value),
      );
    }
    return [];
  });
}

export const cryoscopicConstant: Rule = {
  ...identity,
  title: "The cryoscopic constant is not that of water in °C",
  find: (context) => [...inCells(context), ...inFormulas(context)],
};
