import { cellName } from "../../workbook/address";
import { cellEdit, numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { CellEdit, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { isFromBeside } from "../amounts/isFromBeside";
import { massOutliers } from "../amounts/massOutliers";
import { otherMark, type OtherMark } from "../amounts/otherMark";
import { changedMix } from "../mix";
import { amountOf } from "../recipes/amounts/amountOf";
import {
  amountPlace,
  type Place,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipes/recipeBlock";
import { gramsPer, isMass, isShare, unitText, type MassUnit } from "../recipes/amounts/unit";
import { withoutExtracts } from "../recipes/names/withoutExtracts";
import type { Rule } from "../rule";
import { summedMarks } from "../amounts/summedMarks";

const identity = { id: "mass-units-mixed", severity: "error" } as const;

/** An amount is among the others up to this many times beyond the smallest and the largest. */
const AMONG = 8;
const MOST_RECIPES = 200;

const short = (value: number): number => Number(value.toPrecision(6));

/**
 * The amount in the column's unit and its mark with it, where that brings the amount among the others; else a
 * person decides whether amount or mark is wrong.
 */
function convertingEdits(
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
  { unit: from, at }: OtherMark,
  to: MassUnit,
): readonly CellEdit[] {
  const { sheet, names } = block;
  const place = amountPlace(block, recipe, name);
  const valueAt = ({ row, column }: Place) => sheet.cellAt(row, column)?.value;
  const value = valueAt(place);
  const others = names
    .filter((other) => other !== name)
    .map((other) => valueAt(amountPlace(block, recipe, other)))
    .filter((other): other is number => typeof other === "number" && other > 0);
  const isMarked = typeof from === "string" && isMass(from) && at !== null;
  if (typeof value !== "number" || others.length === 0 || !isMarked) return [];
  const converted = short((value * gramsPer(from)) / gramsPer(to));
  const isAmong = (one: number) =>
    one >= Math.min(...others) / AMONG && one <= Math.max(...others) * AMONG;
  if (!isAmong(converted) || isAmong(value)) return [];
  return [...numberEdit(sheet, place, converted), ...cellEdit(sheet, at, to)];
}

/** An amount that is marked with another unit than its column has. */
function markFinding(
  context: AuditContext,
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
): Finding | null {
  const { unit } = recipe;
  const mark = otherMark(block, recipe, name);
  if (mark === null || typeof unit !== "string" || !isMass(unit)) return null;
  const place = amountPlace(block, recipe, name);
  const value = block.sheet.cellAt(place.row, place.column)?.value;
  if (typeof value !== "number" || value <= 0) return null;
  const mix = context.mixOf(block, recipe);
  const typed = changedMix(mix, name, { grams: value * gramsPer(unit) });
  const meant =
    typeof mark.unit === "string" && isMass(mark.unit)
      ? changedMix(mix, name, { grams: value * gramsPer(mark.unit) })
      : mix;
  const address = cellName(place.row, place.column);
  return findingAt(identity, block.sheet, place, {
    message: `${address}, the amount of ${name.item}, is marked ${unitText(mark.unit)} in a column of ${unit}.`,
    effect: mixEffect(typed, meant),
    fix: `Convert it to ${unit}, or correct the mark.`,
    edits: convertingEdits(block, recipe, name, mark, unit),
  });
}

/** An amount without a mark that is out by a factor of ten, of units, or of both. */
function outlierFindings(context: AuditContext, block: RecipeBlock, recipe: Recipe): Finding[] {
  if (isShare(recipe.unit)) return [];
  const own = massOutliers(block, recipe).filter(({ name }) => !isFromBeside(block, recipe, name));
  return own.map(({ name, factor, why }) => {
    const place = amountPlace(block, recipe, name);
    const cell = cellName(place.row, place.column);
    const value = block.sheet.cellAt(place.row, place.column)?.value;
    const typed = context.mixOf(block, recipe);
    const meant = changedMix(typed, name, {
      grams: (amountOf(block, recipe, name).grams ?? 0) * factor,
    });
    const unit = unitText(recipe.unit);
    const shown = typeof value === "number" ? value : 0;
    return findingAt(identity, block.sheet, place, {
      message: `${cell}, the amount of ${name.item}, is ${short(shown)} ${unit}; ${short(shown * factor)} ${unit} would fit, ${why}.`,
      effect: mixEffect(typed, meant),
      fix: `Enter ${short(shown * factor)} if another unit, or a point in the wrong place, was typed.`,
      edits: numberEdit(block.sheet, place, short(shown * factor)),
    });
  });
}

function summedFindings(block: RecipeBlock, recipe: Recipe): Finding[] {
  const { sheet } = block;
  return summedMarks(block, recipe).map(({ name, place, unit, usual }) => {
    const value = sheet.cellAt(place.row, place.column)?.value;
    const shown = typeof value === "number" ? short(value) : 0;
    return findingAt(identity, sheet, place, {
      message: `${cellName(place.row, place.column)}, the amount of ${name.item}, is marked ${unit} in a column of ${usual}.`,
      effect: { quantity: "total", from: `${shown} ${usual}`, to: `${shown} ${unit}`, unit: "" },
      fix: `Convert it to ${usual}, or correct the mark.`,
    });
  });
}

function findIn(context: AuditContext, block: RecipeBlock): Finding[] {
  return block.recipes.slice(0, MOST_RECIPES).flatMap((recipe) => {
    const marked = block.names.flatMap((name) => markFinding(context, block, recipe, name) ?? []);
    const summed = summedFindings(block, recipe);
    if (summed.length > 0) return summed;
    return marked.length > 0 ? marked : outlierFindings(context, block, recipe);
  });
}

export const massUnit: Rule = {
  ...identity,
  title: "An amount is in another unit than its column",
  find: (context) => withoutExtracts(context.blocks).flatMap((block) => findIn(context, block)),
};
