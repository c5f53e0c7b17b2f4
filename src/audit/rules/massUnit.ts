import { cellName } from "../../workbook/address";
import { cellEdit, numberEdit } from "../cellEdit";
import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { CellEdit, Finding } from "../finding";
import { findingAt } from "../findingAt";
import { changedMix } from "../mix";
import { amountOf } from "../recipes/amountOf";
import { textAt } from "../recipes/cells";
import {
  amountPlace,
  type Place,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipes/recipeBlock";
import { gramsPer, isMass, unitFromFormat, unitFromWord, type MassUnit } from "../recipes/unit";
import type { Rule } from "../rule";

const identity = { id: "mass-units-mixed", severity: "error" } as const;

/** An amount is among the others up to this many times beyond the smallest and the largest. */
const AMONG = 8;

/** The mass unit that the cell to the right or the unit column says, against the header's. */
function unitBeside(block: RecipeBlock, row: number, column: number): MassUnit | null {
  const places = block.unitColumn === null ? [column + 1] : [block.unitColumn, column + 1];
  for (const place of places) {
    const unit = unitFromWord(textAt(block.sheet, row, place));
    if (unit !== null && isMass(unit)) return unit;
  }
  return null;
}

/**
 * The amount in the column's unit and its mark with it, where that brings the amount among the others; else a
 * person decides whether amount or mark is wrong.
 */
function convertingEdits(
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
  from: MassUnit,
  to: MassUnit,
): readonly CellEdit[] {
  const { sheet, names, unitColumn } = block;
  const place = amountPlace(block, recipe, name);
  const valueAt = ({ row, column }: Place) => sheet.cellAt(row, column)?.value;
  const value = valueAt(place);
  const others = names
    .filter((other) => other !== name)
    .map((other) => valueAt(amountPlace(block, recipe, other)))
    .filter((other): other is number => typeof other === "number" && other > 0);
  if (typeof value !== "number" || others.length === 0) return [];
  const converted = Number(((value * gramsPer(from)) / gramsPer(to)).toPrecision(6));
  const isAmong = (one: number) =>
    one >= Math.min(...others) / AMONG && one <= Math.max(...others) * AMONG;
  if (!isAmong(converted) || isAmong(value)) return [];
  const marked = [unitColumn, place.column + 1].find(
    (column) => column !== null && textAt(sheet, place.row, column) !== "",
  );
  const mark = marked == null ? [] : cellEdit(sheet, { row: place.row, column: marked }, to);
  return [...numberEdit(sheet, place, converted), ...mark];
}

function finding(
  context: AuditContext,
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
): Finding | null {
  const { unit } = recipe;
  const { row, column, grams } = amountOf(block, recipe, name);
  if (grams === null || grams <= 0 || !isMass(unit) || recipe.unitAssumed) return null;
  const beside = unitBeside(block, row, column);
  const shown = unitFromFormat(block.sheet.cellAt(row, column)?.format);
  // A format of its own is what the reader took; the unit beside is what the header overruled.
  const other = beside !== null && beside !== unit ? beside : null;
  if (other === null || shown !== null) return null;
  const typed = context.mixOf(block, recipe);
  const meant = changedMix(typed, name, { grams: (grams / gramsPer(unit)) * gramsPer(other) });
  const address = cellName(row, column);
  return findingAt(
    identity,
    block.sheet,
    { row, column },
    {
      message: `${address}, the amount of ${name.item}, is marked ${other} in a column of ${unit}.`,
      effect: mixEffect(typed, meant),
      fix: `Convert it to ${unit}, or correct the mark.`,
      edits: convertingEdits(block, recipe, name, other, unit),
    },
  );
}

export const massUnit: Rule = {
  ...identity,
  title: "An amount is in another unit than its column",
  find: (context) =>
    context.blocks
      .filter(({ layout }) => layout === "down")
      .flatMap((block) =>
        block.recipes.flatMap((recipe) =>
          block.names.flatMap((name) => finding(context, block, recipe, name) ?? []),
        ),
      ),
};
