import type { WorkbookSheet } from "../../workbook/model";
import { isBlank, looksNumeric, textAt } from "./cells";
import { formKind } from "./forms/formLabels";
import type { Role } from "./headerRole";
import type { Recipe, RecipeBlock, RecipeName } from "./recipeBlock";
import { sheetTexts } from "./sheetTexts";
import { isMass, unitFromHeader, unitFromWord, type AmountUnit } from "./unit";

const OF_CLASS: readonly Role[] = ["molar mass", "moles", "particles"];
const IS_WATER = /\b(water|wasser)\b/i;
const REACH = 3;

/** Whether the columns of a list work with moles: then one solute is a mix, with its water elsewhere. */
export const isClassSheet = (roles: ReadonlyMap<number, Role>): boolean =>
  [...roles.values()].some((role) => OF_CLASS.includes(role));

/** Whether a block works with moles: a list with such columns, or a worked example. */
export const isClassBlock = ({ roles, answers, layout }: RecipeBlock): boolean =>
  answers !== undefined || (layout === "down" && isClassSheet(roles));

const massIn = (text: string): AmountUnit | null => {
  const unit = unitFromHeader(text) ?? unitFromWord(text);
  return typeof unit === "string" && isMass(unit) ? unit : null;
};

/** A label "Water (g)" with its number, anywhere on the sheet but in the list itself. */
function waterLabel(sheet: WorkbookSheet, block: RecipeBlock): RecipeName | null {
  const { top, bottom, left, right } = block.range;
  for (const [row, columns] of sheetTexts(sheet).columnsByRow) {
    for (const column of columns) {
      const text = textAt(sheet, row, column);
      const isInside = row >= top && row <= bottom && column >= left && column <= right;
      if (isInside || formKind(text) !== "water") continue;
      for (let at = column + 1; at <= column + REACH; at += 1) {
        if (!looksNumeric(sheet, row, at)) continue;
        const beside = [at - 1, at + 1].filter((one) => one !== column);
        const marks = [text, ...beside.map((one) => textAt(sheet, row, one))];
        const unit = marks.map(massIn).find((one) => one !== null) ?? null;
        const amountAt = { row, column: at };
        return { row, column, item: "water", amountAt, ...(unit !== null && { unit }) };
      }
    }
  }
  return null;
}

/** Whether water is among the names of a block. */
export const hasWater = ({ names }: RecipeBlock): boolean =>
  names.some(({ item }) => IS_WATER.test(item));

/** A column of water beside the solutes: then every row is a solution of its own. */
function waterColumn({ sheet, headerRow, roles, recipes }: RecipeBlock): number | null {
  const columns = [...roles.keys()].filter(
    (column) => formKind(textAt(sheet, headerRow ?? -1, column)) === "water",
  );
  const isOther = recipes.some(({ line }) => !columns.includes(line));
  return isOther ? (columns[0] ?? null) : null;
}

/** The unit in a header, or in a row of units below it. */
function unitOfColumn({ sheet, headerRow }: RecipeBlock, column: number): AmountUnit | null {
  const row = headerRow ?? -1;
  return massIn(textAt(sheet, row, column)) ?? massIn(textAt(sheet, row + 1, column));
}

function rowBlock(
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
  column: number,
): RecipeBlock {
  const { row } = name;
  const unit = unitOfColumn(block, column);
  const amountAt = { row, column };
  const water = { row, column, item: "water", amountAt, ...(unit !== null && { unit }) };
  return {
    ...block,
    range: { ...block.range, top: row, bottom: row },
    names: [name, water],
    recipes: [{ ...recipe, title: name.item }],
    totals: [],
  };
}

/** Water below a gap is no line of the list, though its number stands in the column of the amounts. */
function withWaterApart(block: RecipeBlock): RecipeBlock {
  const [recipe, ...more] = block.recipes;
  const rows = new Set([...block.names.map(({ row }) => row), ...block.totals]);
  if (recipe === undefined || more.length > 0) return block;
  const names = block.names.map((name) => {
    const isApart =
      IS_WATER.test(name.item) && !rows.has(name.row - 1) && name.row - 1 !== block.headerRow;
    const isAlone = [...block.roles.keys()].every(
      (column) =>
        column === recipe.line || column <= name.column || isBlank(block.sheet, name.row, column),
    );
    const beside = massIn(textAt(block.sheet, name.row, recipe.line + 1));
    const unit = name.unit ?? beside ?? undefined;
    return isApart && isAlone
      ? {
          ...name,
          amountAt: { row: name.row, column: recipe.line },
          ...(unit !== undefined && { unit }),
        }
      : name;
  });
  return { ...block, names };
}

/** Rows of a ledger of solutions that are read one by one. */
const MOST_ROWS = 300;

/** A list of solutes with the water it is dissolved in: one mix, or one for each row. */
export function withItsWater(block: RecipeBlock): readonly RecipeBlock[] {
  if (hasWater(block)) return [withWaterApart(block)];
  const column = waterColumn(block);
  const recipe = block.recipes.find(({ line }) => line !== column);
  if (column !== null && recipe !== undefined) {
    return block.names
      .slice(0, MOST_ROWS)
      .filter(({ row }) => !isBlank(block.sheet, row, column))
      .map((name) => rowBlock(block, recipe, name, column));
  }
  const water = waterLabel(block.sheet, block);
  return [water === null ? block : { ...block, names: [...block.names, water] }];
}
