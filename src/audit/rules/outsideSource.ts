import { cellName } from "../../workbook/address";
import { linkedWorkbook } from "../../workbook/linkedWorkbook";
import type { WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { columnsOfShares } from "../recipes/amounts/columnsOfShares";
import { amountPlace, type Place } from "../recipes/recipeBlock";
import type { Rule } from "../rule";
import { statedParts } from "../answers/statedParts";

const identity = { id: "value-from-outside", severity: "warning" } as const;

const MISSING = /_xl(?:dudf|l)[_.]?[\w.]+/i;

function sourceIn(formula: string, externalLinks: readonly string[]): string | null {
  const link = linkedWorkbook(formula);
  if (link !== null) {
    const target = /^\d+$/.test(link) ? externalLinks[Number(link) - 1] : link;
    return target === undefined
      ? "another workbook"
      : `the workbook ${decoded(target).split(/[\\/]/).at(-1) ?? target}`;
  }
  const [missing] = MISSING.exec(formula) ?? [];
  return missing === undefined ? null : `the function ${missing}, whose add-in is not there`;
}

/** The cells that recipes are made of and their stated answers: what a stale link would falsify. */
function placesThatMatter(context: AuditContext): Map<WorkbookSheet, Place[]> {
  const { blocks, results } = context;
  const places = new Map<WorkbookSheet, Place[]>();
  const add = (sheet: WorkbookSheet, place: Place) =>
    places.set(sheet, [...(places.get(sheet) ?? []), place]);
  for (const block of blocks) {
    const recipes = block.recipes.slice(0, 50);
    for (const recipe of recipes) {
      for (const name of block.names) add(block.sheet, amountPlace(block, recipe, name));
    }
    for (const column of columnsOfShares(block)) {
      for (const { row } of block.names) add(block.sheet, { row, column });
    }
  }
  const answers = [...results.slice(0, 500), ...statedParts(context).slice(0, 500)];
  for (const { sheet, row, column } of answers) add(sheet, { row, column });
  return places;
}

function findAll(context: AuditContext): Finding[] {
  const { externalLinks } = context.workbook;
  return [...placesThatMatter(context)].flatMap(([sheet, places]) =>
    places.flatMap(({ row, column }) => {
      const formula = sheet.cellAt(row, column)?.formula;
      const source = formula === undefined ? null : sourceIn(formula, externalLinks);
      return source === null
        ? []
        : findingAt(
            identity,
            sheet,
            { row, column },
            {
              message: `${cellName(row, column)} comes from ${source}: what is stored may be old.`,
              effect: null,
              fix: "Enter the number itself, or open the source and recalculate.",
            },
          );
    }),
  );
}

/** A name in a link's address may hold a % that is no code. */
function decoded(target: string): string {
  try {
    return decodeURI(target);
  } catch {
    return target;
  }
}

export const outsideSource: Rule = {
  ...identity,
  title: "An amount or a result comes from another workbook or a missing add-in",
  find: findAll,
};
