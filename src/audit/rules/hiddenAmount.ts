import { cellName, columnName } from "../../workbook/address";
import type { WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { hiddenNames } from "../amounts/hiddenNames";
import { hiddenSources, type HiddenSource } from "../formulas/hiddenSources";
import { changedMix } from "../mix";
import { amountOf } from "../recipes/amounts/amountOf";
import type { RecipeBlock, RecipeName } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "hidden-amount", severity: "warning" } as const;

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

/** The lists of each sheet by the hidden column in which their amounts stand. */
function listsInHiddenColumns(
  blocks: readonly RecipeBlock[],
): ReadonlyMap<WorkbookSheet, ReadonlyMap<number, readonly RecipeBlock[]>> {
  const sheets = new Map<WorkbookSheet, Map<number, RecipeBlock[]>>();
  for (const block of blocks) {
    const { sheet, layout, recipes } = block;
    if (layout !== "down" || sheet.hidden) continue;
    const columns = sheets.get(sheet) ?? new Map<number, RecipeBlock[]>();
    sheets.set(sheet, columns);
    for (const { line } of recipes) {
      if (!sheet.hiddenColumns.has(line)) continue;
      const lists = columns.get(line) ?? [];
      columns.set(line, lists);
      lists.push(block);
    }
  }
  return sheets;
}

/** A hidden column of amounts while their answers are to be seen: told once for all lists in it. */
function hiddenColumnFinding(
  sheet: WorkbookSheet,
  line: number,
  lists: readonly RecipeBlock[],
): Finding[] {
  const rows = lists
    .flatMap(({ names }) => names)
    .filter(({ amountAt }) => amountAt === undefined)
    .map(({ row }) => row);
  if (rows.length === 0) return [];
  const [top, bottom] = rows.reduce(
    ([least, most], row) => [Math.min(least, row), Math.max(most, row)],
    [Infinity, 0],
  );
  const place = { top, bottom, left: line, right: line };
  return [
    findingAt(identity, sheet, place, {
      message: `The amounts in the hidden column ${columnName(line)} cannot be seen, though they make the recipe.`,
      effect: null,
      fix: "Show it, so that whoever reads the answer can check it.",
    }),
  ];
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
  const inColumns = listsInHiddenColumns(context.blocks);
  // One hidden column is told once, though it hides another table's ingredient, too.
  const hidden = hiddenNames(context).filter(
    ({ block: { layout, sheet }, name }) =>
      layout === "down" || inColumns.get(sheet)?.has(name.column) !== true,
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
    ...[...inColumns].flatMap(([sheet, columns]) =>
      [...columns].flatMap(([line, lists]) => hiddenColumnFinding(sheet, line, lists)),
    ),
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
