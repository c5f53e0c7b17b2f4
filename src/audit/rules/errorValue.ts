import type { AuditContext } from "../context";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { cellName } from "../../workbook/address";
import type { WorkbookSheet } from "../../workbook/model";
import { referencesOf } from "../../workbook/references";
import { readableMass } from "../amounts/readableMass";
import { amountPlace, type Place, type RecipeBlock } from "../recipes/recipeBlock";
import type { LabelledAnswer } from "../answers/labelledAnswer";
import { isNotKnownThere, notKnownThere } from "../formulas/notKnownThere";
import { partAnswers } from "../answers/partAnswers";
import { resultAnswers } from "../answers/resultAnswers";
import type { Rule } from "../rule";
import { toldOnce } from "../toldOnce";

const identity = { id: "error-in-an-amount", severity: "error" } as const;

function findIn(context: AuditContext, block: RecipeBlock): Finding[] {
  return block.recipes.flatMap((recipe) =>
    block.names.flatMap((name) => {
      const { row, column } = amountPlace(block, recipe, name);
      const value = block.sheet.cellAt(row, column)?.value;
      if (typeof value !== "object" || value === null) return [];
      return findingAt(
        identity,
        block.sheet,
        { row, column },
        {
          message: `${cellName(row, column)}, the amount of ${name.item}, is ${value.error}: nothing can be computed from this recipe.`,
          effect: readableMass(context, block, recipe),
          fix: "Enter the amount again, or mend the cell that it comes from.",
        },
      );
    }),
  );
}

/** Where an error comes from another cell of the sheet, that one is told. */
function readsError(sheet: WorkbookSheet, row: number, column: number): boolean {
  const formula = sheet.cellAt(row, column)?.formula ?? "";
  return referencesOf(formula).some(({ sheet: other, range }) => {
    if (other !== null) return false;
    const bottom = Math.min(range.bottom, range.top + 500);
    for (let at = range.top; at <= bottom; at += 1) {
      for (let across = range.left; across <= Math.min(range.right, range.left + 30); across += 1) {
        const value = sheet.cellAt(at, across)?.value;
        if (typeof value === "object" && value !== null) return true;
      }
    }
    return false;
  });
}

/** The answers of a ledger are looked at where they are compared. */
const fewRecipes = ({ blocks }: AuditContext): readonly RecipeBlock[] =>
  blocks.filter(({ recipes }) => recipes.length <= 1000);

function answersIn(context: AuditContext): readonly LabelledAnswer[] {
  const blocks = fewRecipes(context);
  return [...resultAnswers(context.workbook, blocks), ...partAnswers(context.workbook, blocks)];
}

const errorFinding = (sheet: WorkbookSheet, place: Place, error: string, label?: string): Finding =>
  findingAt(identity, sheet, place, {
    message:
      label === undefined
        ? `${cellName(place.row, place.column)}, a total, is ${error}: it comes to no number.`
        : `${cellName(place.row, place.column)}, "${label}", is ${error}: it has no answer.`,
    effect: { quantity: "answers", from: 0, to: 1, unit: "" },
    fix: "Mend what its formula reads, or write the formula again.",
  });

function resultFinding({ sheet, row, column, label }: LabelledAnswer): Finding[] {
  const cell = sheet.cellAt(row, column);
  const value = cell?.value;
  if (typeof value !== "object" || value === null || readsError(sheet, row, column)) return [];
  return isNotKnownThere(cell) ? [] : [errorFinding(sheet, { row, column }, value.error, label)];
}

/** Errors in the rows of totals below lists, whose lines have numbers. */
function totalFindings({ sheet, layout, recipes, roles, totals }: RecipeBlock): Finding[] {
  if (layout !== "down") return [];
  const columns = [...new Set([...recipes.map(({ line }) => line), ...roles.keys()])];
  return totals.flatMap((row) =>
    columns.flatMap((column) => {
      const cell = sheet.cellAt(row, column);
      const value = cell?.value ?? null;
      if (typeof value !== "object" || value === null || readsError(sheet, row, column)) return [];
      return isNotKnownThere(cell) ? [] : errorFinding(sheet, { row, column }, value.error);
    }),
  );
}

/** A workbook that went through a program without our functions shows all of them so: told once a sheet. */
const calculatedElsewhere = ({ workbook }: AuditContext): Finding[] =>
  [...notKnownThere(workbook)].map(([sheet, places]) => {
    const [first = { row: 0, column: 0 }] = places;
    return findingAt(identity, sheet, first, {
      message: `Rimeline's functions show #NAME? on this sheet (first in ${cellName(first.row, first.column)}, cells: ${places.length}): it was last calculated where Rimeline is not installed.`,
      effect: { quantity: "answers", from: 0, to: places.length, unit: "" },
      fix: "Open the workbook where Rimeline is installed, let it calculate, and save it.",
    });
  });

export const errorValue: Rule = {
  ...identity,
  title: "An amount or a result is an error",
  find: (context) =>
    toldOnce([
      ...context.blocks.flatMap((block) => findIn(context, block)),
      ...answersIn(context).flatMap(resultFinding),
      ...context.blocks.flatMap(totalFindings),
      ...calculatedElsewhere(context),
    ]),
};
