import { textAt } from "../recipes/cells";
import {
  amountPlace,
  type Place,
  type Recipe,
  type RecipeBlock,
  type RecipeName,
} from "../recipes/recipeBlock";
import { totalPlaces } from "../recipes/totals/totalPlaces";
import { unitColumnOf } from "../recipes/amounts/unitColumnOf";
import { unitFromWord, unitText } from "../recipes/amounts/unit";

/** An amount that its unit cell has in another unit than the rest. */
export interface OddMark {
  readonly name: RecipeName;
  readonly place: Place;
  readonly unit: string;
  readonly usual: string;
}

/** Amounts that their unit cells have in another unit than the rest, while a plain sum adds them all up. */
export function summedMarks(block: RecipeBlock, recipe: Recipe): OddMark[] {
  const { sheet, names } = block;
  const unitColumn = unitColumnOf(block, recipe);
  const isSummed = totalPlaces(block, recipe).some(({ row, column }) =>
    /\bSUM\s*\(/i.test(sheet.cellAt(row, column)?.formula ?? ""),
  );
  if (unitColumn === null || !recipe.unitAssumed || !isSummed) return [];
  const marked = names.flatMap((name) => {
    const unit = unitFromWord(textAt(sheet, name.row, unitColumn));
    return unit === null ? [] : [{ name, unit: unitText(unit) }];
  });
  const count = (unit: string) => marked.filter((one) => one.unit === unit).length;
  const [first] = [...marked].sort((one, other) => count(other.unit) - count(one.unit));
  if (first === undefined || count(first.unit) * 2 <= marked.length) return [];
  const usual = first.unit;
  return marked
    .filter(({ unit }) => unit !== usual)
    .map(({ name, unit }) => ({ name, unit, usual, place: amountPlace(block, recipe, name) }));
}
