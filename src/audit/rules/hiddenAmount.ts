import { cellName, columnName } from "../../workbook/address";
import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { isFilteredOut } from "../amounts/hiddenLines";
import { hiddenSources, type HiddenSource } from "../formulas/hiddenSources";
import { changedMix } from "../mix";
import { amountOf } from "../recipes/amountOf";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "hidden-amount", severity: "warning" } as const;

/** What a filter hides has a rule of its own. */
const isHidden = ({ sheet, layout }: RecipeBlock, { row, column }: RecipeName): boolean =>
  layout === "down"
    ? sheet.hiddenRows.has(row) && !isFilteredOut(sheet, row)
    : sheet.hiddenColumns.has(column);

/** One finding for a hidden ingredient, shown by its effect on the block's first recipe that has some. */
function ingredientFinding(
  context: AuditContext,
  block: RecipeBlock,
  name: RecipeName,
): Finding | null {
  const recipe = block.recipes.find((one) => (amountOf(block, one, name).grams ?? 0) > 0);
  if (recipe === undefined) return null;
  const all = context.mixOf(block, recipe);
  const { row, column } = amountOf(block, recipe, name);
  return findingAt(
    identity,
    block.sheet,
    { row, column },
    {
      message: `${name.item} is hidden but still counts in the recipe.`,
      effect: mixEffect(changedMix(all, name, { grams: 0 }), all),
      fix: "Show the row or column, or delete it.",
    },
  );
}

/** A recipe whose whole column of amounts is hidden while its answers are to be seen. */
function hiddenLineFindings(
  { sheet, layout, recipes, names, range, headerRow }: RecipeBlock,
  blocks: readonly RecipeBlock[],
): Finding[] {
  // The recipes of a long list share their columns: of them the first tells for all.
  const isFurther = headerRow !== null && headerRow < range.top;
  if (layout !== "down" || sheet.hidden || isFurther) return [];
  return recipes
    .filter(({ line }) => sheet.hiddenColumns.has(line))
    .map(({ line }) => {
      const shared = blocks.filter(
        (block) =>
          block.sheet === sheet &&
          headerRow !== null &&
          block.headerRow === headerRow &&
          block.recipes.some((one) => one.line === line),
      );
      const rows = [...names, ...shared.flatMap((block) => block.names)]
        .filter(({ amountAt }) => amountAt === undefined)
        .map(({ row }) => row);
      const place = { top: Math.min(...rows), bottom: Math.max(...rows), left: line, right: line };
      return findingAt(identity, sheet, range.top <= place.top ? place : range, {
        message: `The amounts in the hidden column ${columnName(line)} cannot be seen, though they make the recipe.`,
        effect: null,
        fix: "Show it, so that whoever reads the answer can check it.",
      });
    });
}

function sourceFinding({ kind, sheet, range, readBy }: HiddenSource): Finding {
  const what = {
    sheet: `The hidden sheet "${sheet.name.slice(0, 60)}"`,
    row: `The hidden row ${range.top + 1}`,
    column: `The hidden column ${columnName(range.left)}`,
  }[kind];
  const reader = `${readBy.sheet === sheet ? "" : `${readBy.sheet.name.slice(0, 60)}!`}${cellName(readBy.row, readBy.column)}`;
  const bottom = Math.min(range.bottom, sheet.rowCount - 1);
  const right = Math.min(range.right, sheet.columnCount - 1);
  return findingAt(
    identity,
    sheet,
    { ...range, bottom, right },
    {
      message: `${what} feeds the answer in ${reader}: what it counts on cannot be seen.`,
      effect: null,
      fix: "Show it, so that whoever reads the answer can check it.",
    },
  );
}

function findAll(context: AuditContext): Finding[] {
  const hidden = context.blocks.flatMap((block) =>
    block.names.filter((name) => isHidden(block, name)).map((name) => ({ block, name })),
  );
  const isAmounts = ({ kind, sheet, range }: HiddenSource) =>
    kind === "column" &&
    context.blocks.some(
      (block) =>
        block.sheet === sheet &&
        block.layout === "down" &&
        block.recipes.some(({ line }) => line === range.left),
    );
  const isTold = ({ kind, sheet, range }: HiddenSource) =>
    hidden.some(
      ({ block, name }) =>
        block.sheet === sheet &&
        (block.layout === "down"
          ? kind === "row" && name.row === range.top
          : kind === "column" && name.column === range.left),
    );
  return [
    ...context.blocks.flatMap((block) => hiddenLineFindings(block, context.blocks)),
    ...hidden.flatMap(({ block, name }) => ingredientFinding(context, block, name) ?? []),
    ...hiddenSources(context)
      .filter((source) => !isTold(source) && !isAmounts(source))
      .map(sourceFinding),
  ];
}

export const hiddenAmount: Rule = {
  ...identity,
  title: "Something hidden counts in a recipe or feeds a result",
  find: findAll,
};
