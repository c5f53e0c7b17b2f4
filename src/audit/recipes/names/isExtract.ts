import { overlaps, referencesOf, type Reference } from "../../../workbook/references";
import { amountPlace, type RecipeBlock } from "../recipeBlock";
import { onlyMultiplies } from "../amounts/onlyMultiplies";
import { isStock } from "./isStock";

const LINK = /^=?\s*(?:'(?:[^']|'')+'!|[\p{L}\p{N}_.]+!)?\$?[A-Z]{1,3}\$?\d+\s*$/u;
/** Of a workbook with more lists than this none is compared with all the others. */
const MOST_LISTS = 300;

/** What is looked up by its name in another list. */
const LOOKED_UP = /\b(?:[VHX]?LOOKUP|INDEX|SUMIFS?)\s*\(/i;

/** The formulas of a list's amounts; null where one of them is typed. */
function formulasOf(block: RecipeBlock): readonly string[] | null {
  const [recipe] = block.recipes;
  if (recipe === undefined) return null;
  const formulas = block.names.map((name) => {
    const { row, column } = amountPlace(block, recipe, name);
    return block.sheet.cellAt(row, column)?.formula ?? "";
  });
  return formulas.includes("") ? null : formulas;
}

/** In how many recipes of another list the references of a formula read amounts. */
const recipesRead = (
  { layout, range, recipes }: RecipeBlock,
  references: readonly Reference[],
): number =>
  recipes.filter(({ line }) => {
    const own = layout === "down" ? { left: line, right: line } : { top: line, bottom: line };
    return references.some((read) => overlaps({ ...range, ...own }, read.range));
  }).length;

function isAmong(block: RecipeBlock, all: readonly RecipeBlock[]): boolean {
  if (all.length < 2 || all.length > MOST_LISTS) return false;
  const formulas = formulasOf(block);
  if (formulas === null) return false;
  const areLookedUp = formulas.every((formula) => LOOKED_UP.test(formula));
  const areSaidAgain = formulas.every(
    (formula) => LINK.test(formula) || LOOKED_UP.test(formula) || onlyMultiplies(formula),
  );
  const references = formulas.map(referencesOf);
  return all.some((other) => {
    if (other === block || other.names.length < block.names.length) return false;
    const inOther = references.map((some) =>
      some.filter(
        ({ sheet, range }) =>
          (sheet ?? block.sheet.name) === other.sheet.name && overlaps(other.range, range),
      ),
    );
    // All lines looked up are still a list of what is needed; all of them linked or multiplied are the recipe once more.
    const isPart = areLookedUp || other.names.length > block.names.length;
    if (areSaidAgain && isPart) return inOther.every(({ length }) => length > 0);
    // So is what all of several recipes need of each.
    return inOther.every((some) => recipesRead(other, some) > 1);
  });
}

const known = new WeakMap<RecipeBlock, boolean>();

/** Whether a list only says lines of others again, as a recipe's sugars, its bottles, or what is bought or in store for several: it is no mix of its own. */
export function isExtract(block: RecipeBlock, all: readonly RecipeBlock[]): boolean {
  const before = known.get(block);
  if (before !== undefined) return before;
  const isOne = isAmong(block, all) || (all.length <= MOST_LISTS && isStock(block, all));
  known.set(block, isOne);
  return isOne;
}
