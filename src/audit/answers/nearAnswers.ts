import type { WorkbookSheet } from "../../workbook/model";
import { answerAt, type IsWanted, type LabelledAnswer } from "./labelledAnswer";
import { headingAt } from "./headingAt";
import { labelAt } from "./labelAt";
import { answerOfMix } from "./answerOfMix";
import { isBound } from "./isBound";
import { headerRole } from "../recipes/headings/headerRole";
import { headsList } from "../recipes/headings/headsList";
import { isOneRow, type RecipeBlock } from "../recipes/recipeBlock";

/** Answers stand at most this far below a list. */
const REACH_DOWN = 40;
/** Or so far above the columns of several recipes. */
const REACH_UP = 20;

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
    if (!taken.has(column) && isWanted(headingAt(sheet, headerRow, column))) columns.push(column);
  }
  return columns.flatMap((column) => {
    const label = headingAt(sheet, headerRow, column);
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
    const label = headingAt(sheet, headerRow, column);
    return isWanted(label) ? (answerAt(block, recipe, label, { row, column }) ?? []) : [];
  });
}

/** Whether a cell is the name of an ingredient in a list. */
export type IsName = (sheet: WorkbookSheet, row: number, column: number) => boolean;

/**
 * The answers of one row, whose label stands in the names' column: one value in each recipe's column, or one alone
 * where the list is one mix, whichever of its columns comes first.
 */
function answersInColumns(block: RecipeBlock, isWanted: IsWanted, row: number): LabelledAnswer[] {
  const { sheet, names, recipes } = block;
  const label = labelAt(sheet, { row, column: names[0]?.column ?? 0 });
  if (!isWanted(label)) return [];
  const inColumns = recipes.flatMap(
    (recipe) => answerAt(block, recipe, label, { row, column: recipe.line }) ?? [],
  );
  const ofMix = inColumns.length > 1 ? null : answerOfMix(block, label, row);
  const answers = ofMix === null ? inColumns : [ofMix];
  return answers.filter((answer) => !isBound(sheet, answer));
}

/** Labels below a down block, in the names' column, with one value in each recipe's column; another list ends them. */
function answersBelow(block: RecipeBlock, isWanted: IsWanted, isName: IsName): LabelledAnswer[] {
  const { sheet, names } = block;
  const column = names[0]?.column ?? 0;
  const from = (names.at(-1)?.row ?? 0) + 1;
  const answers: LabelledAnswer[] = [];
  for (let row = from; row <= Math.min(from + REACH_DOWN, sheet.rowCount - 1); row += 1) {
    const label = labelAt(sheet, { row, column });
    if (isName(sheet, row, column) || headerRole(label) === "name") break;
    if (label !== "" && headsList(sheet, row)) break;
    answers.push(...answersInColumns(block, isWanted, row));
  }
  return answers;
}

/**
 * Such rows above the lines of several recipes in columns, with numbers for more than one of them: one alone is said
 * of all. Below another list they are that one's.
 */
function answersAbove(block: RecipeBlock, isWanted: IsWanted, isName: IsName): LabelledAnswer[] {
  const { sheet, names, recipes, headerRow } = block;
  if (recipes.length < 2) return [];
  const columns = [names[0]?.column ?? 0, ...recipes.map(({ line }) => line)];
  const before = (names[0]?.row ?? 0) - 1;
  const answers: LabelledAnswer[] = [];
  for (let row = before; row >= Math.max(0, before - REACH_UP); row -= 1) {
    if (columns.some((at) => isName(sheet, row, at))) return [];
    const found = row === headerRow ? [] : answersInColumns(block, isWanted, row);
    if (found.length > 1) answers.push(...found);
  }
  return answers;
}

/** Headed columns beside one of the recipes of a long list, each with one answer in its lines. */
function answersInLines(block: RecipeBlock, isWanted: IsWanted): LabelledAnswer[] {
  const { sheet, headerRow, roles, recipes, names } = block;
  const [recipe] = recipes;
  if (recipe === undefined || headerRow === null) return [];
  return [...roles.keys()].flatMap((column) => {
    const label = headingAt(sheet, headerRow, column);
    const answers = isWanted(label)
      ? names.flatMap(({ row }) => answerAt(block, recipe, label, { row, column }) ?? [])
      : [];
    return answers.length === 1 ? answers : [];
  });
}

/** The labelled answers of a worked example. */
const answersOfExample = (block: RecipeBlock, isWanted: IsWanted): LabelledAnswer[] =>
  block.recipes.flatMap((recipe) =>
    (block.answers ?? [])
      .filter(({ label }) => isWanted(label))
      .flatMap((place) => answerAt(block, recipe, place.label, place) ?? []),
  );

/** The wanted answers that stand with a recipe: below it, beside it, or in its own row. */
export function nearAnswers(
  block: RecipeBlock,
  isWanted: IsWanted,
  isName: IsName,
): LabelledAnswer[] {
  if (block.answers !== undefined) return answersOfExample(block, isWanted);
  if (isOneRow(block)) return answersInRow(block, isWanted);
  if (block.isOneOfMany === true) return answersInLines(block, isWanted);
  return block.layout === "down"
    ? [answersAbove, answersBelow].flatMap((find) => find(block, isWanted, isName))
    : answersBeside(block, isWanted);
}
