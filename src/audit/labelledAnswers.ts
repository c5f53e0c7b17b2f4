import type { Workbook, WorkbookSheet } from "../workbook/model";
import { contains } from "../workbook/references";
import { precedentsOf } from "./precedents";
import { textAt } from "./recipes/cells";
import { headerRole } from "./recipes/headerRole";
import {
  amountPlace,
  isOneRow,
  type Place,
  type Recipe,
  type RecipeBlock,
} from "./recipes/recipeBlock";
import { sheetTexts } from "./recipes/sheetTexts";

/** A cell with a number, or an error instead of one, that is labelled as something of a recipe. */
export interface LabelledAnswer extends Place {
  readonly sheet: WorkbookSheet;
  readonly label: string;
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
}

type IsWanted = (label: string) => boolean;

/** Answers stand at most this far below a list, and this far beside their label. */
const REACH_DOWN = 40;
const REACH_BESIDE = 4;

const isAnswer = (sheet: WorkbookSheet, row: number, column: number): boolean => {
  const value = sheet.cellAt(row, column)?.value ?? null;
  return typeof value === "number" || (typeof value === "object" && value !== null);
};

const answerAt = (
  block: RecipeBlock,
  recipe: Recipe,
  label: string,
  { row, column }: Place,
): LabelledAnswer | null =>
  isAnswer(block.sheet, row, column)
    ? { sheet: block.sheet, row, column, label, block, recipe }
    : null;

/** Columns beside the names of an across block: one result per recipe. */
function answersBeside(block: RecipeBlock, isWanted: IsWanted): LabelledAnswer[] {
  const { sheet, headerRow, names } = block;
  if (headerRow === null) return [];
  const taken = new Set(names.map(({ column }) => column));
  const columns: number[] = [];
  for (
    let column = Math.max(0, block.range.left - 4);
    column <= block.range.right + 12;
    column += 1
  ) {
    if (!taken.has(column) && isWanted(textAt(sheet, headerRow, column))) columns.push(column);
  }
  return columns.flatMap((column) => {
    const label = textAt(sheet, headerRow, column);
    return block.recipes.flatMap(
      (recipe) => answerAt(block, recipe, label, { row: recipe.line, column }) ?? [],
    );
  });
}

/** Columns beside a solution that has a row to itself. */
function answersInRow(block: RecipeBlock, isWanted: IsWanted): LabelledAnswer[] {
  const { sheet, headerRow, roles, recipes, names } = block;
  const [recipe] = recipes;
  const row = names[0]?.row ?? 0;
  if (recipe === undefined || headerRow === null) return [];
  return [...roles.keys()].flatMap((column) => {
    const label = textAt(sheet, headerRow, column);
    return isWanted(label) ? (answerAt(block, recipe, label, { row, column }) ?? []) : [];
  });
}

/** Labels below a down block, in the names' column, with one value in each recipe's column. */
function answersBelow(block: RecipeBlock, isWanted: IsWanted): LabelledAnswer[] {
  const { sheet, names, recipes } = block;
  const column = names[0]?.column ?? 0;
  const from = (names.at(-1)?.row ?? 0) + 1;
  const answers: LabelledAnswer[] = [];
  for (let row = from; row <= Math.min(from + REACH_DOWN, sheet.rowCount - 1); row += 1) {
    const label = textAt(sheet, row, column);
    if (headerRole(label) === "name") break;
    if (!isWanted(label)) continue;
    answers.push(
      ...recipes.flatMap(
        (recipe) => answerAt(block, recipe, label, { row, column: recipe.line }) ?? [],
      ),
    );
  }
  return answers;
}

/** The answer that belongs to a free label: the first one to its right. */
function valuePlace(sheet: WorkbookSheet, { row, column }: Place): Place | null {
  for (let at = column + 1; at <= column + REACH_BESIDE; at += 1) {
    if (isAnswer(sheet, row, at)) return { row, column: at };
    if (textAt(sheet, row, at).length > 8) return null;
  }
  return null;
}

/** The one recipe whose amounts a formula reads, or the only one of the sheet; null when that is not clear. */
function recipeBehind(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  sheet: WorkbookSheet,
  place: Place,
) {
  const all = blocks.flatMap((block) =>
    block.recipes.length > 50 ? [] : block.recipes.map((recipe) => ({ block, recipe })),
  );
  const precedents = precedentsOf(workbook, sheet, place);
  const read = all.filter(({ block, recipe }) =>
    precedents.some(
      ({ sheet: other, range }) =>
        other === block.sheet &&
        block.names.some((name) => {
          const amount = amountPlace(block, recipe, name);
          return contains(range, amount.row, amount.column);
        }),
    ),
  );
  if (read.length > 0) return read.length === 1 ? read[0] : undefined;
  const here = blocks.filter((block) => block.sheet === sheet);
  const alone = here.length === 1 && here[0]?.recipes.length === 1;
  return alone ? all.find(({ block }) => block === here[0]) : undefined;
}

function freeAnswers(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  taken: ReadonlySet<string>,
  isWanted: IsWanted,
): LabelledAnswer[] {
  return workbook.sheets.flatMap((sheet) => {
    const answers: LabelledAnswer[] = [];
    for (const [row, columns] of sheetTexts(sheet).columnsByRow) {
      for (const column of columns) {
        const label = textAt(sheet, row, column);
        if (!isWanted(label)) continue;
        const place = valuePlace(sheet, { row, column });
        if (place === null || taken.has(`${sheet.name}!${place.row},${place.column}`)) continue;
        if (blocks.some((block) => block.sheet === sheet && block.headerRow === row)) continue;
        const behind = recipeBehind(workbook, blocks, sheet, place);
        const { block, recipe } = behind ?? {};
        if (block !== undefined && recipe !== undefined)
          answers.push({ sheet, ...place, label, block, recipe });
      }
    }
    return answers;
  });
}

/** The answers whose labels are wanted, each with the recipe it belongs to. */
export function labelledAnswers(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  isWanted: IsWanted,
): LabelledAnswer[] {
  const near = blocks.flatMap((block) =>
    isOneRow(block)
      ? answersInRow(block, isWanted)
      : block.layout === "down"
        ? answersBelow(block, isWanted)
        : answersBeside(block, isWanted),
  );
  const taken = new Set(near.map(({ sheet, row, column }) => `${sheet.name}!${row},${column}`));
  const free = blocks.length === 0 ? [] : freeAnswers(workbook, blocks, taken, isWanted);
  return free.length === 0 ? near : [...near, ...free];
}
