import type { WorkbookSheet } from "../../workbook/model";
import { textAt } from "../recipes/cells";
import type { Place, Recipe, RecipeBlock } from "../recipes/recipeBlock";
import { isMass, unitFromFormat, unitFromHeader, unitFromWord } from "../recipes/amounts/unit";
import { countsThings } from "./inputLabel";
import { wordsOfCell } from "./wordsOfCell";

/** A cell that may say of what it is a number. */
export interface CellOnSheet extends Place {
  readonly sheet: WorkbookSheet;
}

/** The power with which a mass stands in a unit; money has none of it, and a price by the kilo less than none. */
export type Power = -1 | 0 | 1;

const MONEY = /[€$£]|\b(eur|euros?|usd|chf)\b/i;
const PER_MASS =
  /(\/|\b(je|pro|per|an?|each|of|for|für)) ?((1|one|an?|ein(en)?) )?(\d+ ?)?(k?g|kilos?|kilogra\w+|gram\w*|lbs?|oz|pounds?|pfund)(?!\p{L})/iu;
const PER_VOLUME =
  /(\/|\b(je|pro|per|an?|each|for|für)) ?((1|one|an?|ein(en)?) )?([cdm]?l|lit\w+)(?!\p{L})/iu;

function powerOfMoney(text: string): Power | null {
  if (PER_VOLUME.test(text)) return null;
  return PER_MASS.test(text) ? -1 : 0;
}

function unitOfWords(text: string): Power | null {
  if (MONEY.test(text)) return powerOfMoney(text);
  const unit = text === "" ? null : unitFromHeader(text);
  if (unit !== null) return isMass(unit) ? 1 : 0;
  return countsThings(text) ? 0 : null;
}

const powerOf = ({ unit }: Recipe): Power => (isMass(unit) ? 1 : 0);

function powerInList(blocks: readonly RecipeBlock[], cell: CellOnSheet): Power | null {
  for (const { sheet, range, names, recipes, layout, roles, totalsApart = [] } of blocks) {
    const { row, column } = cell;
    const total = totalsApart.find((each) => each.row === row && each.column === column);
    const summed = recipes.find((each) => sheet === cell.sheet && each.line === total?.line);
    if (summed !== undefined) return powerOf(summed);
    const isInside = row > range.top && row <= range.bottom && column <= range.right;
    if (sheet !== cell.sheet || !isInside || column < range.left) continue;
    const line = layout === "down" ? column : row;
    const recipe = recipes.find((each) => each.line === line);
    const isAmount = layout === "down" || names.some((name) => name.column === column);
    if (recipe !== undefined && isAmount) return powerOf(recipe);
    const role = roles.get(column);
    const isSaid = role === "amount" || role === "total" || role === "price";
    const said = isSaid ? unitOfWords(wordsOfCell(cell).above) : null;
    // What a row of amounts comes to is in their unit, unless its heading says another.
    return said ?? (recipe !== undefined && role === "total" ? powerOf(recipe) : null);
  }
  return null;
}

/**
 * The power with which a mass stands in a cell's unit: 1 for grams, 0 for shares and counts, null when neither its
 * list nor its words, unit or format say.
 */
export function powerOfMass(blocks: readonly RecipeBlock[], cell: CellOnSheet): Power | null {
  const inList = powerInList(blocks, cell);
  if (inList !== null) return inList;
  const { sheet, row, column } = cell;
  const unit =
    unitFromFormat(sheet.cellAt(row, column)?.format) ??
    unitFromWord(textAt(sheet, row, column + 1));
  if (unit !== null) return isMass(unit) ? 1 : 0;
  const { before, above } = wordsOfCell(cell);
  return unitOfWords(before) ?? unitOfWords(above);
}
