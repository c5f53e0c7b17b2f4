import { amountOf } from "../recipes/amounts/amountOf";
import { amountPlace, type Recipe, type RecipeBlock } from "../recipes/recipeBlock";
import { columnsOfShares } from "../recipes/amounts/columnsOfShares";
import { isLedger } from "../recipes/isLedger";
import { isMass } from "../recipes/amounts/unit";

/** Amounts as near as this to each other, as a share of the whole, are the same mix written twice. */
const SAME = 0.005;

function sharesOf(block: RecipeBlock, recipe: Recipe): readonly number[] {
  const grams = block.names.map((name) => amountOf(block, recipe, name).grams ?? 0);
  const whole = grams.reduce((sum, each) => sum + each, 0);
  return grams.map((each) => (whole > 0 ? each / whole : 0));
}

/** Whether some recipes of a list are all the same mix. */
function areOneMix(block: RecipeBlock, [first, ...others]: readonly Recipe[]): boolean {
  const shares = first === undefined ? [] : sharesOf(block, first);
  return others.every((other) =>
    sharesOf(block, other).every((share, at) => Math.abs(share - (shares[at] ?? 0)) < SAME),
  );
}

/** Whether most amounts of a recipe are calculated: what is to be bought, what a batch takes. */
function isDerived(block: RecipeBlock, recipe: Recipe): boolean {
  const cells = block.names
    .map((name) => amountPlace(block, recipe, name))
    .map(({ row, column }) => block.sheet.cellAt(row, column))
    .filter((cell) => cell?.value !== undefined);
  return cells.filter((cell) => cell?.formula !== undefined).length * 2 > cells.length;
}

/** Of recipes that are all calculated from shares, those that still say what the shares do. */
function asTheShares(block: RecipeBlock): readonly Recipe[] {
  const [column] = columnsOfShares(block);
  if (column === undefined) return [];
  return block.recipes.filter((recipe) =>
    areOneMix(block, [{ ...recipe, line: column, unit: "%" }, recipe]),
  );
}

function mainOf(block: RecipeBlock): Recipe | null {
  const { recipes } = block;
  const [first] = recipes;
  if (first === undefined || recipes.length === 1) return first ?? null;
  const typed = recipes.filter((recipe) => !isDerived(block, recipe));
  const apart = typed.length > 0 ? typed : asTheShares(block);
  const candidates = areOneMix(block, recipes) ? recipes : apart;
  const [main] = candidates;
  if (main === undefined || !areOneMix(block, candidates)) return null;
  const isWeighed = ({ unit }: Recipe) => typeof unit === "string" && isMass(unit);
  const weighed = candidates.filter(isWeighed);
  return weighed.find((recipe) => typed.includes(recipe)) ?? weighed[0] ?? main;
}

const known = new WeakMap<RecipeBlock, Recipe | null>();

/**
 * The recipe of a list that what is said of the list is about: its only one, or the one mix of which the others
 * are other ways to write it (shares beside grams) or are calculated from it. Null when there are several.
 */
export function mainRecipe(block: RecipeBlock): Recipe | null {
  const before = known.get(block);
  if (before !== undefined) return before;
  const main = isLedger(block) ? null : mainOf(block);
  known.set(block, main);
  return main;
}
