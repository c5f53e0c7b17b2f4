import { cellName, columnName } from "../../workbook/address";
import type { WorkbookSheet } from "../../workbook/model";
import type { AuditContext } from "../context";
import { mixEffect } from "../effect";
import type { Finding } from "../finding";
import { findingAt } from "../findingAt";
import { hiddenNames, hiddenTogether, type HiddenName } from "../amounts/hiddenNames";
import { rangeOfAll } from "../formulas/sumFormulas";
import { hiddenSources, type HiddenSource } from "../formulas/hiddenSources";
import { changedMix } from "../mix";
import { amountOf } from "../recipes/amounts/amountOf";
import type { RecipeBlock } from "../recipes/recipeBlock";
import type { Rule } from "../rule";

const identity = { id: "hidden-amount", severity: "warning" } as const;

/** What counts of the ingredients hidden together, by its effect on the first recipe that has some of the first. */
function ingredientFinding(context: AuditContext, together: readonly HiddenName[]): Finding[] {
  const counted = together.flatMap(({ block, name }) => {
    const recipe = block.recipes.find((one) => (amountOf(block, one, name).grams ?? 0) > 0);
    return recipe === undefined ? [] : [{ block, name, recipe, at: amountOf(block, recipe, name) }];
  });
  const [first] = counted;
  if (first === undefined) return [];
  const items = [...new Set(counted.map(({ name }) => name.item))];
  const all = context.mixOf(first.block, first.recipe);
  return [
    findingAt(identity, first.block.sheet, rangeOfAll(counted.map(({ at }) => at)), {
      message:
        items.length === 1
          ? `${items.join("")} is hidden but still counts in the recipe.`
          : `${items.join(", ")} are hidden but still count in their recipes.`,
      effect: mixEffect(changedMix(all, first.name, { grams: 0 }), all),
      fix: "Show the row or column, or delete it.",
    }),
  ];
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
  const place = rangeOfAll(rows.map((row) => ({ row, column: line })));
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
    ...hiddenTogether(hidden).flatMap((together) => ingredientFinding(context, together)),
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
