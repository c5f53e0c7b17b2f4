import type { WorkbookValue } from "../../../workbook/model";
import { callFunction } from "../../../worksheet/callFunction";
import { textAt } from "../cells";
import { amountText, type AmountText } from "./amountText";
import {
  amountPlace,
  type Place,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipeBlock";
import { unitColumnOf } from "./unitColumnOf";
import { gramsPer, isMass, unitFromFormat, unitFromWord, type AmountUnit } from "./unit";

/** An amount of a recipe: what the cell means in grams (or in shares of the mix), and how it was read. */
export interface Amount extends Place {
  /** Null when the cell is blank or holds nothing that could be an amount. */
  readonly grams: number | null;
  /** Set when the number is there as text, so that the sheet itself does not count it. */
  readonly asText: AmountText | null;
  readonly unit: AmountUnit;
  /** What stands there instead of an amount: a word, an error. */
  readonly unreadable: string | null;
}

/** The unit of one amount: what the user said, else its unit cell unless the header names one, else its own format, else the recipe's. */
function unitOf(
  block: RecipeBlock,
  recipe: Recipe,
  name: RecipeName,
  format: string | undefined,
): AmountUnit {
  if (recipe.unitStated === true) return recipe.unit;
  const units = unitColumnOf(block, recipe);
  if (units !== null && recipe.unitAssumed) {
    const unit = unitFromWord(textAt(block.sheet, name.row, units));
    if (unit !== null) return unit;
  }
  return unitFromFormat(format) ?? name.unit ?? recipe.unit;
}

function toGrams(
  block: RecipeBlock,
  item: string,
  amount: number | string,
  unit: AmountUnit,
): number | null {
  if (typeof unit !== "string") {
    const grams = callFunction("GRAMS", item, amount, unit.household, block.ownIngredients)[0]?.[0];
    return typeof grams === "number" ? grams : null;
  }
  if (typeof amount !== "number") return null;
  if (isMass(unit)) return amount * gramsPer(unit);
  return unit === "fraction" ? amount * 100 : amount;
}

/** Reads the amount of one name in one recipe. */
export function amountOf(block: RecipeBlock, recipe: Recipe, name: RecipeName): Amount {
  const { row, column } = amountPlace(block, recipe, name);
  const cell = block.sheet.cellAt(row, column);
  const value = cell?.value ?? null;
  const unit = unitOf(block, recipe, name, cell?.format);
  if (typeof value === "string" && value !== "")
    return textAmount(block, name, { row, column }, value, unit);
  const grams = typeof value === "number" ? toGrams(block, name.item, value, unit) : null;
  return { row, column, grams, asText: null, unit, unreadable: unreadable(value) };
}

function unreadable(value: WorkbookValue): string | null {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "object" && value !== null ? value.error : null;
}

/** An amount written as text: a household measure ("1 1/2"), a number in disguise, or a word. */
function textAmount(
  block: RecipeBlock,
  name: RecipeName,
  place: Place,
  value: string,
  unit: AmountUnit,
): Amount {
  const household = typeof unit !== "string" ? toGrams(block, name.item, value, unit) : null;
  if (household !== null)
    return { ...place, grams: household, asText: null, unit, unreadable: null };
  const asText = amountText(value);
  if (asText === null) return { ...place, grams: null, asText, unit, unreadable: value };
  const meant = asText.unit ?? unit;
  const grams = toGrams(block, name.item, asText.number, meant);
  return { ...place, grams, asText, unit: meant, unreadable: null };
}
