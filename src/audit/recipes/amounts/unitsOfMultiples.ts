import { contains } from "../../../workbook/references";
import { rangesReadHere } from "../../formulas/rangesReadHere";
import { amountPlace, type Recipe, type RecipeBlock, type RecipeName } from "../recipeBlock";
import { addsAlong } from "./addsAlong";
import { isMass } from "./unit";
import { onlyMultiplies } from "./onlyMultiplies";

/** A factor that turns kilograms into grams. */
const THOUSAND = /(?<![\d.])0*1000(?![\d.])/;

/** One mix is told in so many amounts at most; more recipes are a ledger, in which each would be held against each. */
const MOST_RECIPES = 50;

/** Whether an amount of a recipe is that of another one, multiplied. */
function isMultiple(block: RecipeBlock, name: RecipeName, of: Recipe, one: Recipe): boolean {
  const { sheet } = block;
  const [base, place] = [amountPlace(block, of, name), amountPlace(block, one, name)];
  const cell = sheet.cellAt(place.row, place.column);
  const formula = cell?.formula ?? "";
  const [from, to] = [sheet.cellAt(base.row, base.column)?.value, cell?.value];
  if (!onlyMultiplies(formula) || THOUSAND.test(formula)) return false;
  if (typeof from !== "number" || typeof to !== "number") return false;
  const ratio = Math.log10(Math.abs(to / from));
  const reads = rangesReadHere(sheet, place);
  return Math.abs(ratio) < 2.9 && reads.some((range) => contains(range, base.row, base.column));
}

/** Whether an amount of a recipe is the sum of those beside it, that of another one among them. */
function isSumWith(block: RecipeBlock, name: RecipeName, of: Recipe, one: Recipe): boolean {
  const base = amountPlace(block, of, name);
  const added = addsAlong(block.sheet, amountPlace(block, one, name));
  return added.some((range) => contains(range, base.row, base.column));
}

/**
 * Gives amounts without a unit that of a recipe of the same list that is worked out from them: one mix and, in kg, what
 * four of them take, or what all need together. Their unit is still not written.
 */
export function withUnitsOfMultiples(block: RecipeBlock): RecipeBlock {
  const { recipes, names, unitColumn } = block;
  const said = recipes.filter(({ unit, unitAssumed }) => !unitAssumed && isWeighed(unit));
  const isOfOne = said.length > 0 && said.length < recipes.length;
  if (unitColumn !== null || !isOfOne || recipes.length > MOST_RECIPES) return block;
  const multipleOf = (of: Recipe) =>
    said.find((one) =>
      [isMultiple, isSumWith].some((is) => names.every((name) => is(block, name, of, one))),
    );
  return {
    ...block,
    recipes: recipes.map((recipe) => {
      const unit = recipe.unitAssumed ? multipleOf(recipe)?.unit : undefined;
      return unit === undefined ? recipe : { ...recipe, unit };
    }),
  };
}

const isWeighed = (unit: Recipe["unit"]): boolean => typeof unit === "string" && isMass(unit);
