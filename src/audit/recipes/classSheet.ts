import type { WorkbookSheet } from "../../workbook/model";
import { isBlank, looksNumeric, textAt } from "./cells";
import type { Role } from "./headerRole";
import { plainWords } from "./plainWords";
import type { Recipe, RecipeBlock, RecipeName } from "./recipeBlock";
import { sheetTexts } from "./sheetTexts";
import { isMass, unitFromHeader, unitFromWord, type AmountUnit } from "./unit";

const OF_CLASS: readonly Role[] = ["molar mass", "moles", "particles"];
const WATER =
  /^((mass|grams|amount|masse|menge) (of |von |des )?(the )?)?(pure |reines )?(water|wasser|solvent|lösungsmittel)s?( *[([,] *(g|kg|in g|in kg) *[)\]]?| in k?g)?$/;
const REACH = 3;

/** Whether the columns of a list work with moles: then one solute is a mix, with its water elsewhere. */
export const isClassSheet = (roles: ReadonlyMap<number, Role>): boolean =>
  [...roles.values()].some((role) => OF_CLASS.includes(role));

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
      if (isInside || !WATER.test(plainWords(text))) continue;
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

const hasWater = ({ names }: RecipeBlock): boolean =>
  names.some(({ item }) => /\b(water|wasser)\b/i.test(item));

/** A column of water beside the solutes: then every row is a solution of its own. */
function waterColumn({ sheet, headerRow, roles, recipes }: RecipeBlock): number | null {
  const columns = [...roles.keys()].filter((column) =>
    WATER.test(plainWords(textAt(sheet, headerRow ?? -1, column))),
  );
  const [only] = columns.filter((column) => column !== recipes[0]?.line);
  return columns.length > 0 && only !== undefined ? only : null;
}

function rowBlock(
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
  column: number,
): RecipeBlock {
  const { row } = name;
  const unit = massIn(textAt(block.sheet, block.headerRow ?? -1, column));
  const water = {
    row,
    column,
    item: "water",
    amountAt: { row, column },
    ...(unit !== null && { unit }),
  };
  return {
    ...block,
    range: { ...block.range, top: row, bottom: row },
    names: [name, water],
    recipes: [{ ...recipe, title: name.item }],
    totals: [],
  };
}

/** Rows of a ledger of solutions that are read one by one. */
const MOST_ROWS = 300;

/** A list of solutes with the water it is dissolved in: one mix, or one for each row. */
export function withItsWater(block: RecipeBlock): readonly RecipeBlock[] {
  if (hasWater(block)) return [block];
  const column = waterColumn(block);
  const [recipe] = block.recipes;
  if (column !== null && recipe !== undefined) {
    return block.names
      .slice(0, MOST_ROWS)
      .filter(({ row }) => !isBlank(block.sheet, row, column))
      .map((name) => rowBlock(block, recipe, name, column));
  }
  const water = waterLabel(block.sheet, block);
  return [water === null ? block : { ...block, names: [...block.names, water] }];
}
