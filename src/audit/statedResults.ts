import type { Workbook, WorkbookSheet } from "../workbook/model";
import { precedentsOf } from "./precedents";
import { textAt } from "./recipes/cells";
import { headerRole, type Role } from "./recipes/headerRole";
import type { Place, Recipe, RecipeBlock } from "./recipes/recipeBlock";
import { amountPlace, isOneRow } from "./recipes/recipeBlock";
import { sheetTexts } from "./recipes/sheetTexts";
import { contains } from "../workbook/references";
import { labelledTemperatureC, resultUnit, type ResultUnit } from "./resultLabel";

export type ResultRole = Extract<
  Role,
  "freezing point" | "depression" | "molality" | "ice fraction"
>;

/** A number on the sheet that is labelled as a property of a recipe. */
export interface StatedResult extends Place {
  readonly role: ResultRole;
  readonly sheet: WorkbookSheet;
  readonly label: string;
  readonly value: number;
  readonly unit: ResultUnit;
  /** The temperature an ice share is for, when the label tells. */
  readonly temperatureC: number | null;
  readonly block: RecipeBlock;
  readonly recipe: Recipe;
}

const ROLES = new Set<Role | null>(["freezing point", "depression", "molality", "ice fraction"]);
/** Answers stand at most this far below a list, and this far beside their label. */
const REACH_DOWN = 40;
const REACH_BESIDE = 4;

function roleOf(label: string): ResultRole | null {
  const role = headerRole(label);
  return ROLES.has(role) ? (role as ResultRole) : null;
}

function resultAt(
  block: RecipeBlock,
  recipe: Recipe,
  label: string,
  { row, column }: Place,
): StatedResult | null {
  const role = roleOf(label);
  const cell = block.sheet.cellAt(row, column);
  if (role === null || typeof cell?.value !== "number") return null;
  const unit = resultUnit(label, textAt(block.sheet, row, column + 1), cell, role);
  const temperatureC = labelledTemperatureC(label);
  return {
    role,
    sheet: block.sheet,
    label,
    row,
    column,
    value: cell.value,
    unit,
    temperatureC,
    block,
    recipe,
  };
}

/** Columns beside the names of an across block: one result per recipe. */
function resultsBeside(block: RecipeBlock): StatedResult[] {
  const { sheet, headerRow, names } = block;
  if (headerRow === null) return [];
  const taken = new Set(names.map(({ column }) => column));
  const columns: number[] = [];
  for (
    let column = Math.max(0, block.range.left - 4);
    column <= block.range.right + 12;
    column += 1
  ) {
    if (!taken.has(column) && roleOf(textAt(sheet, headerRow, column)) !== null)
      columns.push(column);
  }
  return columns.flatMap((column) => {
    const label = textAt(sheet, headerRow, column);
    return block.recipes.flatMap(
      (recipe) => resultAt(block, recipe, label, { row: recipe.line, column }) ?? [],
    );
  });
}

/** Columns beside a solution that has a row to itself. */
function resultsInRow(block: RecipeBlock): StatedResult[] {
  const { sheet, headerRow, roles, recipes, names } = block;
  const [recipe] = recipes;
  const row = names[0]?.row ?? 0;
  if (recipe === undefined || headerRow === null) return [];
  return [...roles.keys()].flatMap(
    (column) => resultAt(block, recipe, textAt(sheet, headerRow, column), { row, column }) ?? [],
  );
}

/** Labels below a down block, in the names' column, with one value in each recipe's column. */
function resultsBelow(block: RecipeBlock): StatedResult[] {
  const { sheet, names, recipes } = block;
  const column = names[0]?.column ?? 0;
  const from = (names.at(-1)?.row ?? 0) + 1;
  const results: StatedResult[] = [];
  for (let row = from; row <= Math.min(from + REACH_DOWN, sheet.rowCount - 1); row += 1) {
    const label = textAt(sheet, row, column);
    if (headerRole(label) === "name") break;
    if (roleOf(label) === null) continue;
    results.push(
      ...recipes.flatMap(
        (recipe) => resultAt(block, recipe, label, { row, column: recipe.line }) ?? [],
      ),
    );
  }
  return results;
}

/** The number that belongs to a free label: the first one to its right. */
function valuePlace(sheet: WorkbookSheet, { row, column }: Place): Place | null {
  for (let at = column + 1; at <= column + REACH_BESIDE; at += 1) {
    if (typeof sheet.cellAt(row, at)?.value === "number") return { row, column: at };
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

function freeResults(
  workbook: Workbook,
  blocks: readonly RecipeBlock[],
  taken: ReadonlySet<string>,
): StatedResult[] {
  return workbook.sheets.flatMap((sheet) => {
    const results: StatedResult[] = [];
    for (const [row, columns] of sheetTexts(sheet).columnsByRow) {
      for (const column of columns) {
        const label = textAt(sheet, row, column);
        if (roleOf(label) === null) continue;
        const place = valuePlace(sheet, { row, column });
        if (place === null || taken.has(`${sheet.name}!${place.row},${place.column}`)) continue;
        if (blocks.some((block) => block.sheet === sheet && block.headerRow === row)) continue;
        const behind = recipeBehind(workbook, blocks, sheet, place);
        const result = behind && resultAt({ ...behind.block, sheet }, behind.recipe, label, place);
        if (behind !== undefined && result != null)
          results.push({ ...result, block: behind.block });
      }
    }
    return results;
  });
}

/** Finds the labelled answers of a workbook and the recipe each belongs to. */
export function statedResults(workbook: Workbook, blocks: readonly RecipeBlock[]): StatedResult[] {
  const near = blocks.flatMap((block) =>
    isOneRow(block)
      ? resultsInRow(block)
      : block.layout === "down"
        ? resultsBelow(block)
        : resultsBeside(block),
  );
  const taken = new Set(near.map(({ sheet, row, column }) => `${sheet.name}!${row},${column}`));
  return blocks.length === 0 ? [] : [...near, ...freeResults(workbook, blocks, taken)];
}
